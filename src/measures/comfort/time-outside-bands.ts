import type { TraceView } from '../../engine/record/trace.ts';
import type { RoomBands } from '../../home/bands.ts';
import type { Home } from '../../home/home.ts';
import { plainName } from '../../species/plain-name.ts';
import { SPECIES } from '../../species/species-table.ts';
import { type BandEdge, type BandHours, highKey } from '../band-hours.ts';
import { createTrailingMean, type TrailingMean } from '../trailing-mean.ts';
import { createMildness } from './mild-hours.ts';

/** Hours that rooms spend outside their bands, and how far. */
export interface TimeOutsideBands {
  observe(trace: TraceView): void;
  result(room: number): {
    readonly all: BandHours;
    readonly occupied: BandHours;
    /** Degree-hours below the temperature band. [K h] */
    readonly degreeHoursBelow: number;
    /** Degree-hours above the temperature band. [K h] */
    readonly degreeHoursAbove: number;
  };
}

/**
 * Temperatures are operative; where a room's upper edge is another in mild weather, that holds then. A step
 * counts by its length; occupied, by the share of it that somebody is in the room. On the edge of a band is
 * inside it.
 *
 * A species whose band has an averaging time counts when the mean over that time, ending with the
 * step, is above the band; before so much time has passed, nothing counts. Species that the home
 * does not carry stay at 0.
 *
 * Source: hours outside and degree-hours are methods A and B of ISO 7730 annex H.
 */
export function createTimeOutsideBands(home: Home, bands: readonly RoomBands[]): TimeOutsideBands {
  const rooms = home.rooms.length;
  const keys = keysOf(home, bands);
  const all = new Float64Array(rooms * keys.length); // s
  const occupied = new Float64Array(rooms * keys.length); // s
  const depth = new Float64Array(rooms * keys.length); // how far times how long [unit s]
  const coldest = Float64Array.from(bands, (band) => band.temperature.low);
  const warmest = Float64Array.from(bands, (band) => band.temperature.high);
  const warmestWhenMild = Float64Array.from(
    bands,
    ({ temperature: { high, mild } }) => mild?.high ?? high,
  );
  const mildEdge = bands.find(({ temperature }) => temperature.mild !== undefined)?.temperature
    .mild;
  let isMild: ReturnType<typeof createMildness> | null = null;
  const driest = Float64Array.from(bands, (band) => band.humidity.low);
  const dampest = Float64Array.from(bands, (band) => band.humidity.high);
  const watched = home.species.map((s, index) => watchedSpecies(s.name, index, bands, keys));
  const species = watched.filter((s) => s !== null);
  let means: (TrailingMean | null)[] | null = null;
  let averaged = new Float64Array(0); // laid out as the stretch

  function observe(trace: TraceView): void {
    const { dt, room } = trace;
    if (averaged.length < trace.steps * rooms) averaged = new Float64Array(trace.steps * rooms);
    means ??= species.flatMap(({ hours }) => hours.map((h) => trailingMean(h, dt)));
    watchTemperature(trace);
    for (let i = 0; i < rooms; i++) {
      watch(trace, i, room.relativeHumidity, driest[i]!, dampest[i]!, HUMIDITY_LOW);
      for (let k = 0; k < species.length; k++) {
        const { index, key, high } = species[k]!;
        const mean = means[k * rooms + i]!;
        const level = room.species[index]!;
        if (mean === null) watch(trace, i, level, NO_EDGE, high[i]!, key - 1);
        else {
          mean.addAll(level, averaged, i, trace.steps * rooms, rooms);
          watch(trace, i, averaged, NO_EDGE, high[i]!, key - 1);
        }
      }
    }
  }

  /** Over stretches of steps at the ends of which the weather turns mild, or no longer is. */
  function watchTemperature(trace: TraceView): void {
    const { steps, dt, home } = trace;
    if (mildEdge !== undefined) isMild ??= createMildness(mildEdge, dt);
    let first = 0;
    let mild = false;
    for (let s = 0; isMild !== null && s < steps; s++) {
      const now = isMild(home.outdoorTemperature[s]!);
      if (s > 0 && now !== mild) {
        watchStretch(trace, mild ? warmestWhenMild : warmest, first, s);
        first = s;
      }
      mild = now;
    }
    watchStretch(trace, mild ? warmestWhenMild : warmest, first, steps);
  }

  function watchStretch(trace: TraceView, high: Float64Array, first: number, end: number): void {
    for (let i = 0; i < rooms; i++) {
      const values = trace.room.operativeTemperature;
      watch(trace, i, values, coldest[i]!, high[i]!, TEMPERATURE_LOW, first, end);
    }
  }

  /**
   * Book the steps in which a room's values are below a band (by a key) or above (by the next). What
   * is not a number is inside.
   */
  function watch(
    { steps, dt, room: { occupants } }: TraceView,
    i: number,
    values: Float64Array,
    low: number,
    high: number,
    key: number,
    first = 0,
    after = steps,
  ): void {
    const end = after * rooms;
    const a = i * keys.length + key;
    const b = a + 1;
    let under = all[a]!;
    let underFelt = occupied[a]!;
    let underDepth = depth[a]!;
    let over = all[b]!;
    let overFelt = occupied[b]!;
    let overDepth = depth[b]!;
    for (let at = first * rooms + i; at < end; at += rooms) {
      const value = values[at]!;
      if (value > high) {
        over += dt;
        overFelt += dt * Math.min(1, occupants[at]!);
        overDepth += (value - high) * dt;
      } else if (value < low) {
        under += dt;
        underFelt += dt * Math.min(1, occupants[at]!);
        underDepth += (low - value) * dt;
      }
    }
    all[a] = under;
    occupied[a] = underFelt;
    depth[a] = underDepth;
    all[b] = over;
    occupied[b] = overFelt;
    depth[b] = overDepth;
  }

  return {
    observe,
    result: (room) => ({
      all: bandHours(keys, all, room),
      occupied: bandHours(keys, occupied, room),
      degreeHoursBelow: depth[room * keys.length + TEMPERATURE_LOW]! / 3600,
      degreeHoursAbove: depth[room * keys.length + TEMPERATURE_HIGH]! / 3600,
    }),
  };
}

/** Edges of which there are figures: those of every home, and of species that only this one has bands for. */
function keysOf({ species }: Home, bands: readonly RoomBands[]): readonly BandEdge[] {
  const known = new Set(KEYS.map(plainName));
  const banded = new Set(bands.flatMap((band) => Object.keys(band.species).map(plainName)));
  const own = species.filter(
    ({ name }) => banded.has(plainName(name)) && !known.has(plainName(highKey(name))),
  );
  return [...KEYS, ...own.map(({ name }) => highKey(name))];
}

/** A species the figures have a key for; per room its upper edge, Infinity for none, and hours. */
function watchedSpecies(
  name: string,
  index: number,
  bands: readonly RoomBands[],
  keys: readonly BandEdge[],
) {
  const key = keys.findIndex((edge) => plainName(edge) === plainName(highKey(name)));
  if (key < 0) return null;
  const found = bands.map(
    (b) => Object.entries(b.species).find(([other]) => plainName(other) === plainName(name))?.[1],
  );
  const high = Float64Array.from(found, (band) => band?.high ?? Number.POSITIVE_INFINITY);
  const hours = found.map((band) => band?.hours ?? 0);
  return { index, key, high, hours };
}

const bandHours = (keys: readonly BandEdge[], seconds: Float64Array, room: number): BandHours =>
  Object.fromEntries(
    keys.map((key, k) => [key, seconds[room * keys.length + k]! / 3600]),
  ) as unknown as BandHours;

const trailingMean = (hours: number, dt: number): TrailingMean | null =>
  hours > 0 ? createTrailingMean(Math.max(1, Math.round((hours * 3600) / dt))) : null;

const KEYS: readonly BandEdge[] = [
  'temperature_low',
  'temperature_high',
  'humidity_low',
  'humidity_high',
  ...SPECIES.map(({ name }) => highKey(name)),
];
// The key of each upper edge follows that of its lower one.
const TEMPERATURE_LOW = KEYS.indexOf('temperature_low');
const TEMPERATURE_HIGH = KEYS.indexOf('temperature_high');
const HUMIDITY_LOW = KEYS.indexOf('humidity_low');
const NO_EDGE = Number.NEGATIVE_INFINITY;
