import { figureText } from '../../units/figure-text.ts';
import { isoMinute } from '../../units/iso-time.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, timeAxis, timeDomain, uprightAxis } from './chart-frame.ts';
import {
  bandLayers,
  bandText,
  CLIMATE,
  type ClimateQuantity,
  climateDomain,
  countOutside,
  type Edges,
  point,
} from './climate.ts';
import { endLabels, roomForNames } from './end-labels.ts';
import { dateText, mostAndLeast } from './in-words.ts';
import { type Drawn, HUES, seriesChannels, stylesOf } from './palette.ts';

/** A week of one room, or any other stretch of some days, hour by hour. */
export interface WeekData {
  readonly room: string;
  readonly quantity: ClimateQuantity;
  readonly band: Edges;
  /** Instant at which the first hour begins. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  /** Hourly values by plan. [°C] or [%] */
  readonly plans: readonly (Drawn & {
    readonly name: string;
    readonly values: ArrayLike<number>;
  })[];
  /** Share of each hour with somebody in the room. [-] */
  readonly occupied?: ArrayLike<number>;
}

/** Temperature or humidity through a chosen week, by plan, with the band and when somebody is in. */
export function weekChart(data: WeekData, width: number): Chart {
  const { quantity, band, plans } = data;
  const words = CLIMATE[quantity];
  const title = titleOf(data);
  const inside = data.occupied === undefined ? '' : ', bar: occupied';
  const hours = plans[0]?.values.length ?? 0;
  const at = (h: number): number => toLocal(data.clock, data.start + h * SECONDS_PER_HOUR);
  const all = plans.flatMap(({ values }) => Array.from(values));
  const domain = climateDomain(quantity, band, all);
  const height = isNarrow(width) ? 240 : 280;
  const room = roomForNames(
    plans.map(({ name }) => name),
    width,
  );
  const x = {
    field: 't',
    type: 'temporal',
    scale: { type: 'utc', domain: timeDomain(at(0), at(hours)) },
    axis: timeAxis(
      isNarrow(width) ? '%-d %b' : '%a %-d %b',
      isNarrow(width) ? { interval: 'day', step: 2 } : 'day',
    ),
  };
  const y = {
    field: 'v',
    type: 'quantitative',
    scale: { domain, nice: false, zero: false },
    axis: uprightAxis(`${words.title}, shaded: ${bandText(band, quantity)}${inside}`, 16),
  };
  const lines = plans.flatMap(({ values }, series) =>
    Array.from(values, (v, h) => ({
      t: (at(h) + SECONDS_PER_HOUR / 2) * 1000,
      v: point(v),
      series,
    })),
  );
  const look = seriesChannels(stylesOf(plans));
  const spec = chartFrame({
    width,
    height,
    description: title,
    layer: [
      {
        data: { values: lines },
        mark: { type: 'line', strokeWidth: 1.6, clip: true },
        encoding: { x, y, ...look },
      },
      ...bandLayers(band, domain),
      ...presence(data, hours, at),
      ...endLabels(
        plans.map(({ name, values }) => ({ name, value: values[hours - 1] ?? 0 })),
        domain,
        height - 50,
        room,
        look,
      ),
    ],
  });
  const shown = data.occupied === undefined ? '' : ' The bar at the bottom is when somebody is in.';
  return {
    title,
    description:
      `Hourly ${quantity} in ${data.room} from ${dateText(at(0))}, ${Math.round(hours / 24)} days, ` +
      `one line a plan. ${plans.map((plan) => rangeText(plan, words.unit)).join(' ')}${shown}`,
    spec,
    // Where the clock jumps, rows are not evenly spread.
    ...(at(hours - 1) - at(0) === (hours - 1) * SECONDS_PER_HOUR && {
      along: { row: 0, from: (at(0) + SECONDS_PER_HOUR / 2) * 1000, step: SECONDS_PER_HOUR * 1000 },
    }),
    table: {
      headers: ['hour beginning', ...plans.map(({ name }) => `${name} [${words.unit.trim()}]`)],
      rows: Array.from({ length: hours }, (_, h) => [
        isoMinute(at(h)),
        ...plans.map(({ values }) => figureText(values[h], 1)),
      ]),
    },
  };
}

function titleOf({ room, quantity, band, plans }: WeekData): string {
  const words = CLIMATE[quantity];
  const hours = plans[0]?.values.length ?? 0;
  const counts = plans.map(({ name, values }) => ({
    name,
    ...countOutside(Array.from(values), band),
  }));
  const sum = (side: 'below' | 'above') => counts.reduce((total, count) => total + count[side], 0);
  const side = sum('below') >= sum('above') ? 'below' : 'above';
  if (sum(side) === 0) return `${room} stays at ${bandText(band, quantity)}`;
  const edge = side === 'below' ? band.low : band.high;
  const named = counts.map((count) => ({ name: count.name, value: count[side] }));
  return `${room} is ${side} ${edge}${words.unit} for ${mostAndLeast(named, ' h', { of: ` of ${hours}` })}`;
}

function rangeText({ name, values }: WeekData['plans'][number], unit: string): string {
  const all = Array.from(values);
  return `${name}: ${figureText(Math.min(...all), 1)} to ${figureText(Math.max(...all), 1)}${unit}.`;
}

/** A bar along the bottom while somebody is in. */
function presence({ occupied }: WeekData, hours: number, at: (h: number) => number): object[] {
  if (occupied === undefined) return [];
  const values: { from: number; to: number }[] = [];
  for (let h = 0; h < hours; h++) {
    if (!(occupied[h]! >= 0.5)) continue;
    const last = values.at(-1);
    if (last !== undefined && last.to === at(h) * 1000) last.to += SECONDS_PER_HOUR * 1000;
    else values.push({ from: at(h) * 1000, to: (at(h) + SECONDS_PER_HOUR) * 1000 });
  }
  if (values.length === 0) return [];
  return [
    {
      data: { values },
      mark: { type: 'rect', color: HUES.people, opacity: 0.8, clip: true },
      encoding: {
        x: { field: 'from', type: 'temporal' },
        x2: { field: 'to' },
        y: { value: { expr: 'height - 6' } },
        y2: { value: { expr: 'height - 1' } },
      },
    },
  ];
}
