import { figureText } from '../../units/figure-text.ts';
import { type LocalClock, localDay, toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, uprightAxis } from './chart-frame.ts';
import { endLabels, roomForNames } from './end-labels.ts';
import { dateText, mostAndLeast } from './in-words.ts';
import { type Drawn, seriesChannels, stylesOf } from './palette.ts';
import { dayChannel } from './year-chart.ts';

/** The mould index in one room under each plan. */
export interface MouldData {
  readonly room: string;
  /** An instant of the first day. [s UTC] */
  readonly start: number;
  readonly clock: LocalClock;
  /** Index at the end of each day of the wall clock. [0 to 6] */
  readonly plans: readonly (Drawn & { readonly name: string; readonly index: ArrayLike<number> })[];
}

/** The mould index at a room's coldest spot over the year, by plan. */
export function mouldChart({ room, start, clock, plans }: MouldData, width: number): Chart {
  const list = plans.map(({ name, index }) => ({ name, values: Array.from(index) }));
  const peaks = list.map(({ name, values }) => ({ name, value: Math.max(0, ...values) }));
  const highest = Math.max(0, ...peaks.map(({ value }) => value));
  const verdict =
    highest >= 3
      ? 'Mould would be seen by eye'
      : highest >= 1
        ? 'Mould would grow, seen only under a microscope,'
        : 'Mould would not get going';
  const title = `${verdict} in ${room}: index ${mostAndLeast(peaks, '', { decimals: 2 })}`;
  // Next to nothing is drawn as next to nothing: the axis always reaches the first step of growth.
  const domain: [number, number] = [0, Math.min(6, Math.ceil(highest + 0.2))];
  const days = Math.max(0, ...list.map(({ values }) => values.length));
  const first = localDay(toLocal(clock, start));
  const endOf = (day: number) => (first + day + 1) * SECONDS_PER_DAY;
  const height = isNarrow(width) ? 240 : 260;
  const names = plans.map(({ name }) => name);
  const right = roomForNames(names, width);
  const y = {
    field: 'v',
    type: 'quantitative',
    scale: { domain, nice: false },
    axis: uprightAxis('Mould index, 1: seen under a microscope, 3: by eye', 20),
  };
  const steps = STEPS.filter(({ v }) => v <= domain[1]);
  const look = seriesChannels(stylesOf(plans));
  const spec = chartFrame({
    width,
    height,
    description: title,
    layer: [
      {
        data: {
          values: list.flatMap(({ values }, series) =>
            values.map((v, k) => ({ t: endOf(k) * 1000, v: Math.round(v * 1000) / 1000, series })),
          ),
        },
        mark: { type: 'line', strokeWidth: 1.8, clip: true },
        encoding: { x: dayChannel(width), y, ...look },
      },
      {
        data: { values: steps },
        mark: { type: 'rule', strokeDash: [3, 3], opacity: 0.6 },
        encoding: { y },
      },
      ...endLabels(
        list.map(({ name, values }) => ({ name, value: values.at(-1) ?? 0 })),
        domain,
        height - 50,
        right,
        look,
      ),
    ],
  });
  return {
    title,
    description:
      `VTT mould index at the coldest spot of ${room}, one line a plan, over ${days} days; 1 is ` +
      `growth under a microscope, 3 is seen by eye, 6 covers all. Highest: ` +
      `${peaks.map((p) => `${p.name} ${figureText(p.value, 2)}`).join(', ')}.`,
    spec,
    along: { row: 1, from: endOf(0) * 1000, step: SECONDS_PER_DAY * 1000 },
    table: {
      headers: ['day', ...names],
      rows: [
        ['highest', ...peaks.map(({ value }) => figureText(value, 2))],
        ...Array.from({ length: days }, (_, k) => [
          dateText((first + k) * SECONDS_PER_DAY),
          ...list.map(({ values }) => figureText(values[k], 2)),
        ]),
      ],
    },
  };
}

/** Growth under a microscope, and growth seen by eye. */
const STEPS = [{ v: 1 }, { v: 3 }];
