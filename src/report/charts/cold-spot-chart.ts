import type { DailyRanges } from '../../measures/series/daily-ranges.ts';
import { figureText } from '../../units/figure-text.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, uprightAxis } from './chart-frame.ts';
import { endLabels, roomForNames } from './end-labels.ts';
import { dateText, mostAndLeast } from './in-words.ts';
import { type Drawn, seriesChannels, stylesOf } from './palette.ts';
import { alongDays, dayChannel } from './year-chart.ts';

/** The coldest spot of one room under each plan. */
export interface ColdSpotData {
  readonly room: string;
  readonly plans: readonly (Drawn & {
    readonly name: string;
    /** Relative humidity at the spot. [%] */
    readonly days: DailyRanges;
    /** [h] */
    readonly hoursAbove80: number;
  })[];
}

/** Relative humidity at a room's coldest spot over the year, by plan, as means of weeks. */
export function coldSpotChart({ room, plans }: ColdSpotData, width: number): Chart {
  const hours = plans.map(({ name, hoursAbove80 }) => ({ name, value: hoursAbove80 }));
  const damp = hours.some(({ value }) => value >= 0.5);
  const title = damp
    ? `The cold spot of ${room} is over 80 % for ${mostAndLeast(hours, ' h')}`
    : `The cold spot of ${room} is never over 80 %`;
  const weeks = plans.map(({ days }) => weeklyMeans(days));
  const shown = weeks.flatMap((list) => list.map(({ v }) => v));
  const domain: [number, number] = [
    Math.max(0, 10 * Math.floor((Math.min(80, ...shown) - 2) / 10)),
    Math.min(100, 10 * Math.ceil((Math.max(80, ...shown) + 2) / 10)),
  ];
  const height = isNarrow(width) ? 240 : 260;
  const right = roomForNames(
    plans.map(({ name }) => name),
    width,
  );
  const y = {
    field: 'v',
    type: 'quantitative',
    scale: { domain, nice: false, zero: false },
    axis: uprightAxis('Surface humidity [%], dashed: mould can grow', 20),
  };
  const look = seriesChannels(stylesOf(plans));
  const spec = chartFrame({
    width,
    height,
    description: title,
    layer: [
      {
        data: { values: weeks.flatMap((list, series) => list.map((one) => ({ ...one, series }))) },
        mark: { type: 'line', strokeWidth: 1.8, clip: true },
        encoding: {
          x: dayChannel(width, plans[0]?.days),
          y,
          ...look,
        },
      },
      {
        data: { values: [{ v: 80 }] },
        mark: { type: 'rule', strokeDash: [3, 3], opacity: 0.7 },
        encoding: { y },
      },
      ...endLabels(
        plans.map(({ name }, k) => ({ name, value: weeks[k]!.at(-1)?.v ?? 0 })),
        domain,
        height - 50,
        right,
        look,
      ),
    ],
  });
  const days = plans[0]?.days;
  return {
    title,
    description:
      `Relative humidity at the surface of the coldest spot of ${room}, one line a plan, means of ` +
      `weeks. Hours over 80 %: ${hours.map((h) => `${h.name} ${figureText(h.value, 0)}`).join(', ')}.`,
    spec,
    ...(days !== undefined && { along: alongDays(days, 1) }),
    table: {
      headers: ['day, means', ...plans.map(({ name }) => `${name} [%]`)],
      rows: [
        ['hours over 80 %', ...hours.map(({ value }) => figureText(value, 0))],
        ...Array.from(days?.mean ?? [], (_, k) => [
          dateText((days?.start ?? 0) + k * SECONDS_PER_DAY),
          ...plans.map((plan) => figureText(plan.days.mean[k], 1)),
        ]),
      ],
    },
  };
}

/**
 * Means of seven days each from the daily means, at the middle of the seven. Days left over at the
 * end make a last mean of their own where there are four or more, or where there is nothing else.
 */
export function weeklyMeans({ mean, start }: DailyRanges): { t: number; v: number }[] {
  const weeks: { t: number; v: number }[] = [];
  for (let first = 0; first < mean.length; first += 7) {
    const days = mean.subarray(first, first + 7);
    if (days.length < 4 && weeks.length > 0) break;
    const sum = days.reduce((total, value) => total + value, 0);
    weeks.push({
      t: (start + (first + days.length / 2) * SECONDS_PER_DAY) * 1000,
      v: Math.round((100 * sum) / days.length) / 100,
    });
  }
  return weeks;
}
