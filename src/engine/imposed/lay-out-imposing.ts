import type { BodyOutput } from '../../control/household.ts';
import type { RunInput } from '../run.ts';
import type { HeldSeries, ImposedSeries, Series } from './imposed.ts';

/**
 * Imposed series of a run, `[step * rooms + room]` in every column; NaN is the model's own, and a
 * column without any is empty.
 */
export interface Imposing {
  readonly temperature: Float64Array;
  readonly humidity: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly heat: Float64Array;
  readonly vapour: Float64Array;
  readonly windows: Float64Array;
  /** [m3/s] */
  readonly air: Float64Array;
  /** Whether any of the columns below has values. */
  readonly people: boolean;
  readonly occupants: Float64Array;
  /** Whether anybody is there, and what one gives where the household has nobody. */
  readonly presence: Float64Array;
  readonly person: BodyOutput;
  readonly peopleHeat: Float64Array;
  readonly peopleVapour: Float64Array;
  /** By species. */
  readonly peopleSpecies: readonly Float64Array[];
}

/** Lay out what a run imposes; null where that is nothing. */
export function layOutImposing(input: RunInput): Imposing | null {
  const { home, imposed, heldStart, dt, hours, start } = input;
  if (imposed === undefined && heldStart === undefined) return null;
  const steps = Math.round((hours * 3600) / dt);
  const rooms = home.rooms.length;
  const column = (seriesOf: (room: number) => Series | undefined): Float64Array => {
    const each = home.rooms.map((_, i) => seriesOf(i));
    if (each.every((series) => series === undefined)) return new Float64Array(0);
    const values = new Float64Array(steps * rooms).fill(Number.NaN);
    each.forEach((series, i) => {
      if (series === undefined) return;
      for (let k = 0; k < series.length; k++) values[k * rooms + i] = series[k]!;
    });
    return values;
  };
  const own = (i: number): ImposedSeries => imposed?.[home.rooms[i]!.name] ?? {};
  const untilRelease = heldStart === undefined ? 0 : Math.round((heldStart.until - start) / dt);
  const held = (i: number, key: keyof HeldSeries): Series | undefined => {
    const given = heldStart?.rooms[home.rooms[i]!.name]?.[key];
    return typeof given === 'number' ? new Float64Array(untilRelease).fill(given) : given;
  };
  const person = meanPerson(input);
  const ofPeople = (i: number, one: number): Series | undefined => scaled(own(i).people, one);
  return {
    temperature: column((i) => own(i).airTemperature ?? held(i, 'airTemperature')),
    humidity: column((i) => own(i).humidityRatio ?? held(i, 'humidityRatio')),
    relativeHumidity: column((i) => own(i).relativeHumidity ?? held(i, 'relativeHumidity')),
    heat: column((i) => own(i).heat),
    vapour: column((i) => own(i).vapour),
    windows: column((i) => own(i).windows),
    air: column((i) => own(i).outdoorAir ?? scaled(own(i).airChange, home.rooms[i]!.volume / 3600)),
    people: home.rooms.some((_, i) => OF_PEOPLE.some((key) => own(i)[key] !== undefined)),
    occupants: column((i) => own(i).people),
    presence: column((i) => own(i).presence),
    person,
    peopleHeat: column((i) => own(i).peopleHeat ?? ofPeople(i, person.sensible)),
    peopleVapour: column((i) => own(i).peopleVapour ?? ofPeople(i, person.vapour)),
    peopleSpecies: home.species.map(({ name }, q) =>
      column((i) => own(i).peopleSpecies?.[name] ?? ofPeople(i, person.species[q]!)),
    ),
  };
}

/** What the household's people give when awake, on average. */
function meanPerson({ home, household: { people } }: RunInput): BodyOutput {
  const mean = (of: (body: BodyOutput) => number): number =>
    people.reduce((sum, { awake }) => sum + of(awake), 0) / Math.max(1, people.length);
  return {
    sensible: mean((body) => body.sensible),
    vapour: mean((body) => body.vapour),
    species: home.species.map((_, q) => mean((body) => body.species[q]!)),
  };
}

function scaled(series: Series | undefined, factor: number): Series | undefined {
  return series === undefined ? undefined : Float64Array.from(series, (x) => x * factor);
}

const OF_PEOPLE = ['people', 'presence', 'peopleHeat', 'peopleVapour', 'peopleSpecies'] as const;
