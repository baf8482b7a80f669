import { meansOver, type Stretches } from '../readings/means-over.ts';
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

/**
 * What a run gives for a channel.
 *
 * @param first  hour of the log with which the run begins
 */
export function modelled(columns: HourlyColumns, channel: Channel, first = 0): Float64Array {
  const hourly = valuesOf(columns, channel);
  return channel.stretches === undefined ? hourly : meansOver(hourly, channel.stretches, first);
}

function valuesOf(columns: HourlyColumns, { quantity, roomIndex }: Channel): Float64Array {
  if (quantity === 'temperature') return columns.temperature[roomIndex]!;
  if (quantity === 'humidity') return columns.humidity[roomIndex]!;
  if (quantity === 'heating') return sumOf(columns.heating);
  return columns.species[quantity.species]![roomIndex]!;
}

const sumOf = (rooms: readonly Float64Array[]): Float64Array =>
  rooms[0]!.map((_, k) => rooms.reduce((sum, room) => sum + room[k]!, 0));
