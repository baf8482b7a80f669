import { figureText } from '../../units/figure-text.ts';
import type { Chart } from './chart.ts';
import { chartFrame } from './chart-frame.ts';
import { HUES } from './palette.ts';
import { shortened } from './shortened.ts';

/** What draws of all that is doubtful make of a plan beside its baseline. */
export interface DrawsData {
  readonly plan: string;
  readonly baseline: string;
  /** A row each, from the top. */
  readonly figures: readonly DrawnFigure[];
}

export interface DrawnFigure {
  /** Such as "money a year". */
  readonly name: string;
  readonly unit: string;
  /** What it is to have less of it, such as "costs less". */
  readonly better: string;
  readonly decimals: number;
  /** The plan minus the baseline, draw by draw. [unit] */
  readonly changes: readonly number[];
  readonly p10: number;
  readonly median: number;
  readonly p90: number;
}

/** A dot for each draw: left of the upright line the plan has less, right of it more. */
export function drawsChart({ plan, baseline, figures }: DrawsData, width: number): Chart {
  const count = figures[0]?.changes.length ?? 0;
  const share = (figure: DrawnFigure) => figure.changes.filter((change) => change < 0).length;
  const told = figures.map((figure) => `${figure.better} in ${share(figure)}`);
  const title = `Of ${count} draws, ${plan} ${told.slice(0, -1).join(', ')} and ${told.at(-1)} against ${baseline}`;
  const plot = width - 2 * MARGIN;
  const rows = figures.map((figure, k) => rowOf(figure, k, plot));
  const pixels = (field: string) => ({ field, type: 'quantitative', scale: null, axis: null });
  const across = { x: pixels('x'), y: pixels('y') };
  const frame = chartFrame({
    ...{ width: plot, height: ROW * figures.length, description: title },
    layer: [
      {
        data: { values: rows.map(({ bar }) => bar) },
        mark: { type: 'rule', strokeWidth: 12, opacity: 0.18 },
        encoding: { ...across, x2: { field: 'to' } },
      },
      {
        data: { values: rows.flatMap(({ dots }) => dots) },
        mark: { type: 'point', filled: true, size: 14, opacity: 0.75 },
        encoding: {
          ...across,
          color: {
            ...{ field: 'less', type: 'nominal', legend: null },
            scale: { domain: [0, 1], range: [HUES.warm, HUES.cold] },
          },
        },
      },
      {
        data: { values: rows.map(({ zero }) => zero) },
        mark: { type: 'rule', strokeWidth: 1.4 },
        encoding: { ...across, y2: { field: 'to' } },
      },
      {
        data: { values: rows.flatMap(({ words }) => words) },
        mark: { type: 'text', align: 'left' },
        encoding: { ...across, text: { field: 'text', type: 'nominal' } },
      },
    ],
  });
  return {
    title,
    description:
      `A row each for ${figures.map(({ name }) => name).join(', ')}; a dot a draw, left of the upright line where ` +
      `${plan} has less than ${baseline}, right of it where it has more; the bar is the middle without ` +
      `the lowest and highest tenth. ${figures.map((figure) => `${wordsOf(figure)}.`).join(' ')}`,
    spec: {
      ...frame,
      autosize: { type: 'none' },
      padding: { left: MARGIN, top: 4, right: MARGIN, bottom: 4 },
    },
    table: {
      headers: [
        `change by ${plan}`,
        ...['less in', 'a tenth of the draws is below', 'median', 'a tenth is above'],
      ],
      rows: figures.map((figure) => {
        const [low, middle, high] = endsOf(figure);
        return [
          `${figure.name} [${figure.unit}]`,
          `${share(figure)} of ${count}`,
          low,
          middle,
          high,
        ];
      }),
    },
  };
}

/** Places of one row's marks. [px] */
function rowOf(figure: DrawnFigure, k: number, plot: number) {
  const { changes, p10, p90 } = figure;
  const low = Math.min(0, ...changes);
  const high = Math.max(0, ...changes);
  const x = (value: number) => round(((value - low) / (high - low || 1)) * plot);
  const y = k * ROW + ROW - DOTS / 2 - 4;
  const heaps = new Map<number, number>();
  const dots = changes
    .toSorted((a, b) => a - b)
    .map((change) => {
      // Dots that would lie on each other are set up and down in turn.
      const place = Math.round(x(change) / 4);
      const before = heaps.get(place) ?? 0;
      heaps.set(place, before + 1);
      const side = before % 2 === 0 ? 1 : -1;
      const away = Math.min(Math.ceil(before / 2) * 3.2, DOTS / 2);
      return { x: x(change), y: round(y + side * away), less: change < 0 ? 1 : 0 };
    });
  return {
    dots,
    bar: { x: x(p10), to: Math.max(x(p90), x(p10) + 1), y },
    zero: { x: x(0), y: y - DOTS / 2 - 3, to: y + DOTS / 2 + 3 },
    words: [{ x: 0, y: k * ROW + 9, text: shortened(wordsOf(figure), plot / 5.6) }],
  };
}

/** "money a year: +154 GBP, +117 to +177" */
function wordsOf(figure: DrawnFigure): string {
  const [low, middle, high] = endsOf(figure);
  return `${figure.name}: ${middle} ${figure.unit} (${low} to ${high})`;
}

function endsOf({ p10, median, p90, decimals }: DrawnFigure): [string, string, string] {
  const signed = (value: number) => {
    const text = figureText(value, decimals);
    return Number(text) > 0 ? `+${text}` : text;
  };
  return [signed(p10), signed(median), signed(p90)];
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Height of a row, and of its dots. [px] */
const ROW = 84;
const DOTS = 52;
/** Room for half a dot. [px] */
const MARGIN = 5;
