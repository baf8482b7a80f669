import { deflateSync, inflateSync } from 'fflate';
import { localDays } from '../../measures/series/local-days.ts';
import { fromBase64, toBase64 } from '../../units/base64.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { requireWithin } from '../../units/require-within.ts';
import type { Edges } from '../charts/climate.ts';
import type { MonthlyHeat } from '../charts/monthly-heat.ts';
import type { WaterBalance } from '../charts/water-balance.ts';
import type { PictureData, RoomHours } from './picture-data.ts';

/** `PictureData` as JSON holds it: series in whole steps of `STEPS`, deflated, base64. */
export interface PackedPictures {
  readonly start: number;
  readonly hours: number;
  readonly clock: LocalClock;
  readonly weeks: PictureData['weeks'];
  /** Hours at which the weather turns mild, ends being so, and so on. */
  readonly mild: readonly number[];
  readonly rooms: readonly {
    readonly name: string;
    readonly temperature: PackedEdges;
    readonly humidity: PackedEdges;
  }[];
  readonly plans: readonly {
    readonly name: string;
    readonly heat: MonthlyHeat;
    readonly water: WaterBalance;
    readonly coldSpotHours: readonly number[];
  }[];
  readonly series: string;
}

/** JSON has no infinity: null is an edge that is not there. */
type PackedEdges = readonly [low: number | null, high: number | null, whenMild?: number];

/**
 * The hours of a few plans, small enough for a page.
 *
 * @throws RangeError for a value that is no number, or more than 16 383 steps from 0: two bytes hold
 * no larger jumps than between those, and no room has such air
 */
export function packPictures({
  start,
  hours,
  clock,
  weeks,
  mild,
  rooms,
  plans,
}: PictureData): PackedPictures {
  const series = [
    ...rooms.map(({ occupied }) => inSteps(occupied, 1)),
    ...plans.flatMap((plan) => plan.rooms.flatMap(seriesOf)),
  ];
  return {
    ...{ start, hours, clock, weeks },
    mild: [...mild.keys()].filter((h) => mild[h] !== (mild[h - 1] ?? 0)),
    rooms: rooms.map(({ name, temperature, humidity }) => ({
      name,
      temperature: packedEdges(temperature),
      humidity: packedEdges(humidity),
    })),
    plans: plans.map(({ name, heat, water, rooms: own }) => ({
      ...{ name, heat, water },
      coldSpotHours: own.map(({ coldSpotHours }) => coldSpotHours),
    })),
    series: toBase64(deflateSync(toBytes(series), { level: 9 })),
  };
}

/** What was packed, each value within half a step of what it was. */
export function unpackPictures(packed: PackedPictures): PictureData {
  const { start, hours, clock, weeks, rooms, plans } = packed;
  const days = localDays(start, hours, clock).count;
  const perRoom = 3 * hours + days;
  const count = rooms.length * hours + plans.length * rooms.length * perRoom;
  const values = fromBytes(inflateSync(fromBase64(packed.series)), count);
  let at = 0;
  const next = (length: number, step: number): Float32Array => {
    at += length;
    let sum = 0;
    return Float32Array.from(values.subarray(at - length, at), (more) => {
      sum += more;
      return sum * step;
    });
  };
  return {
    ...{ start, hours, clock, weeks },
    mild: mildOf(packed.mild, hours),
    rooms: rooms.map(({ name, temperature, humidity }) => ({
      name,
      temperature: edges(temperature),
      humidity: edges(humidity),
      occupied: next(hours, 1),
    })),
    plans: plans.map(({ name, heat, water, coldSpotHours }) => ({
      ...{ name, heat, water },
      rooms: coldSpotHours.map((above) => ({
        temperature: next(hours, STEPS.temperature),
        humidity: next(hours, STEPS.humidity),
        coldSpot: next(hours, STEPS.humidity),
        mouldIndex: next(days, STEPS.mouldIndex),
        coldSpotHours: above,
      })),
    })),
  };
}

const seriesOf = ({ temperature, humidity, coldSpot, mouldIndex }: RoomHours): Int32Array[] => [
  inSteps(temperature, STEPS.temperature),
  inSteps(humidity, STEPS.humidity),
  inSteps(coldSpot, STEPS.humidity),
  inSteps(mouldIndex, STEPS.mouldIndex),
];

function inSteps(values: Float32Array, step: number): Int32Array {
  const what = `packPictures: a value in steps of ${step}`;
  return Int32Array.from(values, (value) => {
    const steps = Math.round(value / step);
    requireWithin(steps, RANGE, what, '');
    return steps;
  });
}

/**
 * Differences from hour to hour, folded so that small ones are small whatever their sign: a plane of
 * low bytes, then one of high bytes. Each series begins from 0.
 */
function toBytes(series: readonly Int32Array[]): Uint8Array {
  const count = series.reduce((sum, { length }) => sum + length, 0);
  const bytes = new Uint8Array(2 * count);
  let at = 0;
  for (const values of series) {
    let before = 0;
    for (const value of values) {
      const step = value - before;
      const folded = step < 0 ? -2 * step - 1 : 2 * step;
      bytes[at] = folded & 255;
      bytes[count + at] = folded >> 8;
      before = value;
      at++;
    }
  }
  return bytes;
}

/** The differences again. */
function fromBytes(bytes: Uint8Array, count: number): Int32Array {
  const steps = new Int32Array(count);
  for (let k = 0; k < count; k++) {
    const folded = bytes[k]! | (bytes[count + k]! << 8);
    steps[k] = folded & 1 ? -(folded + 1) / 2 : folded / 2;
  }
  return steps;
}

function mildOf(turns: readonly number[], hours: number): Uint8Array {
  const mild = new Uint8Array(hours);
  for (const [k, from] of turns.entries()) mild.fill((k + 1) % 2, from);
  return mild;
}

const packedEdges = ({ low, high, mild }: Edges): PackedEdges =>
  mild === undefined ? [finite(low), finite(high)] : [finite(low), finite(high), mild.high];
const finite = (edge: number): number | null => (Number.isFinite(edge) ? edge : null);
const edges = ([low, high, whenMild]: PackedEdges): Edges => ({
  low: low ?? Number.NEGATIVE_INFINITY,
  high: high ?? Number.POSITIVE_INFINITY,
  ...(whenMild !== undefined && { mild: { high: whenMild } }),
});

/** [°C], [%] and [-]; finer than any picture shows. */
const STEPS = { temperature: 0.05, humidity: 0.25, mouldIndex: 0.005 };
const RANGE = [-16_383, 16_383] as const; // steps
