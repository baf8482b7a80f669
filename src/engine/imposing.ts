import type { DayInputs } from '../control/day-inputs.ts';
import type { BodyOutput } from '../control/household.ts';
import type { Commands } from '../control/observations.ts';
import type { HeldSeries, ImposedSeries, Series } from './imposed.ts';
import { AIR, EXTRA, HUMIDITY, TEMPERATURE } from './lay-out-imposed.ts';
import type { Model } from './model.ts';
import type { RunInput } from './run.ts';
import { IMPOSED, ROOM } from './state-layout.ts';

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

/** Let imposed people take the place of the household's in a day whose first step is number `first`. */
export function imposePeople(
  day: DayInputs,
  imposing: Imposing,
  first: number,
  steps: number,
): void {
  if (first < 0) return;
  const { occupants, peopleHeat, peopleVapour, peopleSpecies } = imposing;
  const count = steps * day.rooms;
  const from = first * day.rooms;
  replace(day.occupants, occupants, from, count, 1, 0);
  replace(day.awake, occupants, from, count, 1, 0);
  replace(day.peopleHeat, peopleHeat, from, count, 1, 0);
  replace(day.peopleVapour, peopleVapour, from, count, 1, 0);
  peopleSpecies.forEach((column, q) => {
    replace(day.peopleSpecies, column, from, count, day.speciesCount, q);
  });
}

function replace(
  into: Float64Array,
  column: Float64Array,
  from: number,
  count: number,
  stride: number,
  offset: number,
): void {
  if (column.length === 0) return;
  for (let k = 0; k < count; k++) {
    const value = column[from + k]!;
    if (!Number.isNaN(value)) into[k * stride + offset] = value;
  }
}

/**
 * Set what is imposed in one step, and let it have its way against what people and control command.
 *
 * @param step  number of the step since the period's start; the spin-up's are negative
 */
export function imposeStep(
  m: Model,
  imposing: Imposing,
  step: number,
  openingRoom: Int32Array,
  commands: Commands,
): void {
  const { records, flags } = m.imposed;
  const inPeriod = step >= 0;
  const from = (inPeriod ? step : 0) * m.roomCount;
  const none = NO_COLUMN;
  for (let k = 0; k < flags.length; k++) flags[k] = 0;
  fill(m, TARGET_T, imposing.temperature, from, TEMPERATURE);
  fill(m, TARGET_W, imposing.humidity, from, HUMIDITY);
  fill(m, TARGET_RH, imposing.relativeHumidity, from, HUMIDITY);
  fill(m, HEAT, inPeriod ? imposing.heat : none, from, EXTRA);
  fill(m, VAPOUR, inPeriod ? imposing.vapour : none, from, EXTRA);
  fill(m, WINDOWS, inPeriod ? imposing.windows : none, from, EXTRA);
  fill(m, OUTDOOR_AIR, inPeriod ? imposing.air : none, from, AIR);
  for (let i = 0; i < m.roomCount; i++) {
    const at = i * IMPOSED_STRIDE;
    records[at + MEAN_T] = Number.NaN;
    records[at + MEAN_W] = Number.NaN;
    const ownLeaks = Number.isNaN(records[at + OUTDOOR_AIR]!);
    m.rooms[i * ROOM_STRIDE + LEAK_SHARE] = ownLeaks ? records[at + OWN_LEAK_SHARE]! : 0;
    if (Number.isNaN(records[at + TARGET_T]!)) continue;
    commands.setpoints[i] = Number.NEGATIVE_INFINITY;
    commands.coolingSetpoints[i] = Number.POSITIVE_INFINITY;
  }
  for (let o = 0; o < openingRoom.length; o++) {
    const at = openingRoom[o]! * IMPOSED_STRIDE;
    const share = Number.isNaN(records[at + OUTDOOR_AIR]!) ? records[at + WINDOWS]! : 0;
    if (Number.isNaN(share)) continue;
    commands.openings[o] = share;
    commands.openTimes[o] = share > 0 ? 1 : 0;
  }
}

function fill(
  { imposed: { records, flags }, roomCount }: Model,
  field: number,
  column: Float64Array,
  from: number,
  flag: number,
): void {
  const given = column.length > 0;
  for (let i = 0; i < roomCount; i++) {
    const value = given ? column[from + i]! : Number.NaN;
    records[i * IMPOSED_STRIDE + field] = value;
    if (!Number.isNaN(value)) flags[flag] = 1;
  }
}

const OF_PEOPLE = ['people', 'peopleHeat', 'peopleVapour', 'peopleSpecies'] as const;
const NO_COLUMN = new Float64Array(0);
const { temperature: TARGET_T, humidity: TARGET_W, relativeHumidity: TARGET_RH } = IMPOSED;
const { heat: HEAT, vapour: VAPOUR, windows: WINDOWS } = IMPOSED;
const { meanTemperature: MEAN_T, meanHumidity: MEAN_W } = IMPOSED;
const { outdoorAir: OUTDOOR_AIR, leakShare: OWN_LEAK_SHARE } = IMPOSED;
const { leakShare: LEAK_SHARE } = ROOM;
const IMPOSED_STRIDE = IMPOSED.stride;
const ROOM_STRIDE = ROOM.stride;
