import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { type LocalClock, SECONDS_PER_DAY, toLocal } from '../../units/local-clock.ts';

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
    return `${minute(from)} to ${minute(to)} (${length})`;
  }
  if (days === 1) return `${day(from)} (1 day)`;
  return `${day(from)} to ${day(to - SECONDS_PER_DAY)} (${days} days)`;
}

/** @param local  reading of the wall clock, counted like UTC seconds [s local] */
const iso = (local: number): string => new Date(local * 1000).toISOString();
const day = (local: number): string => iso(local).slice(0, 10);
const minute = (local: number): string => iso(local).slice(0, 16).replace('T', ' ');
