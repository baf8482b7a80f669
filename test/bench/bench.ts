import type { Automation } from '../../src/control/automation.ts';
import { simulate } from '../../src/engine/simulate.ts';
import type { Observer } from '../../src/engine/trace.ts';
import { NEW_YEAR } from '../engine/homes.ts';
import { randomHousehold, swingingWeather } from '../engine/random-home.ts';
import { busyHome } from './busy-home.ts';
import { naiveStepTime } from './naive.ts';
import { typicalHome } from './typical-home.ts';

/**
 * How long a simulated year takes: heat, water and CO2 at ten-minute steps, with thermostats, people,
 * airing and an observer that looks at every value. Prints figures; judges nothing.
 */
const weather = swingingWeather();
const STEPS = 52_560;

function yearOf(rooms: number): () => number {
  const home = typicalHome(rooms);
  const household = randomHousehold(home, 1);
  return () => {
    const begin = performance.now();
    simulate({ home, household, weather, dt: 600, start: NEW_YEAR, hours: 8760, spinUpDays: 0 }, [
      look,
    ]);
    return performance.now() - begin;
  };
}

let seen = 0;
const look: Observer = ({ room, steps, rooms }) => {
  for (let k = 0; k < steps * rooms; k++) seen += room.airTemperature[k]!;
};

function median(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}

const say = (line: string): void => void process.stdout.write(`${line}\n`);

yearOf(6)(); // the first year after start is slower: the engine's code is still being compiled
yearOf(6)();
const perYear = new Map<number, number>();
say('rooms   ms a year   ns a room-step');
for (const rooms of [1, 6, 12, 50, 200]) {
  const run = yearOf(rooms);
  const times = Array.from({ length: rooms <= 12 ? 7 : 3 }, run);
  const ms = median(times);
  perYear.set(rooms, ms);
  say(
    `${String(rooms).padStart(5)} ${ms.toFixed(1).padStart(11)} ${((1e6 * ms) / (STEPS * rooms)).toFixed(0).padStart(16)}`,
  );
}
const growth = perYear.get(200)! / perYear.get(6)! / (200 / 6);
say(`growth from 6 to 200 rooms: ${growth.toFixed(2)} times linear`);
for (const rooms of [6, 12]) {
  const steps = rooms === 6 ? 2000 : 400;
  const naive = naiveStepTime(typicalHome(rooms), 600, steps) * STEPS;
  const ratio = naive / perYear.get(rooms)!;
  say(
    `dense state space by ml-matrix, heat only, ${rooms} rooms: ${naive.toFixed(0)} ms a year, ${ratio.toFixed(0)} times ours`,
  );
}
const busy = busyHome(6);
const busyHousehold = randomHousehold(busy.home, 1);
const busyYear = (automation: Automation): number => {
  const begin = performance.now();
  simulate(
    {
      home: busy.home,
      household: busyHousehold,
      automation,
      weather,
      dt: 600,
      start: NEW_YEAR,
      hours: 8760,
      spinUpDays: 0,
    },
    [look],
  );
  return performance.now() - begin;
};
busyYear(busy.ruled);
busyYear(busy.automation);
const pairs = Array.from({ length: 5 }, () => [busyYear(busy.automation), busyYear(busy.ruled)]);
const without = median(pairs.map(([a]) => a!));
const withRules = median(pairs.map(([, b]) => b!));
const share = median(pairs.map(([a, b]) => b! / a! - 1));
say(`six rooms with devices, gates and four species: ${without.toFixed(0)} ms a year`);
say(
  `and a dozen rules on noisy sensors: ${withRules.toFixed(0)} ms, ${(100 * share).toFixed(0)} % more`,
);

const heapAfter = (years: number): number => {
  for (let y = 0; y < years; y++) busyYear(busy.ruled);
  globalThis.gc?.();
  return process.memoryUsage().heapUsed / 2 ** 20;
};
const one = heapAfter(1);
const ten = heapAfter(9);
say(`heap after one year ${one.toFixed(1)} MB, after ten ${ten.toFixed(1)} MB`);
if (!Number.isFinite(seen)) say('not a number was seen');
