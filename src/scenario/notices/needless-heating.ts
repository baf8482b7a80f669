import type { Notice } from '../../home/notices.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import type { Weather } from '../../weather/weather.ts';
import { ALL_YEAR, monthWords } from '../month-words.ts';
import type { PreparedPlan } from '../prepared.ts';

/** A stretch of whole hours: first instant [s UTC] and length [h]. */
interface Period {
  readonly start: number;
  readonly hours: number;
}

/**
 * Months of a period in which the plan's heating is on although homes like it have no need: those
 * outside the usual season, and those warmer on the mean than any limit that is usual.
 *
 * @returns months as bits, January = bit 0
 */
export function needlessMonths(plan: PreparedPlan, weather: Weather, period: Period): number {
  const { usualSeason: usual, automation, household } = plan;
  if (usual === null) return 0;
  const { months, outdoorBelow } = automation.heatingSeason ?? EVERY_DAY;
  const means = monthlyMeans(weather, period, household.clock);
  return means.reduce((bits, mean, month) => {
    const bit = 1 << month;
    const isOn = (months & bit) !== 0 && mean < outdoorBelow;
    const isNeeded = (usual.months & bit) !== 0 && mean < usual.belowAtMost;
    return isOn && !isNeeded ? bits | bit : bits;
  }, 0);
}

/** One line on months in which heating is on without need; the same words for all plans alike. */
export function needlessHeating({ usualSeason }: PreparedPlan, months: number): Notice[] {
  if (months === 0 || usualSeason === null) return [];
  const usual = `${monthWords(usualSeason.months)}, outdoor mean below ${usualSeason.below} °C`;
  const text = `Heating is on in ${monthWords(months)}, months with no need of it here (usual: ${usual}); heating.season ends it.`;
  return [{ id: 'heating-without-need', text }];
}

/**
 * Mean outdoor temperature of each month of the household's clock; NaN where the period has less than
 * half of it. [°C]
 */
function monthlyMeans(
  { temperature, start, step, count }: Weather,
  period: Period,
  clock: LocalClock,
): number[] {
  const sums = new Float64Array(12);
  const hours = new Float64Array(12);
  for (let h = 0; h < period.hours; h++) {
    const utc = period.start + h * 3600;
    const k = Math.floor((utc - start) / step) % count;
    const month = new Date(toLocal(clock, utc) * 1000).getUTCMonth();
    sums[month]! += temperature[k < 0 ? k + count : k]!;
    hours[month]! += 1;
  }
  return Array.from(sums, (sum, m) => (hours[m]! < HALF_A_MONTH ? Number.NaN : sum / hours[m]!));
}

const EVERY_DAY = { months: ALL_YEAR, outdoorBelow: Number.POSITIVE_INFINITY };
const HALF_A_MONTH = 15 * 24; // h
