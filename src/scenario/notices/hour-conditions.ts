import type { Condition } from '../../control/automation.ts';
import { MINUTES_PER_DAY } from '../../units/time-units.ts';
import type { WeekMoment } from '../week-value.ts';

/** Whether a condition is one on the time of day. */
export const isOfHour = ({ quantity }: Condition): boolean => HOURS.has(quantity);

/** Minutes after midnight at which conditions on the time of day turn, and those right after. [min] */
export const turnsOf = (hours: readonly Condition[]): number[] =>
  hours.flatMap(({ quantity, value }) => {
    const minute = (60 * (quantity === 'hour' ? value : value + 12)) % MINUTES_PER_DAY;
    return [minute, (minute + 1) % MINUTES_PER_DAY];
  });

/** Whether a condition on the time of day is met. */
export function isThen({ quantity, is, value }: Condition, { minute }: WeekMoment): boolean {
  const hour = quantity === 'hour' ? minute / 60 : (minute / 60 + 12) % 24;
  return is === 'above' ? hour > value : hour < value;
}

const HOURS: ReadonlySet<string> = new Set(['hour', 'hour since noon']);
