import { type BenchHome, STEPS } from './bench-homes.ts';
import type { Build } from './builds.ts';
import { median, type TimedYear } from './timed-years.ts';

/** The heads of the columns that `tableRow` fills. */
export function tableHead([, ...others]: readonly Build[]): string {
  return [
    'a year of'.padEnd(NAME),
    'ms'.padStart(WIDE),
    'ns a room-step'.padStart(WIDE),
    ...others.flatMap(({ name, ratio }) => [
      `${name} ms`.padStart(WIDE),
      (ratio === 'this over it' ? `this/${name}` : `${name}/this`).padStart(WIDE),
    ]),
    'heating kWh'.padStart(WIDE),
    ...others.map(({ name }) => `from ${name}`.padStart(WIDE)),
  ].join('');
}

/** Medians of the times, and of the ratios of the years of one round. */
export function tableRow(
  { name, rooms }: BenchHome,
  [, ...others]: readonly Build[],
  rounds: readonly (readonly TimedYear[])[],
): string {
  const ms = medianTime(rounds, 0);
  const { heating } = rounds[0]![0]!;
  return [
    name.padEnd(NAME),
    ms.toFixed(1).padStart(WIDE),
    ((1e6 * ms) / (STEPS * rooms)).toFixed(0).padStart(WIDE),
    ...others.flatMap(({ ratio }, k) => {
      const thisOverIt = median(rounds.map((years) => years[0]!.ms / years[k + 1]!.ms));
      return [
        medianTime(rounds, k + 1)
          .toFixed(1)
          .padStart(WIDE),
        (ratio === 'this over it' ? thisOverIt : 1 / thisOverIt).toFixed(3).padStart(WIDE),
      ];
    }),
    (heating / JOULES_PER_KWH).toFixed(0).padStart(WIDE),
    ...heatingApart(rounds).map((share) => `${(100 * share).toFixed(2)} %`.padStart(WIDE)),
  ].join('');
}

/** The middle one of the times of one build. [ms] */
export function medianTime(rounds: readonly (readonly TimedYear[])[], build: number): number {
  return median(rounds.map((years) => years[build]!.ms));
}

/** How much more heating this build finds than each of the others, where there is any. [-] */
export function heatingApart([years]: readonly (readonly TimedYear[])[]): number[] {
  const [first, ...others] = years!;
  return others.map(({ heating }) =>
    first!.heating === heating ? 0 : first!.heating / heating - 1,
  );
}

const NAME = 18;
const WIDE = 15;
const JOULES_PER_KWH = 3.6e6;
