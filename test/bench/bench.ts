import { parseArgs } from 'node:util';
import { type BenchHome, bareHomes, busyHomes, STEPS } from './bench-homes.ts';
import { heatingApart, medianTime, tableHead, tableRow } from './bench-table.ts';
import { type Build, bundledBuild, otherBuild, THIS_BUILD } from './builds.ts';
import { bytesPerStep } from './bytes-per-step.ts';
import { naiveStepTime } from './naive.ts';
import { timedRounds } from './timed-years.ts';
import { typicalHome } from './typical-home.ts';

/**
 * How much of a processor a simulated year takes: heat, water and CO2 at ten-minute steps, with
 * thermostats, people, airing and an observer that looks at every temperature. Prints figures; judges
 * only whether the builds that it compares find much the same heating.
 *
 * `--against <dist>` measures another build beside this one, `--bundled` this engine as one script.
 */
const MOST_APART = 0.1; // of heating; two builds may differ in their physics
const say = (line: string): void => void process.stdout.write(`${line}\n`);
const { values } = parseArgs({
  options: { against: { type: 'string' }, bundled: { type: 'boolean' } },
});
const builds: Build[] = [THIS_BUILD];
if (values.bundled) builds.push(await bundledBuild());
if (values.against !== undefined) builds.push(await otherBuild(values.against));
const bare = bareHomes();
const { devices, rules } = busyHomes();

// The first years are slower: the engine's code is still being compiled.
for (const home of [bare[1]!, rules]) timedRounds(home, builds, 2);
const perYear = new Map<BenchHome, number[]>();
say(tableHead(builds));
for (const home of [...bare, devices, rules]) {
  const large = home.rooms > 12;
  if (!large) timedRounds(home, builds, 1); // compiles what the home before did not need
  const rounds = timedRounds(home, builds, large ? 3 : 7);
  perYear.set(
    home,
    builds.map((_, b) => medianTime(rounds, b)),
  );
  say(tableRow(home, builds, rounds));
  if (heatingApart(rounds).some((share) => Math.abs(share) > MOST_APART)) {
    say(
      `these builds do not simulate the same home: heating differs by over ${100 * MOST_APART} %`,
    );
    process.exitCode = 3;
  }
}
builds.forEach(({ name }, b) => {
  const growth = perYear.get(bare[4]!)![b]! / perYear.get(bare[1]!)![b]! / (200 / 6);
  say(`growth from 6 to 200 rooms, ${name}: ${growth.toFixed(2)} times linear`);
});
for (const build of builds) {
  const bytes = (await bytesPerStep(build)).map((n) => n.toFixed(0)).join(', ');
  say(`${rules.name}, ${build.name}: ${bytes} bytes a step on the heap (by thread)`);
}
if (builds.length === 1) {
  for (const home of [bare[1]!, bare[2]!]) sayNaive(home, perYear.get(home)![0]!);
  sayHeap();
}

function sayNaive({ rooms }: BenchHome, ours: number): void {
  const naive = naiveStepTime(typicalHome(rooms), 600, rooms === 6 ? 2000 : 400) * STEPS;
  say(
    `dense state space by ml-matrix, heat only, ${rooms} rooms: ${naive.toFixed(0)} ms a year, ${(naive / ours).toFixed(0)} times ours`,
  );
}

function sayHeap(): void {
  const heapAfter = (years: number): number => {
    timedRounds(rules, builds, years);
    globalThis.gc?.();
    return process.memoryUsage().heapUsed / 2 ** 20;
  };
  const one = heapAfter(1);
  say(`heap after one year ${one.toFixed(1)} MB, after ten ${heapAfter(9).toFixed(1)} MB`);
}
