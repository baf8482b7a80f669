import type { TraceView } from '../../engine/record/trace.ts';
import type { RoomBands } from '../../home/bands.ts';
import type { Home } from '../../home/home.ts';
import { plainName } from '../../species/plain-name.ts';
import { SPECIES } from '../../species/species-table.ts';
import { type BandEdge, type BandHours, highKey } from '../band-hours.ts';
import { createTrailingMean, type TrailingMean } from '../trailing-mean.ts';
import { createMildness } from './mild-hours.ts';
import { createOutsideSums, type Edges } from './outside-sums.ts';

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
  const sums = createOutsideSums(rooms, keys.length);
  const temperature = {
    key: KEYS.indexOf('temperature_low'),
    low: Float64Array.from(bands, (band) => band.temperature.low),
    high: Float64Array.from(bands, (band) => band.temperature.high),
  };
  const whenMild = {
    ...temperature,
    high: Float64Array.from(bands, ({ temperature: { high, mild } }) => mild?.high ?? high),
  };
  const humidity = {
    key: KEYS.indexOf('humidity_low'),
    low: Float64Array.from(bands, (band) => band.humidity.low),
    high: Float64Array.from(bands, (band) => band.humidity.high),
  };
  const mildEdge = bands.find((band) => band.temperature.mild !== undefined)?.temperature.mild;
  let isMild: ReturnType<typeof createMildness> | null = null;
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
      sums.add(trace, i, room.relativeHumidity, humidity);
      for (let k = 0; k < species.length; k++) {
        const { index, edges } = species[k]!;
        const mean = means[k * rooms + i]!;
        const level = room.species[index]!;
        mean?.addAll(level, averaged, i, trace.steps * rooms, rooms);
        sums.add(trace, i, mean === null ? level : averaged, edges);
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
        watchStretch(trace, mild ? whenMild : temperature, first, s);
        first = s;
      }
      mild = now;
    }
    watchStretch(trace, mild ? whenMild : temperature, first, steps);
  }

  function watchStretch(trace: TraceView, edges: Edges, first: number, end: number): void {
    for (let i = 0; i < rooms; i++) {
      sums.add(trace, i, trace.room.operativeTemperature, edges, first, end);
    }
  }

  return {
    observe,
    result: (room) => ({
      all: bandHours(keys, (k) => sums.all(room, k)),
      occupied: bandHours(keys, (k) => sums.occupied(room, k)),
      degreeHoursBelow: sums.depth(room, temperature.key),
      degreeHoursAbove: sums.depth(room, temperature.key + 1),
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

/** A species the figures have a key for, with its edges; and the averaging time of each room's band [h]. */
function watchedSpecies(
  name: string,
  index: number,
  bands: readonly RoomBands[],
  keys: readonly BandEdge[],
) {
  const above = keys.findIndex((edge) => plainName(edge) === plainName(highKey(name)));
  if (above < 0) return null;
  const found = bands.map(
    (b) => Object.entries(b.species).find(([other]) => plainName(other) === plainName(name))?.[1],
  );
  const edges: Edges = {
    key: above - 1,
    low: new Float64Array(bands.length).fill(Number.NEGATIVE_INFINITY),
    high: Float64Array.from(found, (band) => band?.high ?? Number.POSITIVE_INFINITY),
  };
  return { index, edges, hours: found.map((band) => band?.hours ?? 0) };
}

const bandHours = (keys: readonly BandEdge[], hours: (key: number) => number): BandHours =>
  Object.fromEntries(keys.map((key, k) => [key, hours(k)])) as unknown as BandHours;

const trailingMean = (hours: number, dt: number): TrailingMean | null =>
  hours > 0 ? createTrailingMean(Math.max(1, Math.round((hours * 3600) / dt))) : null;

/** The upper edge of a quantity that has a lower one too follows it. */
const KEYS: readonly BandEdge[] = [
  'temperature_low',
  'temperature_high',
  'humidity_low',
  'humidity_high',
  ...SPECIES.map(({ name }) => highKey(name)),
];
