import type { DailyTemperatures } from './daily-temperatures.ts';
import type { DegreeDayKind } from './degree-days-by-mean.ts';

/**
 * Degree-days from each day's highest and lowest temperature, by the four cases of British and Irish
 * practice: an estimate of what the hours would give. [K d]
 *
 * @param base  [°C]
 */
export function degreeDaysByMaxMin(
  days: Pick<DailyTemperatures, 'highest' | 'lowest'>,
  base: number,
  kind: DegreeDayKind = 'heating',
): number {
  let sum = 0;
  for (let k = 0; k < days.highest.length; k++) {
    sum += degreeDayByMaxMin(days.highest[k]!, days.lowest[k]!, base, kind);
  }
  return sum;
}

/**
 * Degree-days of one day from its highest and lowest temperature. [K d]
 *
 * Cooling is the mirror image of heating. Neighbouring cases meet: at the lowest, the mean and the
 * highest temperature equal to the base there is no step.
 *
 * @throws RangeError where the highest is below the lowest, or a number is none
 * Source: the table as printed by the Irish meteorological service, "Degree days", met.ie.
 */
export function degreeDayByMaxMin(
  highest: number,
  lowest: number,
  base: number,
  kind: DegreeDayKind = 'heating',
): number {
  if (!(highest >= lowest) || Number.isNaN(base)) {
    throw new RangeError(
      `degreeDayByMaxMin: highest must be at least the lowest, got ${highest} and ${lowest} °C, base ${base} °C`,
    );
  }
  return kind === 'heating' ? coldOf(highest, lowest, base) : coldOf(-lowest, -highest, -base);
}

function coldOf(highest: number, lowest: number, base: number): number {
  const mean = (highest + lowest) / 2;
  if (lowest > base) return 0;
  if (highest < base) return base - mean;
  if (mean > base) return (base - lowest) / 4;
  return (base - lowest) / 2 - (highest - base) / 4;
}
