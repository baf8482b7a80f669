import type { DayInputs } from './day-inputs.ts';
import type { Activity, BodyOutput, Household, Person } from './household.ts';
import { eachStay, type Stay } from './schedules/irregular-days.ts';
import { takesPlaceOn } from './schedules/on-holiday.ts';
import { eachStretch, type StepRange, type Stretch, shareOf } from './schedules/step-range.ts';

/**
 * Add where a person is, and what the body gives off there.
 *
 * @param stream  of the person, from `streamsOfPeople`
 */
export function layOutPerson(
  day: DayInputs,
  person: Person,
  stream: number,
  range: StepRange,
): void {
  eachStay(person, stream, range, (stay, stretch) => {
    addBody(day, stay, stay.asleep ? person.asleep : person.awake, stretch);
  });
}

function addBody(day: DayInputs, stay: Stay, body: BodyOutput, stretch: Stretch): void {
  const { rooms, occupants, awake, peopleHeat, peopleVapour, peopleSpecies } = day;
  const { sensible, vapour } = body;
  for (let s = stretch.first; s <= stretch.last; s++) {
    const share = shareOf(stretch, s);
    const at = s * rooms + stay.room;
    occupants[at]! += share;
    if (!stay.asleep) awake[at]! += share;
    peopleHeat[at]! += share * sensible;
    peopleVapour[at]! += share * vapour;
    addSpecies(day, peopleSpecies, at, body.species, share);
  }
}

/** Add what an activity gives off and draws; people have to be laid out before. */
export function layOutActivity(
  day: DayInputs,
  household: Household,
  activity: Activity,
  range: StepRange,
): void {
  for (const spell of activity.when) {
    eachStretch(spell, range, (stretch, date) => {
      if (takesPlaceOn(date, activity, household)) addActivity(day, activity, stretch);
    });
  }
}

function addActivity(day: DayInputs, activity: Activity, stretch: Stretch): void {
  const { rooms, applianceHeat, applianceVapour, drying, electricity, applianceSpecies } = day;
  const { room, heat, vapour, stopsFor } = activity;
  for (let s = stretch.first; s <= stretch.last; s++) {
    const lasts = shareOf(stretch, s);
    const share = stopsFor === 'an empty home' ? Math.min(lasts, attended(day, s)) : lasts;
    const at = s * rooms + room;
    applianceHeat[at]! += share * heat;
    applianceVapour[at]! += share * vapour;
    drying[at]! += share * activity.drying;
    electricity[s]! += share * activity.electricity;
    if (activity.gas !== undefined) day.gas[s]! += share * activity.gas;
    addSpecies(day, applianceSpecies, at, activity.species, share);
  }
}

/** Add a share of what something gives off to a room of a step. */
function addSpecies(
  { speciesCount }: DayInputs,
  sources: Float64Array,
  at: number,
  species: readonly number[],
  share: number,
): void {
  for (let q = 0; q < speciesCount && q < species.length; q++) {
    const source = species[q]!;
    if (source !== 0) sources[at * speciesCount + q]! += share * source;
  }
}

/**
 * Share of a step in which somebody is at home, reckoned as if people took turns. What takes up a part
 * of the step is taken to coincide with presence as far as possible: who comes home cooks from then
 * on. [-]
 */
export function attended(day: DayInputs, step: number): number {
  let people = 0;
  for (let i = 0; i < day.rooms; i++) people += day.occupants[step * day.rooms + i]!;
  return Math.min(1, people);
}
