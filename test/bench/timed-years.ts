import type { Observer } from '../../src/engine/record/trace.ts';
import type { BenchHome } from './bench-homes.ts';
import type { Build } from './builds.ts';
import { processorTime } from './processor-time.ts';

/** One simulated year: the time it took of a processor [ms], and the heating of the home [J]. */
export interface TimedYear {
  readonly ms: number;
  readonly heating: number;
}

/**
 * Simulate a home's year by all builds in turn, several rounds, each round in the other order: what
 * else the machine does meanwhile falls on all builds alike.
 *
 * @returns the rounds, each with one year by build
 */
export function timedRounds(
  { input }: BenchHome,
  builds: readonly Build[],
  rounds: number,
): TimedYear[][] {
  return Array.from({ length: rounds }, (_, round) => {
    const turns = builds.map((_, b) => b);
    if (round % 2 === 1) turns.reverse();
    const years: TimedYear[] = [];
    for (const b of turns) years[b] = timedYear(builds[b]!, input);
    return years;
  });
}

function timedYear({ simulate }: Build, input: BenchHome['input']): TimedYear {
  globalThis.gc?.();
  const begin = processorTime();
  const { ledger } = simulate(input, [look]);
  const ms = processorTime() - begin;
  return { ms, heating: ledger.energy.heating.reduce((sum, joules) => sum + joules, 0) };
}

/** An observer that looks at every temperature, as measures do. */
const look: Observer = ({ room, steps, rooms }) => {
  let sum = 0;
  for (let k = 0; k < steps * rooms; k++) sum += room.airTemperature[k]!;
  if (!Number.isFinite(sum)) throw new Error('a temperature is not a number');
};

/** The middle value, of an even number of them the higher of the two. */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}
