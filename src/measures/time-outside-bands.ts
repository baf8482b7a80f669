import type { TraceStretch } from '../engine/trace.ts';
import type { RoomBands } from '../home/bands.ts';
import type { Home } from '../home/home.ts';
import type { BandHours } from './plan-measures.ts';
import { createTrailingMean, type TrailingMean } from './trailing-mean.ts';

/** Hours that rooms spend outside their bands, and how far. */
export interface TimeOutsideBands {
  observe(stretch: TraceStretch): void;
  result(room: number): {
    readonly all: BandHours;
    readonly occupied: BandHours;
    /** Below and above the temperature band, kept apart. [K h] */
    readonly degreeHoursBelow: number;
    readonly degreeHoursAbove: number;
  };
}

/**
 * Temperatures are operative. A step counts by its length; occupied, by the share of it that
 * somebody is in the room. On the edge of a band is inside it.
 *
 * A species whose band has an averaging time counts when the mean over that time, ending with the
 * step, is above the band; before so much time has passed, nothing counts. Species that the home
 * does not carry stay at 0.
 *
 * Source: hours outside and degree-hours are methods A and B of ISO 7730 annex H.
 */
export function createTimeOutsideBands(home: Home, bands: readonly RoomBands[]): TimeOutsideBands {
  const rooms = home.rooms.length;
  const all = new Float64Array(rooms * KEYS.length); // s
  const occupied = new Float64Array(rooms * KEYS.length); // s
  const below = new Float64Array(rooms); // K s
  const above = new Float64Array(rooms); // K s
  const coldest = Float64Array.from(bands, (band) => band.temperature.low);
  const warmest = Float64Array.from(bands, (band) => band.temperature.high);
  const driest = Float64Array.from(bands, (band) => band.humidity.low);
  const dampest = Float64Array.from(bands, (band) => band.humidity.high);
  const watched = home.species.map((s, index) => watchedSpecies(s.name, index, bands));
  const species = watched.filter((s) => s !== null);
  let means: (TrailingMean | null)[] | null = null;

  function book(i: number, key: number, dt: number, someone: number): void {
    const at = i * KEYS.length + key;
    all[at] = all[at]! + dt;
    occupied[at] = occupied[at]! + dt * someone;
  }

  function observe(stretch: TraceStretch): void {
    const { steps, dt, room } = stretch;
    means ??= species.flatMap(({ hours }) => hours.map((h) => trailingMean(h, dt)));
    for (let s = 0; s < steps; s++) {
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        const someone = Math.min(1, room.occupants[at]!);
        const t = room.operativeTemperature[at]!;
        if (t < coldest[i]!) {
          book(i, TEMPERATURE_LOW, dt, someone);
          below[i] = below[i]! + (coldest[i]! - t) * dt;
        } else if (t > warmest[i]!) {
          book(i, TEMPERATURE_HIGH, dt, someone);
          above[i] = above[i]! + (t - warmest[i]!) * dt;
        }
        const rh = room.relativeHumidity[at]!;
        if (rh < driest[i]!) book(i, HUMIDITY_LOW, dt, someone);
        else if (rh > dampest[i]!) book(i, HUMIDITY_HIGH, dt, someone);
        for (let k = 0; k < species.length; k++) {
          const { index, key, high } = species[k]!;
          const mean = means[k * rooms + i]!;
          const now = room.species[index]![at]!;
          const level = mean === null ? now : mean.add(0, now);
          if (level > high[i]! && (mean === null || mean.full(0))) book(i, key, dt, someone);
        }
      }
    }
  }

  return {
    observe,
    result: (room) => ({
      all: bandHours(all, room),
      occupied: bandHours(occupied, room),
      degreeHoursBelow: below[room]! / 3600,
      degreeHoursAbove: above[room]! / 3600,
    }),
  };
}

/** A species the figures have a key for; per room its upper edge, Infinity for none, and hours. */
function watchedSpecies(name: string, index: number, bands: readonly RoomBands[]) {
  const key = KEYS.indexOf(`${plain(name)}_high` as (typeof KEYS)[number]);
  if (key < 0) return null;
  const found = bands.map(
    (b) => Object.entries(b.species).find(([other]) => plain(other) === plain(name))?.[1],
  );
  const high = Float64Array.from(found, (band) => band?.high ?? Number.POSITIVE_INFINITY);
  const hours = found.map((band) => band?.hours ?? 0);
  return { index, key, high, hours };
}

const bandHours = (seconds: Float64Array, room: number): BandHours =>
  Object.fromEntries(
    KEYS.map((key, k) => [key, seconds[room * KEYS.length + k]! / 3600]),
  ) as unknown as BandHours;

const trailingMean = (hours: number, dt: number): TrailingMean | null =>
  hours > 0 ? createTrailingMean(Math.max(1, Math.round((hours * 3600) / dt)), 1) : null;

const plain = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]/g, '');

const KEYS = [
  'temperature_low',
  'temperature_high',
  'humidity_low',
  'humidity_high',
  'co2_high',
  'tvoc_high',
  'pm25_high',
] as const satisfies readonly (keyof BandHours)[];
const TEMPERATURE_LOW = KEYS.indexOf('temperature_low');
const TEMPERATURE_HIGH = KEYS.indexOf('temperature_high');
const HUMIDITY_LOW = KEYS.indexOf('humidity_low');
const HUMIDITY_HIGH = KEYS.indexOf('humidity_high');
