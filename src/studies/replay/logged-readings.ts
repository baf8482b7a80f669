import type { DayInputs } from '../../control/day-inputs.ts';
import type { Observation } from '../../control/observations.ts';
import { type Log, type LoggedPlace, seriesOf } from '../../log/log.ts';
import { longestGap } from '../../log/longest-gap.ts';
import { type EvenSteps, valuesAtInstants } from '../../log/onto-steps.ts';
import { vapourPressureFromHumidityRatio } from '../../physics/moist-air/humidity-ratio.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../physics/moist-air/relative-humidity.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { andList } from '../../units/word-list.ts';
import type { Weather } from '../../weather/weather.ts';

/** A log as the sensors of a scenario would have read it, step by step; NaN where nothing is known. */
export interface LoggedReadings {
  readonly rooms: readonly RoomReadings[];
  readonly outdoors: AirReadings;
  /** What stood in for readings that nobody logged. */
  readonly notes: readonly string[];
  /** Fill what control sees at the start of a step. */
  observe(observed: Observation, step: number): void;
  /** Put logged people and windows in the place of habits, for steps of a day. */
  putIntoDay(day: DayInputs, first: number, count: number): void;
}

interface AirReadings {
  readonly temperature: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly absoluteHumidity: Float64Array;
  /** In the order of `Home.species`. */
  readonly species: readonly Float64Array[];
}

interface RoomReadings extends AirReadings {
  /** People, and whether a window stands open; null where that was not logged. */
  readonly presence: Float64Array | null;
  readonly window: Float64Array | null;
}

export function loggedReadings(
  { home, household }: PreparedPlan,
  log: Log,
  weather: Weather,
  steps: EvenSteps,
): LoggedReadings {
  const at = (quantity: string, room: string | null, place: LoggedPlace) => {
    const series = seriesOf(log, quantity, room, place);
    if (series === undefined) return null;
    const gap = series.reading === 'state' ? Number.POSITIVE_INFINITY : longestGap(series);
    return valuesAtInstants(series, steps, gap);
  };
  const unknown = new Float64Array(steps.count).fill(Number.NaN);
  const airOf = (room: string | null, place: LoggedPlace): AirReadings => {
    const temperature = at('temperature', room, place) ?? unknown;
    const humidity = at('relative humidity', room, place) ?? unknown;
    const species = home.species.map(({ name }) => at(name, room, place) ?? unknown);
    return {
      temperature,
      relativeHumidity: humidity,
      absoluteHumidity: water(temperature, humidity),
      species,
    };
  };
  const rooms = home.rooms.map(
    ({ name }): RoomReadings => ({
      ...airOf(name, 'room'),
      presence: at('presence', name, 'room'),
      window: at('window', name, 'room'),
    }),
  );
  const logged = airOf(null, 'outdoors');
  const outdoors = logged.temperature === unknown ? byWeather(weather, steps, logged) : logged;
  const openings = household.openings.map((_, o) => home.openings[o]!.room);

  function observe(observed: Observation, step: number): void {
    rooms.forEach((room, i) => {
      observed.temperature[i] = room.temperature[step]!;
      observed.felt[i] = room.temperature[step]!;
      observed.relativeHumidity[i] = room.relativeHumidity[step]!;
      observed.absoluteHumidity[i] = room.absoluteHumidity[step]!;
      room.species.forEach((values, q) => {
        observed.species[q]![i] = values[step]!;
      });
    });
    observed.outdoor[0] = outdoors.temperature[step]!;
    observed.outdoor[1] = outdoors.relativeHumidity[step]!;
    observed.outdoor[2] = outdoors.absoluteHumidity[step]!;
    outdoors.species.forEach((values, q) => {
      observed.outdoorSpecies[q] = values[step]!;
    });
  }

  function putIntoDay(day: DayInputs, first: number, count: number): void {
    for (let s = 0; s < count; s++) {
      rooms.forEach(({ presence }, i) => {
        const people = presence?.[first + s] ?? Number.NaN;
        if (Number.isNaN(people)) return;
        const k = s * rooms.length + i;
        // Whoever is noticed where habits see nobody is taken to be awake.
        const wasThere = day.occupants[k]! > 0;
        if (!wasThere) day.awake[k] = people;
        else day.awake[k] = Math.min(people, day.awake[k]!);
        day.occupants[k] = people;
      });
      openings.forEach((room, o) => {
        const open = rooms[room]!.window?.[first + s] ?? Number.NaN;
        if (Number.isNaN(open)) return;
        const k = s * openings.length + o;
        day.openTimes[k] = open > 0 ? 1 : 0;
        day.openings[k] = open;
      });
    }
  }

  return {
    rooms,
    outdoors,
    notes: notesOf(home.rooms, rooms, logged, outdoors, unknown),
    observe,
    putIntoDay,
  };
}

/** Outdoor air by weather that was measured at the time; unknown where it is of another. */
function byWeather(
  weather: Weather,
  { start, step, count }: EvenSteps,
  logged: AirReadings,
): AirReadings {
  const at = (column: Float64Array, n: number) => {
    const place = (start + n * step - weather.start) / weather.step;
    const k = Math.floor(place);
    if (weather.periodic || k < 0 || k + 1 >= weather.count) return Number.NaN;
    return column[k]! + (place - k) * (column[k + 1]! - column[k]!);
  };
  const each = (of: (n: number) => number) => Float64Array.from({ length: count }, (_, n) => of(n));
  const temperature = each((n) => at(weather.temperature, n));
  const pressure = each((n) => {
    const ratio = at(weather.humidityRatio, n);
    if (Number.isNaN(ratio)) return Number.NaN;
    return vapourPressureFromHumidityRatio(ratio, at(weather.pressure, n));
  });
  const known = (n: number, of: (p: number, t: number) => number) =>
    Number.isNaN(pressure[n]!) ? Number.NaN : of(pressure[n]!, temperature[n]!);
  return {
    temperature,
    relativeHumidity: each((n) => known(n, (p, t) => relativeHumidity(p, t))),
    absoluteHumidity: each((n) => known(n, vapourDensity)),
    species: logged.species,
  };
}

/** [g/m3] */
function water(temperature: Float64Array, humidity: Float64Array): Float64Array {
  return temperature.map((celsius, k) => {
    const percent = humidity[k]!;
    if (Number.isNaN(celsius + percent)) return Number.NaN;
    const pressure = vapourPressureFromRelativeHumidity(
      celsius,
      Math.min(100, Math.max(0, percent)),
    );
    return vapourDensity(pressure, celsius);
  });
}

function notesOf(
  names: readonly { readonly name: string }[],
  rooms: readonly RoomReadings[],
  logged: AirReadings,
  outdoors: AirReadings,
  unknown: Float64Array,
): string[] {
  const without = (what: 'presence' | 'window') =>
    names.filter((_, i) => rooms[i]![what] === null).map(({ name }) => name);
  const [people, windows] = [without('presence'), without('window')];
  const notes: string[] = [];
  if (people.length > 0) {
    notes.push(
      `Nobody logged presence in ${andList(people)}: people are where the scenario has them.`,
    );
  }
  if (windows.length > 0) {
    notes.push(
      `Nobody logged windows in ${andList(windows)}: they stand as the scenario's clock has them.`,
    );
  }
  if (logged.temperature === unknown) {
    notes.push(
      outdoors.temperature.some((value) => !Number.isNaN(value))
        ? 'Outdoor air is that of the weather file.'
        : 'Outdoor air is unknown: nobody logged it, and the weather file is of other days or of a typical year. Conditions on it are never met.',
    );
  }
  return notes;
}
