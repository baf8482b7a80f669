import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { isoDay, isoMinute } from '../../units/iso-time.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';

/**
 * "2023-01-01 to 2023-12-31 (365 days)", by the household's clock; with its time of day where a period
 * does not go from midnight to midnight.
 */
export function periodText({ period }: Pick<PlanMeasures, 'period'>, clock: LocalClock): string {
  const local = (at: string): number => toLocal(clock, Date.parse(at) / 1000);
  const [from, to] = [local(period.from), local(period.to)];
  const days = (to - from) / SECONDS_PER_DAY;
  if (from % SECONDS_PER_DAY !== 0 || !Number.isInteger(days)) {
    const { hours } = period;
    const length = hours % 24 === 0 ? `${hours / 24} days` : `${hours} hours`;
    return `${isoMinute(from)} to ${isoMinute(to)} (${length})`;
  }
  if (days === 1) return `${isoDay(from)} (1 day)`;
  return `${isoDay(from)} to ${isoDay(to - SECONDS_PER_DAY)} (${days} days)`;
}
