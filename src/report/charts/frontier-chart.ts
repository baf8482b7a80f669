import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { shortened } from '../shortened.ts';
import type { Chart } from './chart.ts';
import { chartFrame, isNarrow, moneyLabels, uprightAxis } from './chart-frame.ts';
import { HUES } from './palette.ts';

/** What many runs come to, and which of them no other beats. */
export interface FrontierData {
  readonly currency: string;
  /** Every run. */
  readonly runs: readonly FrontierPoint[];
  /** Those that no other beats, the cheapest first. */
  readonly frontier: readonly NamedPoint[];
  /** Where the frontier bends; null for nowhere. */
  readonly bend: NamedPoint | null;
}

interface FrontierPoint {
  /** [currency/year] */
  readonly money: number;
  /** Outside the bands, added up over the rooms. [h] */
  readonly hours: number;
}

interface NamedPoint extends FrontierPoint {
  /** Plan and values, in words. */
  readonly name: string;
}

/** Money against hours outside the bands: every run a dot, those that no other beats joined by a line. */
export function frontierChart(data: FrontierData, width: number): Chart {
  const { currency, frontier, bend } = data;
  const title = titleOf(data);
  const x = {
    field: 'money',
    type: 'quantitative',
    scale: { zero: false },
    axis: { tickCount: 5, ...moneyLabels('.0f'), title: `Money a year [${currency}]` },
  };
  const y = {
    field: 'hours',
    type: 'quantitative',
    scale: { zero: false },
    axis: uprightAxis('Outside the bands [room h]', 40, { format: '.0f' }),
  };
  const marks = frontier.map(({ money, hours }) => ({ money, hours }));
  const dots = thinned(data.runs).map(({ money, hours }) => ({ money, hours }));
  const words = bend === null ? [] : [wordsBeside(bend, data.runs, width)];
  const spec = chartFrame({
    ...{ width, height: isNarrow(width) ? 300 : 340, description: title },
    layer: [
      {
        data: { values: dots },
        mark: { type: 'point', filled: true, size: 18, color: HUES.cold, opacity: 0.55 },
        encoding: { x, y },
      },
      {
        data: { values: marks },
        mark: { type: 'line', color: HUES.warm, strokeWidth: 1.5 },
        encoding: { x, y, order: { field: 'money', type: 'quantitative' } },
      },
      {
        data: { values: marks },
        mark: { type: 'point', filled: true, size: 36, color: HUES.warm, opacity: 1 },
        encoding: { x, y },
      },
      ...words.map(({ align, ...value }) => ({
        data: { values: [value] },
        layer: [
          {
            mark: { type: 'point', shape: 'diamond', size: 160, color: HUES.warm, opacity: 1 },
            encoding: { x, y },
          },
          {
            // Below and left of a frontier lies no run.
            mark: {
              type: 'text',
              align,
              dx: align === 'left' ? 10 : -10,
              dy: align === 'left' ? -10 : 10,
            },
            encoding: { x, y, text: { field: 'text', type: 'nominal' } },
          },
        ],
      })),
    ],
  });
  return {
    ...{ title, spec },
    description:
      'One dot a run: money a year to the right, hours outside the bands upwards; best is at the bottom ' +
      'left. A line joins the runs that no other beats in both; a diamond marks where it bends.',
    table: {
      headers: ['run', `money a year [${currency}]`, 'outside the bands [room h]'],
      rows: frontier.map(({ name, money, hours }) => [
        ...[name, sumText(money, 0), figureText(hours, 0)],
      ]),
    },
  };
}

function titleOf({ currency, runs, frontier, bend }: FrontierData): string {
  const [cheap, kind] = [frontier[0], frontier.at(-1)];
  if (cheap === undefined || kind === undefined) return 'No run has figures';
  const words = ({ money, hours }: FrontierPoint) =>
    `${sumText(money, 0)} ${currency} a year and ${figureText(hours, 0)} room-hours`;
  if (frontier.length === 1) {
    return `${cheap.name} beats all ${runs.length} runs: ${words(cheap)} outside the bands`;
  }
  const ends = `${frontier.length} of ${runs.length} runs are beaten by no other, from ${words(cheap)} to ${words(kind)} outside the bands`;
  return bend === null ? ends : `${ends}; the bend is at ${bend.name}`;
}

/** What the bend is, on the side where there is room. */
function wordsBeside(bend: NamedPoint, runs: readonly FrontierPoint[], width: number) {
  const money = runs.map((run) => run.money);
  const low = Math.min(...money);
  const share = (bend.money - low) / (Math.max(...money) - low || 1);
  const align = share < 0.3 ? 'left' : 'right';
  const room = ((align === 'left' ? 1 - share : share) * (width - 70)) / 6.2;
  return { money: bend.money, hours: bend.hours, text: shortened(bend.name, room), align };
}

/** Every so manieth of very many dots, which would only lie on each other. */
function thinned(runs: readonly FrontierPoint[]): FrontierPoint[] {
  const every = Math.ceil(runs.length / MOST_DOTS);
  return runs.filter((_, k) => k % every === 0);
}

const MOST_DOTS = 3000;
