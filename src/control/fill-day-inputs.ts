import type { DayInputs } from './day-inputs.ts';
import type { Household } from './household.ts';
import { layOutActivity, layOutPerson } from './lay-out-day.ts';
import { fillDecaying } from './schedules/decaying-sources.ts';
import { fillSchedules } from './schedules/fill-schedule.ts';
import { streamsOfPeople } from './schedules/irregular-days.ts';
import { somebodyAirs } from './schedules/somebody-airs.ts';

/**
 * Lay out one range.
 *
 * @param start  instant at which the first step begins [s UTC]
 * @param dt     control step [s]
 * @param steps  how many of the day's steps to fill
 */
export function fillDayInputs(
  day: DayInputs,
  household: Household,
  start: number,
  dt: number,
  steps: number,
): void {
  for (const array of added(day)) array.fill(0);
  const range = { clock: household.clock, start, dt, steps };
  const streams = streamsOfPeople(household);
  household.people.forEach((person, k) => {
    layOutPerson(day, person, streams[k]!, range);
  });
  for (const activity of household.activities) layOutActivity(day, household, activity, range);
  for (const source of household.decaying ?? []) fillDecaying(day, source, range);
  fillSchedules(day.setpoints, household.setpoints, range);
  if (household.cooling !== undefined) {
    fillSchedules(day.coolingSetpoints, household.cooling, range);
  }
  const airs = somebodyAirs(household, streams);
  fillSchedules(day.openings, household.openings, range, undefined, airs);
  fillSchedules(day.openTimes, household.openings, range, Math.sign, airs);
  if (household.blinds !== undefined) fillSchedules(day.blinds, household.blinds, range);
  fillSchedules(day.doorways, household.doorways, range);
}

function added(day: DayInputs): Float64Array[] {
  return [
    day.occupants,
    day.awake,
    day.peopleHeat,
    day.applianceHeat,
    day.peopleVapour,
    day.applianceVapour,
    day.drying,
    day.peopleSpecies,
    day.applianceSpecies,
    day.electricity,
    day.gas,
  ];
}
