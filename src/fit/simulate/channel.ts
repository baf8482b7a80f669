import { meanOf } from '../statistics/misfit.ts';
import type { HourlyColumns } from './hourly-columns.ts';

/** One series of a log that runs are compared with, hour by hour. */
export interface Channel {
  readonly quantity: 'temperature' | 'humidity' | 'heating' | { readonly species: number };
  /** For words: "temperature", "relative humidity" or how the species is called, and the unit. */
  readonly name: string;
  readonly unit: string;
  readonly room: string;
  /** -1 for the home as a whole. */
  readonly roomIndex: number;
  /** Hourly means, NaN in gaps; where `over` is given, each hour has the mean of its stretch. */
  readonly observed: Float64Array;
  /** Hours of which only the mean is compared, counted from the first; absent means each alone. */
  readonly over?: number;
  /** Least standard deviation of an error: what sensors are good for. [unit] */
  readonly floor: number;
}

/**
 * What a run gives for a channel.
 *
 * @param first  hour of the log with which the run begins
 */
export function modelled(columns: HourlyColumns, channel: Channel, first = 0): Float64Array {
  const { over = 1 } = channel;
  const hourly = valuesOf(columns, channel);
  return over === 1 ? hourly : meansOver(hourly, over, first);
}

/** Each hour with the mean of what is known of its stretch. @param first  number of the first hour */
export function meansOver(hourly: Float64Array, over: number, first = 0): Float64Array {
  const out = new Float64Array(hourly.length).fill(Number.NaN);
  for (let from = -(first % over); from < hourly.length; from += over) {
    const [begin, end] = [Math.max(0, from), Math.min(hourly.length, from + over)];
    out.fill(meanOf(hourly.subarray(begin, end)), begin, end);
  }
  return out;
}

function valuesOf(columns: HourlyColumns, { quantity, roomIndex }: Channel): Float64Array {
  if (quantity === 'temperature') return columns.temperature[roomIndex]!;
  if (quantity === 'humidity') return columns.humidity[roomIndex]!;
  if (quantity === 'heating') return sumOf(columns.heating);
  return columns.species[quantity.species]![roomIndex]!;
}

const sumOf = (rooms: readonly Float64Array[]): Float64Array =>
  rooms[0]!.map((_, k) => rooms.reduce((sum, room) => sum + room[k]!, 0));
