import { figureText } from '../../units/figure-text.ts';
import { isoMinute } from '../../units/iso-time.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, timeAxis, timeDomain, uprightAxis } from './chart-frame.ts';
import { point } from './climate.ts';
import { endLabels, roomForNames } from './end-labels.ts';
import { seriesChannels, seriesStyle } from './palette.ts';
import { roundDomain } from './round-domain.ts';

/** Something that was logged, and what was worked out for the very hours. */
export interface BesideLogData {
  /** What the picture finds. */
  readonly title: string;
  readonly description: string;
  /** Of the upright axis, with its unit. */
  readonly axis: string;
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  /** The log first, then what is set beside it; hourly, NaN where nothing is known. */
  readonly lines: readonly { readonly name: string; readonly values: Float64Array }[];
  /** Half width of a band about the second line; 0 for none. */
  readonly band: number;
  /** Values that cannot be exceeded, such as 100 of a humidity. */
  readonly most: number;
}

/** Lines beside a log, hour by hour; day by day over more than five weeks. Gaps of the log stay open. */
export function besideLogChart(data: BesideLogData, width: number): Chart {
  const { title, description, start, clock, band, most } = data;
  const count = data.lines[0]!.values.length;
  const hours = count > MOST_HOURS ? 24 : 1;
  const lines = data.lines.map(({ name, values }) => ({ name, values: meansOver(values, hours) }));
  const at = (k: number): number => toLocal(clock, start + k * hours * SECONDS_PER_HOUR);
  const times = Array.from(lines[0]!.values, (_, k) => at(k) + (hours * SECONDS_PER_HOUR) / 2);
  const around = band > 0 ? lines[1]!.values : new Float64Array(0);
  const domain = roundDomain([
    ...lines.flatMap(({ values }) => [...values].filter(Number.isFinite)),
    ...[...around].filter(Number.isFinite).flatMap((v) => [v - band, Math.min(most, v + band)]),
  ]);
  const height = isNarrow(width) ? 240 : 280;
  const names = lines.map(({ name }) => name);
  const x = {
    field: 't',
    type: 'temporal',
    scale: {
      type: 'utc',
      domain: timeDomain(at(0), toLocal(clock, start + count * SECONDS_PER_HOUR)),
    },
    axis: { ...timeAxis('%-d %b', 'day'), values: daysTold(at(0), count / 24, isNarrow(width)) },
  };
  const y = {
    field: 'v',
    type: 'quantitative',
    scale: { domain, nice: false, zero: false },
    axis: uprightAxis(`${data.axis}${band > 0 ? ', shaded: range of 95 %' : ''}`, 22),
  };
  const marks = lines.flatMap(({ values }, series) =>
    Array.from(values, (v, k) => ({ t: times[k]! * 1000, v: point(v), series })),
  );
  const shade = Array.from(around, (v, k) => ({
    t: times[k]! * 1000,
    low: point(v - band),
    high: point(Math.min(most, v + band)),
  }));
  const layer = [
    ...(shade.length === 0 ? [] : [shadeLayer(shade)]),
    {
      data: { values: marks },
      mark: {
        type: 'line',
        strokeWidth: 1.5,
        clip: true,
        invalid: 'break-paths-show-path-domains',
      },
      encoding: { x, y, ...seriesChannels(lines.map((_, k) => k)) },
    },
    ...endLabels(
      lines.map(({ name, values }) => ({ name, value: values.findLast(Number.isFinite) ?? 0 })),
      domain,
      height - 50,
      roomForNames(names, width),
    ),
  ];
  return {
    title,
    description,
    spec: chartFrame({ width, height, description: title, layer }),
    table: {
      headers: [hours === 1 ? 'hour beginning' : 'day from', ...names],
      rows: times.map((_, k) => [
        isoMinute(at(k)),
        ...lines.map(({ values }) => figureText(values[k], 1)),
      ]),
    },
  };
}

const shadeLayer = (values: readonly object[]): object => ({
  data: { values },
  mark: { type: 'area', color: seriesStyle(1).colour, opacity: 0.18, clip: true },
  encoding: {
    x: { field: 't', type: 'temporal' },
    y: { field: 'low', type: 'quantitative' },
    y2: { field: 'high' },
  },
});

/** Means over so many values in a row; NaN where fewer than half of them are known. */
function meansOver(values: Float64Array, many: number): Float64Array {
  if (many === 1) return values;
  return Float64Array.from({ length: Math.ceil(values.length / many) }, (_, k) => {
    const known = values.subarray(k * many, (k + 1) * many).filter(Number.isFinite);
    const sum = known.reduce((total, value) => total + value, 0);
    return known.length < many / 2 ? Number.NaN : sum / known.length;
  });
}

/** Midnights that the level axis names, evenly apart. @param from  reading of the wall clock [s local] */
function daysTold(from: number, days: number, narrow: boolean): object[] {
  const first = Math.ceil(from / SECONDS_PER_DAY);
  const apart = Math.max(1, Math.ceil(days / (narrow ? 5 : 7)));
  const step = apart <= 3 ? apart : 7 * Math.ceil(apart / 7);
  return Array.from({ length: Math.floor(days / step) + 1 }, (_, k) => {
    const at = new Date((first + k * step) * SECONDS_PER_DAY * 1000);
    return {
      ...{ year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, date: at.getUTCDate() },
      utc: true,
    };
  });
}

const MOST_HOURS = 35 * 24;
