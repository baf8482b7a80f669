import { shortened } from '../shortened.ts';
import { aroundWords } from './around-words.ts';
import { moneyLabels } from './chart-frame.ts';
import { BESIDE, CHARACTER, type DoubtRows } from './doubt-rows.ts';
import { HUES } from './palette.ts';

/** What is written around the bars, and the figure as it is. */
interface DoubtWords {
  /** What the level axis shows, and its unit. */
  readonly figure: string;
  readonly unit: string;
  readonly asIs: number;
  /** The figure as it is, in words. */
  readonly told: string;
  /** How many of the inputs are drawn, where not all are; else empty. */
  readonly some: string;
}

/** The picture of doubts as layers: bars, upright lines between the words, words, and a key. */
export function doubtLayers(
  rows: DoubtRows,
  { figure, unit, asIs, told, some }: DoubtWords,
): object[] {
  const { width, left, height, domain } = rows;
  const placeOf = (value: number): number =>
    ((value - domain[0]) / (domain[1] - domain[0])) * width;
  const behind = ` [${unit}]${some === '' ? '' : `, ${some}`}`;
  const x = {
    field: 'value',
    type: 'quantitative',
    scale: { domain, nice: false, zero: false },
    axis: {
      title: `${shortened(figure, width / CHARACTER - behind.length)}${behind}`,
      ...{ tickCount: width < 400 ? 4 : 6, ...moneyLabels('.6~f'), grid: false, labelFlush: 16 },
    },
  };
  const line = (value: number, mark: object) => ({
    data: {
      values: aroundWords(placeOf(value), [0, height], rows.boxes).map((piece) => ({
        value,
        ...piece,
      })),
    },
    mark: { type: 'rule', ...mark },
    encoding: { x, y: pixels('top'), y2: { field: 'bottom' } },
  });
  const wordsTo = (side: -1 | 1) =>
    texts(
      rows.words
        .filter((word) => word.side === side)
        .map(({ at, ...word }) => ({ ...word, value: at })),
      { x },
      { align: side > 0 ? 'left' : 'right', dx: side * BESIDE },
    );
  const names = rows.namesAbove ? { align: 'left' } : { align: 'right', dx: -BESIDE - 1 };
  const half = (CHARACTER * [...told].length) / 2;
  const middle = Math.max(half - left, Math.min(placeOf(asIs), width - half));
  return [
    bars(
      rows.halves.map(({ from, ...one }) => ({ value: from, ...one })),
      { x, x2: { field: 'to' } },
    ),
    ...(domain[0] <= 0 && domain[1] >= 0 ? [line(0, { strokeDash: [3, 3], opacity: 0.7 })] : []),
    line(asIs, { strokeWidth: 1.6 }),
    wordsTo(-1),
    wordsTo(1),
    texts(rows.names, { x: { value: 0 } }, names),
    texts([{ text: told, x: Math.round(middle), y: -9 }], { x: pixels('x') }, { align: 'center' }),
    bars(
      KEY.map(({ end, at }) => ({ end, x: at - left, to: at - left + 16, top: -38, bottom: -27 })),
      { x: pixels('x'), x2: { field: 'to' } },
    ),
    texts(
      KEY.map(({ text, at }) => ({ text, x: at - left + 21, y: -32 })),
      { x: pixels('x') },
      { align: 'left' },
    ),
  ];
}

/** Halves of bars by the field `end`: outlined for low, filled for high. */
const bars = (values: readonly { readonly end: 0 | 1 }[], across: object) => ({
  data: { values: values.map((one) => ({ ...one, full: one.end === 0 ? 0.12 : 1 })) },
  mark: { type: 'rect', strokeWidth: 1.2 },
  encoding: {
    ...across,
    y: pixels('top'),
    y2: { field: 'bottom' },
    color: LOOK,
    stroke: LOOK,
    fillOpacity: { field: 'full', type: 'quantitative', scale: null },
  },
});

const texts = (values: readonly object[], across: object, mark: object) => ({
  data: { values },
  mark: { type: 'text', ...mark },
  encoding: { ...across, y: pixels('y'), text: { field: 'text', type: 'nominal' } },
});

const pixels = (field: string) => ({ field, type: 'quantitative', scale: null });

const LOOK = {
  field: 'end',
  type: 'nominal',
  scale: { domain: [0, 1], range: [HUES.cold, HUES.warm] },
  legend: null,
};

/** Places from the left edge of the picture. [px] */
const KEY = [
  { end: 0, at: 6, text: 'input at its low' },
  { end: 1, at: 140, text: 'input at its high' },
] as const;

/** Kept free above the plot for the key and below it for the axis. [px] */
export const ABOVE = 44;
export const BELOW = 38;
