import type { RoomSeries } from '../../measures/series/plan-series.ts';
import {
  type LocalClock,
  localDay,
  SECONDS_PER_DAY,
  toLocal,
  weekday,
} from '../../units/local-clock.ts';
import type { Edges } from '../charts/climate.ts';
import type { Range } from './range-bar.ts';

/** Some days of one room, hour by hour. */
export interface RoomDays {
  readonly room: string;
  readonly bands: { readonly temperature: Edges; readonly humidity: Edges };
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
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

export type LineLength = '3 hours' | 'day' | 'week';

/** How much one line holds, so that the picture stays a screen or two. */
export function lineLength(days: RoomDays): LineLength {
  const { first, last } = daysOf(days);
  const count = last - first + 1;
  return count <= MOST_DAYS_BY_HOURS ? '3 hours' : count <= MOST_DAYS_BY_DAY ? 'day' : 'week';
}

/** A line for every 3 hours, day or seven days by the wall clock, and a last one for all of them. */
export function roomLines(days: RoomDays): RoomLine[] {
  const { first, last } = daysOf(days);
  const length = lineLength(days);
  const groups = new Map<number, number[]>();
  const all = [...days.series.occupied.keys()];
  for (const h of all) {
    const local = localAt(days, h);
    const key =
      length === '3 hours'
        ? Math.floor(local / THREE_HOURS)
        : length === 'day'
          ? localDay(local)
          : Math.floor((localDay(local) - first) / 7);
    groups.set(key, [...(groups.get(key) ?? []), h]);
  }
  const lines = [...groups].sort(([a], [b]) => a - b);
  return [
    ...lines.map(([key, hours]) => lineOf(days, hours, labelOf(length, key, first, last))),
    lineOf(days, all, 'all'),
  ];
}

/** First and last local day. */
export function daysOf(days: RoomDays): { readonly first: number; readonly last: number } {
  const hours = days.series.occupied.length;
  return { first: localDay(localAt(days, 0)), last: localDay(localAt(days, hours - 1)) };
}

function lineOf({ series, bands }: RoomDays, hours: readonly number[], label: string): RoomLine {
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
    warm: count(temperatures, (t) => t > bands.temperature.high),
    damp: count(humidities, (rh) => rh > bands.humidity.high),
    dry: count(humidities, (rh) => rh < bands.humidity.low),
    occupied: sum(pick(series.occupied)),
    coldSpot: sum(pick(series.coldSpotHumidity)) / hours.length,
  };
}

function labelOf(length: LineLength, key: number, first: number, last: number): string {
  if (length === 'week') {
    const from = first + 7 * key;
    return `${monthDay(from)} to ${monthDay(Math.min(from + 6, last))}`;
  }
  if (length === 'day') return `${WEEKDAYS[weekday(key)]} ${monthDay(key)}`;
  const day = localDay(key * THREE_HOURS);
  const hour = (key * THREE_HOURS - day * SECONDS_PER_DAY) / HOUR;
  return `${WEEKDAYS[weekday(day)]} ${monthDay(day)} ${String(hour).padStart(2, '0')}:00`;
}

/** "01-09" of a local day. */
const monthDay = (day: number): string =>
  new Date(day * SECONDS_PER_DAY * 1000).toISOString().slice(5, 10);

const rangeOf = (values: readonly number[]): Range => ({
  least: Math.min(...values),
  mean: sum(values) / values.length,
  most: Math.max(...values),
});

/** What the wall clock shows when an hour begins. [s local] */
export const localAt = (
  { clock, start }: Pick<RoomDays, 'clock' | 'start'>,
  hour: number,
): number => toLocal(clock, start + hour * HOUR);

const sum = (values: readonly number[]): number => values.reduce((total, x) => total + x, 0);

const HOUR = 3600;
const THREE_HOURS = 3 * HOUR;
const MOST_DAYS_BY_HOURS = 7;
const MOST_DAYS_BY_DAY = 40;
const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
