import { createDayInputs, type DayInputs } from '../control/day-inputs.ts';
import { fillDayInputs } from '../control/fill-day-inputs.ts';
import type { Household } from '../control/household.ts';
import type { Home } from '../home/home.ts';
import { saturationTable } from '../physics/moist-air/saturation-table.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../units/time-units.ts';
import type { Weather } from '../weather/weather.ts';
import { layOutModel } from './layout/model.ts';
import { createOutdoors, layOutOutdoors, type Outdoors } from './outdoors/outdoors.ts';
import { seasonOf } from './outdoors/season.ts';
import { skyOf } from './outdoors/sky.ts';
import { layOutSunlight } from './outdoors/sunlight.ts';
import type { Preparation } from './preparation.ts';
import type { RunInput } from './run.ts';

/**
 * Prepare many runs of one home, for `RunInput.preparation`. The same bytes come out as without.
 *
 * @param dt  control step [s]
 */
export function prepareRuns(home: Home, weather: Weather, dt: number): Preparation {
  // Runs begin on the hour, so that their steps fall together whichever hour that is.
  return prepareFrom(
    home,
    weather,
    dt,
    Math.ceil(weather.start / SECONDS_PER_HOUR) * SECONDS_PER_HOUR,
  );
}

/** @param from  an instant at which a control step begins [s UTC] */
function prepareFrom(home: Home, weather: Weather, dt: number, from: number): Preparation {
  const model = layOutModel(home, meanPressure(weather), dt);
  const sky = skyOf(home.site, weather, dt, from);
  const facings = model.boundaries.flatMap((b) => (b.is === 'outdoors' ? [b] : []));
  return {
    home,
    weather,
    dt,
    model,
    sun: sky.series,
    sunlight: layOutSunlight(home, sky, facings),
    season: seasonOf(weather),
    saturation: saturationTable(),
    outdoors: new Map(),
    days: new WeakMap(),
  };
}

/** The preparation that a run was given, or its own. @throws RangeError for that of other runs */
export function preparationOf({ home, weather, dt, start, preparation }: RunInput): Preparation {
  if (preparation === undefined) return prepareFrom(home, weather, dt, start);
  const other = [
    ...(preparation.home === home ? [] : ['another home']),
    ...(preparation.weather === weather ? [] : ['other weather']),
    ...(preparation.dt === dt ? [] : [`a control step of ${preparation.dt} s instead of ${dt} s`]),
    ...(start % SECONDS_PER_HOUR === 0 ? [] : ['runs that start on the hour']),
  ];
  if (other.length > 0) {
    throw new RangeError(`simulate: the preparation was made for ${other.join(' and ')}`);
  }
  return preparation;
}

/** What a household does in one day, laid out by the first run that meets it. */
export function keptDay(
  { home, dt, days }: Preparation,
  household: Household,
  from: number,
): DayInputs {
  const known = days.get(household) ?? new Map<number, DayInputs>();
  days.set(household, known);
  return kept(known, from, () => {
    const steps = SECONDS_PER_DAY / dt;
    const day = createDayInputs(household, home.rooms.length, home.species.length, steps);
    fillDayInputs(day, household, from, dt, steps);
    return day;
  });
}

/** Outdoors in one day, laid out by the first run that meets it. @param from  of the weather [s UTC] */
export function keptOutdoors(
  { home, weather, sun, dt, outdoors }: Preparation,
  from: number,
): Outdoors {
  return kept(outdoors, from, () => {
    const steps = SECONDS_PER_DAY / dt;
    const out = createOutdoors(home.species, steps);
    layOutOutdoors(out, weather, sun, home.species, from, dt, steps, 0);
    return out;
  });
}

function kept<T>(known: Map<number, T>, key: number, make: () => T): T {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  if (known.size < MOST_DAYS) known.set(key, made);
  return made;
}

function meanPressure({ pressure, count }: Weather): number {
  let sum = 0;
  for (let k = 0; k < count; k++) sum += pressure[k]!;
  return sum / count;
}

/** Days that are kept; a day of six rooms takes some 100 kB. */
const MOST_DAYS = 100;
