import { signedWithMinus } from '../../units/minus-sign.ts';
import { shortened } from '../shortened.ts';
import type { Chart } from './chart.ts';
import { chartFrame } from './chart-frame.ts';
import { HUES } from './palette.ts';

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
  const title = `Of ${count} draws, ${plan} ${told.slice(0, -1).join(', ')} and ${told.at(-1)}`;
  const plot = width - 2 * MARGIN;
  // Where one line has no room for name and figures, all rows have two.
  const lines = figures.some((figure) => wordsOf(figure).length > plot / CHARACTER) ? 2 : 1;
  const pitch = LINE * lines + DOTS + SCALE;
  const rows = figures.map((figure, k) => rowOf(figure, { top: k * pitch, lines, plot }));
  const pixels = (field: string) => ({ field, type: 'quantitative', scale: null, axis: null });
  const across = { x: pixels('x'), y: pixels('y') };
  const frame = chartFrame({
    ...{ width: plot, height: pitch * figures.length, description: title },
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
      ...(['left', 'right'] as const).map((align) => ({
        data: {
          values: rows.flatMap(({ ends }) => ends.filter((end) => end.align === align)),
        },
        mark: { type: 'text', align, opacity: 0.8 },
        encoding: { ...across, text: { field: 'text', type: 'nominal' } },
      })),
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

interface RowSpace {
  /** Upper edge of the row. [px] */
  readonly top: number;
  /** Lines that its words take. */
  readonly lines: 1 | 2;
  /** Width of the picture. [px] */
  readonly plot: number;
}

/** Places of one row's marks. [px] */
function rowOf(figure: DrawnFigure, { top, lines, plot }: RowSpace) {
  const { changes, p10, p90 } = figure;
  const low = Math.min(0, ...changes);
  const high = Math.max(0, ...changes);
  const x = (value: number) => round(((value - low) / (high - low || 1)) * plot);
  const y = top + LINE * lines + DOTS / 2 + 4;
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
    words: (lines === 1 ? [wordsOf(figure)] : [`${figure.name}:`, figuresOf(figure)]).map(
      (text, line) => ({ x: 0, y: top + LINE * line + 9, text: shortened(text, plot / CHARACTER) }),
    ),
    ends: scaleOf(figure, [low, high]).map((end) => ({
      ...{ ...end, x: x(end.value), y: y + DOTS / 2 + 12 },
    })),
  };
}

/** Ends of a row's scale in figures, each written towards the middle: nothing, and the draw furthest from it. */
function scaleOf({ unit, decimals }: DrawnFigure, [low, high]: readonly [number, number]) {
  const at = (value: number, align: 'left' | 'right') => ({
    ...{
      value,
      align,
      text: value === 0 ? 'no change' : `${signedWithMinus(value, decimals)} ${unit}`,
    },
  });
  return low === high ? [at(0, 'left')] : [at(low, 'left'), at(high, 'right')];
}

/** "money a year: +154 GBP (+117 to +177)" */
const wordsOf = (figure: DrawnFigure): string => `${figure.name}: ${figuresOf(figure)}`;

function figuresOf(figure: DrawnFigure): string {
  const [low, middle, high] = endsOf(figure);
  return `${middle} ${figure.unit} (${low} to ${high})`;
}

function endsOf({ p10, median, p90, decimals }: DrawnFigure): [string, string, string] {
  return [
    signedWithMinus(p10, decimals),
    signedWithMinus(median, decimals),
    signedWithMinus(p90, decimals),
  ];
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** Heights of a line of words, of the dots, and of the scale below them with what is left free. [px] */
const LINE = 15;
const DOTS = 52;
const SCALE = 30;
const CHARACTER = 6.4; // px, at 11 px
/** Room for half a dot. [px] */
const MARGIN = 5;
