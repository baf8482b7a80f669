import type { DailyRanges } from '../../measures/series/daily-ranges.ts';
import { figureText } from '../../units/figure-text.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Along, Chart } from './chart.ts';
import { chartFrame, isNarrow, timeAxis, timeDomain, uprightAxis } from './chart-frame.ts';
import {
  bandLayers,
  bandText,
  CLIMATE,
  type ClimateQuantity,
  climateDomain,
  countOutside,
  type Edges,
  edgesWhen,
  point,
} from './climate.ts';
import { dateText } from './in-words.ts';
import { HUES, INK } from './palette.ts';

/** The days of one room under one plan. */
export interface YearData {
  readonly room: string;
  readonly plan: string;
  readonly quantity: ClimateQuantity;
  readonly band: Edges;
  /** [°C] or [%] */
  readonly days: DailyRanges;
  /** 1 for days of mild weather, 0 for others, as all are where it is left out. */
  readonly mild?: ArrayLike<number>;
}

/** Temperature or humidity over the year: from the least to the most of every day, and its mean. */
export function yearChart(data: YearData, width: number): Chart {
  const { room, plan, quantity, band, days } = data;
  const words = CLIMATE[quantity];
  const title = titleOf(data);
  const whenMild = band.mild === undefined ? [] : [band.mild.high];
  const domain = climateDomain(quantity, band, [...days.least, ...days.most, ...whenMild]);
  const values = dailyPoints(days);
  const y = {
    field: 'mean',
    type: 'quantitative',
    scale: { domain, nice: false, zero: false },
    axis: uprightAxis(`${words.title}, shaded: ${bandText(band, quantity)}`, 16),
  };
  const color = quantity === 'temperature' ? HUES.warm : HUES.damp;
  const spec = chartFrame({
    width,
    height: isNarrow(width) ? 220 : 250,
    description: title,
    layer: [
      {
        data: { values },
        mark: { type: 'area', color, opacity: 0.4, clip: true },
        encoding: {
          x: dayChannel(width, days),
          y: { ...y, field: 'least' },
          y2: { field: 'most' },
        },
      },
      {
        data: { values },
        mark: { type: 'line', color, strokeWidth: 1.6, clip: true },
        encoding: { x: dayChannel(width), y },
      },
      ...bandLayers(band, domain),
      ...mildLayers(data, domain),
    ],
  });
  const least = Math.min(...days.least);
  const most = Math.max(...days.most);
  return {
    title,
    description:
      `Daily ${quantity} in ${room} under ${plan}: a strip from the least to the most of each day, ` +
      `a line for its mean. Over ${days.mean.length} days it goes from ${figureText(least, 1)} to ` +
      `${figureText(most, 1)}${words.unit}; fine is ${bandText(band, quantity)}.`,
    spec,
    along: alongDays(days, 0),
    table: {
      headers: ['day', ...['least', 'mean', 'most'].map((h) => `${h} [${words.unit.trim()}]`)],
      rows: dayRows(days),
    },
  };
}

function titleOf({ room, plan, quantity, band, days, mild }: YearData): string {
  const words = CLIMATE[quantity];
  const { below } = countOutside(days.least, band);
  const above = days.most.filter((t, k) => t > edgesWhen(band, mild?.[k] === 1).high).length;
  const also = band.mild === undefined ? '' : ` or, when mild, ${band.mild.high}${words.unit}`;
  const parts = [
    { words: `${words.low} (below ${band.low}${words.unit})`, count: below },
    { words: `${words.high} (above ${band.high}${words.unit}${also})`, count: above },
  ]
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count)
    .map(
      (one, k) =>
        `${one.words} on ${one.count}${k === 0 ? ` of ${days.mean.length}` : ''} ${k > 0 && one.count === 1 ? 'day' : 'days'}`,
    );
  const told =
    parts.length === 0
      ? `stays at ${bandText(band, quantity)} all the time`
      : `is ${parts.join(' and ')}`;
  return `${room} ${told} under ${plan}`;
}

/** Days of mild weather, with what is fine beyond the usual edge. */
function mildLayers({ band, days, mild }: YearData, [, top]: readonly [number, number]): object[] {
  if (band.mild === undefined) return [];
  const at = (day: number): number => (days.start + day * SECONDS_PER_DAY) * 1000;
  const values: { from: number; to: number; low: number; high: number }[] = [];
  for (let k = 0; k < days.mean.length; k++) {
    if (mild?.[k] !== 1) continue;
    const last = values.at(-1);
    if (last !== undefined && last.to === at(k)) last.to = at(k + 1);
    else
      values.push({
        from: at(k),
        to: at(k + 1),
        low: band.high,
        high: Math.min(band.mild.high, top),
      });
  }
  return [
    {
      data: { values },
      mark: { type: 'rect', color: INK, opacity: 0.08, clip: true },
      encoding: {
        x: { field: 'from', type: 'temporal' },
        x2: { field: 'to' },
        y: { field: 'low', type: 'quantitative' },
        y2: { field: 'high' },
      },
    },
  ];
}

/** One point a day, at its noon, with the fields least, mean and most. */
function dailyPoints(days: DailyRanges): Record<string, number | null>[] {
  return Array.from(days.mean, (mean, k) => ({
    t: (days.start + (k + 0.5) * SECONDS_PER_DAY) * 1000,
    least: point(days.least[k]),
    mean: point(mean),
    most: point(days.most[k]),
  }));
}

/**
 * The channel of days over a year.
 *
 * @param span  the days, to be given in one layer of a picture and no more
 */
export const dayChannel = (width: number, span?: Pick<DailyRanges, 'start' | 'mean'>): object => ({
  field: 't',
  type: 'temporal',
  scale: {
    type: 'utc',
    ...(span === undefined
      ? {}
      : {
          domain: timeDomain(span.start, span.start + span.mean.length * SECONDS_PER_DAY),
        }),
  },
  axis: timeAxis('%b', isNarrow(width) ? { interval: 'month', step: 3 } : 'month'),
});

/** Positions of a table's rows, one a day, along the axis. */
export const alongDays = ({ start }: Pick<DailyRanges, 'start'>, row: number): Along => ({
  row,
  from: (start + SECONDS_PER_DAY / 2) * 1000,
  step: SECONDS_PER_DAY * 1000,
});

function dayRows(days: DailyRanges): string[][] {
  return Array.from(days.mean, (mean, k) => [
    dateText(days.start + k * SECONDS_PER_DAY),
    ...[days.least[k], mean, days.most[k]].map((value) => figureText(value, 1)),
  ]);
}
