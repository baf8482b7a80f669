import { localDay, SECONDS_PER_DAY, toLocal, toUtc, weekday } from '../units/local-clock.ts';
import type { Activity, Household, Person, Spell, WeekLine } from './household.ts';

/**
 * What people set, do and are during one stretch of control steps, laid out for the engine.
 *
 * Step by step, rooms (openings, doorways) side by side: `[s * rooms + i]`. All values are means
 * over the step, so a ten-minute airing inside a longer step opens the window by a share.
 */
export interface Day {
  readonly rooms: number;
  readonly steps: number;
  /** People in the room; of those, awake. [-] */
  readonly occupants: Float64Array;
  readonly awake: Float64Array;
  /** Sensible heat of people and of things. [W] */
  readonly peopleHeat: Float64Array;
  readonly thingsHeat: Float64Array;
  /** Vapour of people and of things, and water that dries in the room. [kg/s] */
  readonly peopleVapour: Float64Array;
  readonly thingsVapour: Float64Array;
  readonly drying: Float64Array;
  /** By species. [species unit m3/s] */
  readonly peopleSpecies: readonly Float64Array[];
  readonly thingsSpecies: readonly Float64Array[];
  /** Thermostat setting, -Infinity for off. [°C] */
  readonly setpoints: Float64Array;
  /** Open share of each opening. [-] */
  readonly openings: Float64Array;
  /** Share of the step in which each opening stands open at all. [-] */
  readonly openTimes: Float64Array;
  /** Open share of each doorway. [-] */
  readonly doorways: Float64Array;
  /** Electricity of activities, whole home. [W] */
  readonly electricity: Float64Array;
}

/** Room for one stretch of at most `steps` steps. */
export function createDay(
  household: Household,
  rooms: number,
  species: number,
  steps: number,
): Day {
  const perRoom = (): Float64Array => new Float64Array(steps * rooms);
  const perSpecies = (): Float64Array[] => Array.from({ length: species }, perRoom);
  return {
    rooms,
    steps,
    occupants: perRoom(),
    awake: perRoom(),
    peopleHeat: perRoom(),
    thingsHeat: perRoom(),
    peopleVapour: perRoom(),
    thingsVapour: perRoom(),
    drying: perRoom(),
    peopleSpecies: perSpecies(),
    thingsSpecies: perSpecies(),
    setpoints: perRoom(),
    openings: new Float64Array(steps * household.openings.length),
    openTimes: new Float64Array(steps * household.openings.length),
    doorways: new Float64Array(steps * household.doorways.length),
    electricity: new Float64Array(steps),
  };
}

/**
 * Lay out one stretch.
 *
 * @param start  instant at which the first step begins [s UTC]
 * @param dt     control step [s]
 * @param steps  how many of the day's steps to fill
 */
export function layOutDay(
  day: Day,
  household: Household,
  start: number,
  dt: number,
  steps: number,
): void {
  for (const array of added(day)) array.fill(0);
  const stretch = { clock: household.clock, start, dt, steps };
  for (const person of household.people) layOutPerson(day, person, stretch);
  for (const activity of household.activities) layOutActivity(day, activity, stretch);
  layOutLines(day.setpoints, household.setpoints, stretch);
  layOutLines(day.openings, household.openings, stretch);
  layOutLines(day.openTimes, household.openings.map(whetherOpen), stretch);
  layOutLines(day.doorways, household.doorways, stretch);
}

interface Stretch {
  readonly clock: Household['clock'];
  readonly start: number;
  readonly dt: number;
  readonly steps: number;
}

function layOutPerson(day: Day, person: Person, stretch: Stretch): void {
  for (const stay of person.stays) {
    const body = stay.asleep ? person.asleep : person.awake;
    eachStep(stay, stretch, (step, share) => {
      const at = step * day.rooms + stay.room;
      day.occupants[at]! += share;
      if (!stay.asleep) day.awake[at]! += share;
      day.peopleHeat[at]! += share * body.sensible;
      day.peopleVapour[at]! += share * body.vapour;
      for (let s = 0; s < body.species.length; s++) {
        day.peopleSpecies[s]![at]! += share * body.species[s]!;
      }
    });
  }
}

function layOutActivity(day: Day, activity: Activity, stretch: Stretch): void {
  for (const spell of activity.when) {
    eachStep(spell, stretch, (step, share) => {
      const at = step * day.rooms + activity.room;
      day.thingsHeat[at]! += share * activity.heat;
      day.thingsVapour[at]! += share * activity.vapour;
      day.drying[at]! += share * activity.drying;
      day.electricity[step]! += share * activity.electricity;
      for (let s = 0; s < activity.species.length; s++) {
        day.thingsSpecies[s]![at]! += share * activity.species[s]!;
      }
    });
  }
}

function layOutLines(values: Float64Array, lines: readonly WeekLine[], stretch: Stretch): void {
  const across = lines.length;
  lines.forEach((line, i) => {
    for (let s = 0; s < stretch.steps; s++) values[s * across + i] = line.base;
    for (const spell of line.spells) {
      eachStep(spell, stretch, (step, share) => {
        const at = step * across + i;
        values[at] = blend(values[at]!, spell.value, share);
      });
    }
  });
}

/** The same line with 1 wherever it is open and 0 where it is shut. */
function whetherOpen({ base, spells }: WeekLine): WeekLine {
  return {
    base: Math.sign(base),
    spells: spells.map((spell) => ({ ...spell, value: Math.sign(spell.value) })),
  };
}

/** Mean of two settings; one that is infinite (off) cannot be averaged, so the longer one holds. */
function blend(before: number, value: number, share: number): number {
  if (share === 1) return value;
  if (Number.isFinite(before) && Number.isFinite(value)) return before + share * (value - before);
  return share >= 0.5 ? value : before;
}

/** Every step of the stretch that a spell touches, with the share of the step it takes. */
function eachStep(
  spell: Spell,
  { clock, start, dt, steps }: Stretch,
  visit: (step: number, share: number) => void,
): void {
  const end = start + steps * dt;
  const reach = Math.ceil(spell.to / MINUTES_PER_DAY);
  const firstDay = localDay(toLocal(clock, start)) - reach;
  const lastDay = localDay(toLocal(clock, end));
  for (let date = firstDay; date <= lastDay; date++) {
    if (!startsOn(spell, date)) continue;
    const midnight = date * SECONDS_PER_DAY;
    const from = Math.max(start, toUtc(clock, midnight + spell.from * 60));
    const to = Math.min(end, toUtc(clock, midnight + spell.to * 60));
    if (to <= from) continue;
    const last = Math.min(steps - 1, Math.ceil((to - start) / dt) - 1);
    for (let step = Math.floor((from - start) / dt); step <= last; step++) {
      const stepStart = start + step * dt;
      const overlap = Math.min(to, stepStart + dt) - Math.max(from, stepStart);
      if (overlap > 0) visit(step, overlap / dt);
    }
  }
}

function startsOn({ days, months }: Spell, date: number): boolean {
  if ((days & (1 << weekday(date))) === 0) return false;
  return months === undefined || (months & (1 << monthOf(date))) !== 0;
}

/** Calendar month of a local day number, January = 0. */
function monthOf(date: number): number {
  return new Date(date * SECONDS_PER_DAY * 1000).getUTCMonth();
}

function added(day: Day): Float64Array[] {
  return [
    day.occupants,
    day.awake,
    day.peopleHeat,
    day.thingsHeat,
    day.peopleVapour,
    day.thingsVapour,
    day.drying,
    ...day.peopleSpecies,
    ...day.thingsSpecies,
    day.electricity,
  ];
}

const MINUTES_PER_DAY = 1440;
