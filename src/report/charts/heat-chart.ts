import { figureText } from '../../units/figure-text.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, uprightAxis } from './chart-frame.ts';
import { endLabels, type LineEnd, roomForNames } from './end-labels.ts';
import { type HeatGroup, type MonthlyHeat, shownGroups } from './monthly-heat.ts';
import { HUES } from './palette.ts';

/** Where the heat of each month came from and went: gains stand on the line, losses hang below it. */
export function heatChart(heat: MonthlyHeat, plan: string, width: number): Chart {
  const { months, groups } = heat;
  const shown = shownGroups(heat);
  const totals = shown.map((group) => ({ group, kwh: sumOf(groups[group]) }));
  const most = totals.reduce((a, b) => (b.kwh > a.kwh ? b : a));
  const least = totals.reduce((a, b) => (b.kwh < a.kwh ? b : a));
  const title =
    `Most heat came from ${most.group} (${figureText(most.kwh, 0)} kWh) and most left through ` +
    `${least.group} (${figureText(-least.kwh, 0)} kWh) under ${plan}`;
  const narrow = isNarrow(width);
  const height = narrow ? 300 : 320;
  const room = roomForNames(shown, width);
  const domain = domainOf(heat, shown);
  const color = {
    field: 'series',
    type: 'nominal',
    scale: { domain: LOOK.map((_, k) => k), range: LOOK.map(({ colour }) => colour) },
    legend: null,
  };
  const values = shown.flatMap((group, series) =>
    groups[group].map((kwh, month) => ({
      ...{ month, series, kwh: Math.round(kwh * 10) / 10 },
      faint: LOOK[series]!.opacity,
    })),
  );
  const y = {
    field: 'kwh',
    type: 'quantitative',
    stack: 'zero',
    scale: { domain, nice: false },
    axis: uprightAxis('Heat into the rooms, below 0 out of them [kWh]', 34, { format: '.0f' }),
  };
  const spec = chartFrame({
    width,
    height,
    description: title,
    layer: [
      {
        data: { values },
        mark: { type: 'bar', strokeWidth: 1 },
        encoding: {
          x: {
            field: 'month',
            type: 'ordinal',
            scale: { paddingInner: 0.25, paddingOuter: 0.1 },
            axis: {
              title: null,
              labelAngle: 0,
              ticks: false,
              domain: false,
              // A month's number to three letters, or to one where there is little room.
              labelExpr: `${JSON.stringify(months.map((m) => m.slice(0, narrow ? 1 : 3)))}[datum.value]`,
            },
          },
          y,
          order: { field: 'series', type: 'quantitative' },
          color,
          stroke: color,
          fillOpacity: { field: 'faint', type: 'quantitative', scale: null },
        },
      },
      {
        data: { values: [{ kwh: 0 }] },
        mark: { type: 'rule', opacity: 0.7 },
        encoding: { y: { field: 'kwh', type: 'quantitative' } },
      },
      ...endLabels(lastStack(heat, shown), domain, height - 50, room, { color }),
    ],
  });
  return {
    title,
    description:
      `Heat of the whole home by month under ${plan}, bars up for heat that came into the rooms and ` +
      `down for heat that left. Over the period [kWh]: ` +
      `${totals.map(({ group, kwh }) => `${group} ${figureText(kwh, 0)}`).join('; ')}.`,
    spec,
    ...(months.length > 0 && { along: { row: 1, from: 0, step: 1 } }),
    table: {
      headers: ['month', ...shown.map((group) => `${group} [kWh]`)],
      rows: [
        ['all', ...totals.map(({ kwh }) => figureText(kwh, 0))], // has no bar, so it comes first
        ...months.map((month, k) => [
          month,
          ...shown.map((group) => figureText(groups[group][k], 0)),
        ]),
      ],
    },
  };
}

/** From the deepest to the highest stack, and a little more. */
function domainOf({ months, groups }: MonthlyHeat, shown: readonly HeatGroup[]): [number, number] {
  const of = (sign: 1 | -1) =>
    months.map((_, k) => sumOf(shown.map((group) => Math.max(0, sign * groups[group][k]!))));
  const up = Math.max(1, ...of(1));
  const down = Math.max(1, ...of(-1));
  return [-1.04 * down, 1.04 * up];
}

/** Middle of every group's piece in the last month, where its name is written. */
function lastStack({ months, groups }: MonthlyHeat, shown: readonly HeatGroup[]): LineEnd[] {
  let up = 0;
  let down = 0;
  return shown.map((name) => {
    const kwh = groups[name][months.length - 1] ?? 0;
    const from = kwh < 0 ? down : up;
    if (kwh < 0) down += kwh;
    else up += kwh;
    return { name, value: from + kwh / 2 };
  });
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Appearance by group: full and faint take turns, so that neighbours differ in grey as well. */
const LOOK = [
  { colour: HUES.warm, opacity: 1 },
  { colour: HUES.dry, opacity: 0.2 },
  { colour: HUES.people, opacity: 0.9 },
  { colour: HUES.dry, opacity: 0.5 },
  { colour: HUES.cold, opacity: 1 },
  { colour: HUES.damp, opacity: 0.2 },
  { colour: HUES.air, opacity: 0.75 },
  { colour: HUES.damp, opacity: 0.05 },
  { colour: HUES.cold, opacity: 0.45 },
];
