import type { LocalClock } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { WeekSchedule } from '../household.ts';
import { fillSchedules } from './fill-schedule.ts';

/** Weekly schedules as values for the steps of the current day. */
export interface ScheduleValues {
  /** @param start  instant at which the day's first step begins [s UTC] */
  readonly beginDay: (start: number, steps: number) => void;
  /** Means over steps, lines side by side: `[s * lines + i]`. */
  readonly values: Float64Array;
}

/** @param dt  control step [s] */
export function createScheduleValues(
  schedules: readonly WeekSchedule[],
  clock: LocalClock,
  dt: number,
): ScheduleValues {
  const across = schedules.length;
  const values = new Float64Array(Math.ceil(SECONDS_PER_DAY / dt) * across);
  return {
    beginDay: (start, steps) => {
      fillSchedules(values, schedules, { clock, start, dt, steps });
    },
    values,
  };
}
