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
  /** Hourly means, NaN in gaps; where `stretches` are given, each known hour has the mean of its stretch. */
  readonly observed: Float64Array;
  /** Of which only the mean is compared; absent means each hour alone. */
  readonly stretches?: Stretches;
  /** Least standard deviation of an error: what sensors are good for. [unit] */
  readonly floor: number;
}

/** Hours in a row of which only means count. */
interface Stretches {
  /** How many hours each has, counted from the first hour of the log. */
  readonly over: number;
  /** Hour from which they are counted anew, so that none is fitted in part and withheld in part. */
  readonly anewAt: number;
  /** Hourly means as they were logged; hours in which this is NaN belong to no mean. */
  readonly known: Float64Array;
}

/**
 * What a run gives for a channel.
 *
 * @param first  hour of the log with which the run begins
 */
export function modelled(columns: HourlyColumns, channel: Channel, first = 0): Float64Array {
  const hourly = valuesOf(columns, channel);
  return channel.stretches === undefined ? hourly : meansOver(hourly, channel.stretches, first);
}

/**
 * Each hour that is known with the mean of all of its stretch that are; so a day that a log has in part
 * is compared with the same part of a run. NaN for other hours.
 *
 * @param first  number of the first hour
 */
export function meansOver(
  hourly: Float64Array,
  { over, anewAt, known }: Stretches,
  first = 0,
): Float64Array {
  const stretchOf = (hour: number): number =>
    hour < anewAt
      ? Math.floor(hour / over)
      : Math.ceil(anewAt / over) + Math.floor((hour - anewAt) / over);
  const means = new Map<number, { sum: number; count: number }>();
  const counts = (k: number): boolean => Number.isFinite(known[k + first]);
  hourly.forEach((value, k) => {
    if (!counts(k)) return;
    const stretch = stretchOf(k + first);
    const { sum, count } = means.get(stretch) ?? { sum: 0, count: 0 };
    means.set(stretch, { sum: sum + value, count: count + 1 });
  });
  return hourly.map((_, k) => {
    const mean = means.get(stretchOf(k + first));
    return mean === undefined || !counts(k) ? Number.NaN : mean.sum / mean.count;
  });
}

function valuesOf(columns: HourlyColumns, { quantity, roomIndex }: Channel): Float64Array {
  if (quantity === 'temperature') return columns.temperature[roomIndex]!;
  if (quantity === 'humidity') return columns.humidity[roomIndex]!;
  if (quantity === 'heating') return sumOf(columns.heating);
  return columns.species[quantity.species]![roomIndex]!;
}

const sumOf = (rooms: readonly Float64Array[]): Float64Array =>
  rooms[0]!.map((_, k) => rooms.reduce((sum, room) => sum + room[k]!, 0));
