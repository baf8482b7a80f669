import type { RoomSeries } from '../../measures/series/plan-series.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { type Edges, edgesWhen } from '../charts/climate.ts';
import { hourGroups, type Stretch } from './hour-groups.ts';
import type { Range } from './range-bar.ts';

/** Some days of one room, hour by hour. */
export interface RoomDays {
  readonly room: string;
  readonly bands: { readonly temperature: Edges; readonly humidity: Edges };
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  /** 1 for hours of mild weather, 0 for others, as all are where it is left out. */
  readonly mild?: Uint8Array;
  readonly series: Pick<
    RoomSeries,
    'operativeTemperature' | 'relativeHumidity' | 'coldSpotHumidity' | 'occupied'
  >;
}

/** What one line of the picture is about. Hours count by their mean. */
export interface RoomLine {
  readonly label: string;
  /** Operative. [°C] */
  readonly temperature: Range;
  /** [%] */
  readonly humidity: Range;
  /** Outside the bands. [h] */
  readonly cold: number;
  readonly warm: number;
  readonly damp: number;
  readonly dry: number;
  /** Somebody in the room. [h] */
  readonly occupied: number;
  /** Mean relative humidity at the coldest spot. [%] */
  readonly coldSpot: number;
}

/** A line for every 3 hours, day or seven days by the wall clock, and a last one for all of them. */
export function roomLines(days: RoomDays): RoomLine[] {
  return hourGroups(stretchOf(days)).map(({ label, hours }) => lineOf(days, hours, label));
}

/** The stretch that hours of a room cover. */
export const stretchOf = ({ start, clock, series }: RoomDays): Stretch => ({
  ...{ start, clock, count: series.occupied.length },
});

function lineOf(
  { series, bands, mild }: RoomDays,
  hours: readonly number[],
  label: string,
): RoomLine {
  const pick = (values: Float32Array): number[] => hours.map((h) => values[h]!);
  const temperatures = pick(series.operativeTemperature);
  const humidities = pick(series.relativeHumidity);
  const count = (values: readonly number[], outside: (value: number) => boolean): number =>
    values.filter(outside).length;
  return {
    label,
    temperature: rangeOf(temperatures),
    humidity: rangeOf(humidities),
    cold: count(temperatures, (t) => t < bands.temperature.low),
    warm: hours.filter(
      (h) => series.operativeTemperature[h]! > edgesWhen(bands.temperature, mild?.[h] === 1).high,
    ).length,
    damp: count(humidities, (rh) => rh > bands.humidity.high),
    dry: count(humidities, (rh) => rh < bands.humidity.low),
    occupied: sum(pick(series.occupied)),
    coldSpot: sum(pick(series.coldSpotHumidity)) / hours.length,
  };
}

const rangeOf = (values: readonly number[]): Range => ({
  least: Math.min(...values),
  mean: sum(values) / values.length,
  most: Math.max(...values),
});

const sum = (values: readonly number[]): number => values.reduce((total, x) => total + x, 0);
