import { createDayInputs, type DayInputs } from '../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../src/control/fill-day-inputs.ts';
import type { Household, Person } from '../../src/control/household.ts';
import { bareHome, bareRoom } from '../engine/homes.ts';

/** Invented people and the days they spend, for tests of control. */

export const HOME = bareHome([bareRoom('bedroom', 30), bareRoom('living', 60)]);
export const BEDROOM = 0;
export const LIVING = 1;
export const EVERY_DAY = 0b1111111;
/** 2 January 2023. [s UTC] */
export const MONDAY = Date.UTC(2023, 0, 2) / 1000;
export const DAY = 86_400;

/** Asleep from 23 to 7, about until 9, out at work on weekdays, home from 17; at home on Sundays. */
export function worker(more: Partial<Person> = {}): Person {
  const weekdays = 0b0111111;
  const sunday = 0b1000000;
  return {
    name: 'somebody',
    schedule: [
      { days: EVERY_DAY, from: 1380, to: 1860, room: BEDROOM, asleep: true },
      { days: weekdays, from: 420, to: 540, room: LIVING, asleep: false },
      { days: weekdays, from: 1020, to: 1380, room: LIVING, asleep: false },
      { days: sunday, from: 420, to: 1380, room: LIVING, asleep: false },
    ],
    awake: { sensible: 75, vapour: 2e-5, species: [] },
    asleep: { sensible: 60, vapour: 1e-5, species: [] },
    ...more,
  };
}

/** Days in a row, each laid out by itself. */
export function laidOut(
  household: Household,
  days: number,
  { start = MONDAY, dt = 600 } = {},
): DayInputs[] {
  const steps = DAY / dt;
  return Array.from({ length: days }, (_, k) => {
    const day = createDayInputs(household, HOME.rooms.length, 0, steps);
    fillDayInputs(day, household, start + k * DAY, dt, steps);
    return day;
  });
}

/** What a series of days side by side holds for one room, step by step. */
export function series(
  days: readonly DayInputs[],
  of: 'occupants' | 'awake' | 'peopleHeat' | 'applianceHeat' | 'setpoints',
  room: number,
): number[] {
  return days.flatMap((day) =>
    Array.from({ length: day.steps }, (_, s) => day[of][s * day.rooms + room]!),
  );
}

export const total = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
