import type { WeekSchedule } from '../../../control/household.ts';
import { weekIn } from '../../week-value.ts';

/**
 * When cooling that may go on in a stretch of any day in some months is over.
 *
 * @param cooling  setpoint of a room [°C], Infinity while nothing is cooled
 * @param months   as bits
 * @param from     [min after midnight]
 * @param to       [min after that midnight, beyond 1440 for the next day]
 * @returns `from` where nothing is cooled in the stretch [min after midnight]
 */
export function cooledUntil(
  cooling: WeekSchedule,
  months: number,
  from: number,
  to: number,
): number {
  const week = weekIn(months, cooling);
  for (let minute = to - 1; minute >= from; minute--) {
    for (let day = 0; day < week.length; day += DAY) {
      if (Number.isFinite(week[(day + minute) % week.length]!)) return minute + 1;
    }
  }
  return from;
}

const DAY = 1440;
