import { figureText, signedText } from '../../units/figure-text.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow } from './chart-frame.ts';
import { HUES } from './palette.ts';
import type { WaterBalance } from './water-balance.ts';

/** Where the water of a plan came from and went, a bar for each way, largest first. */
export function waterChart(balance: WaterBalance, plan: string, width: number): Chart {
  const ways = [...balance].sort((a, b) => b.kg - a.kg);
  const came = ways[0];
  const went = ways.at(-1);
  const title =
    came === undefined || went === undefined || came.kg <= 0 || went.kg >= 0
      ? `Next to no water came or went under ${plan}`
      : `Most water came from ${came.way} (${figureText(came.kg, 0)} kg) and most left through ` +
        `${went.way} (${figureText(-went.kg, 0)} kg) under ${plan}`;
  const values = ways.map(({ way, kg }, row) => ({
    row,
    way,
    kg: Math.round(kg * 10) / 10,
    told: signedText(kg, 0).replace('-', '−'),
    into: kg > 0 ? 1 : 0,
  }));
  const low = Math.min(0, ...ways.map(({ kg }) => kg));
  const high = Math.max(1, ...ways.map(({ kg }) => kg));
  // Room for the figures beyond the ends of the longest bars.
  const plot = width - 24 - 6.4 * Math.max(0, ...ways.map(({ way }) => way.length));
  const beyond = ((high - low) * FIGURE) / (plot - 2 * FIGURE);
  const y = {
    field: 'row',
    type: 'ordinal',
    scale: { paddingInner: 0.35, paddingOuter: 0.2 },
    axis: {
      title: null,
      ticks: false,
      domain: false,
      labelExpr: `${JSON.stringify(ways.map(({ way }) => way))}[datum.value]`,
      labelLimit: 180,
    },
  };
  const x = {
    field: 'kg',
    type: 'quantitative',
    scale: { domain: [low - beyond, high + beyond], nice: false },
    axis: { title: 'Water into the air [kg]', tickCount: isNarrow(width) ? 3 : 5, format: '.0f' },
  };
  const text = (sign: 1 | -1) => ({
    data: { values: values.filter(({ into }) => (into === 1) === sign > 0) },
    mark: { type: 'text', align: sign > 0 ? 'left' : 'right', dx: 5 * sign },
    encoding: { x, y, text: { field: 'told', type: 'nominal' } },
  });
  const spec = chartFrame({
    width,
    height: 70 + 26 * Math.max(1, ways.length),
    description: title,
    layer: [
      {
        data: { values },
        mark: { type: 'bar' },
        encoding: {
          x,
          y,
          color: {
            field: 'into',
            type: 'nominal',
            scale: { domain: [0, 1], range: [HUES.dry, HUES.damp] },
            legend: null,
          },
        },
      },
      text(1),
      text(-1),
      {
        data: { values: [{ kg: 0 }] },
        mark: { type: 'rule', opacity: 0.7 },
        encoding: { x },
      },
    ],
  });
  return {
    title,
    description:
      `Water of the whole home under ${plan} [kg], bars to the right for water that came into the ` +
      `air and to the left for water that left it: ` +
      `${ways.map(({ way, kg }) => `${way} ${signedText(kg, 0)}`).join('; ')}.`,
    spec,
    table: {
      headers: ['way', 'water [kg]'],
      rows: ways.map(({ way, kg }) => [way, signedText(kg, 1)]),
    },
  };
}

/** Room for a figure and its sign. [px] */
const FIGURE = 50;
