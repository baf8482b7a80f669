/*
 * Colours of pictures. One set for light and dark pages: each has a contrast of at least 3 to 1
 * against white and against near-black, which leaves them alike in grey; so a colour never stands
 * alone, but with a dash, a shape, a place or a word. Neighbours stay apart for colour-blind eyes
 * because they alternate between the yellow and the blue side. Ink (axes, words, frames) is
 * `currentColor`: it follows the page's text.
 */

export const INK = 'currentColor';

/** What a colour stands for wherever it stands for something. */
export const HUES = {
  /** What things are compared with. */
  now: '#767a80',
  warm: '#c4681a',
  cold: '#3d7fc9',
  damp: '#12908c',
  dry: '#9a7f1c',
  air: '#8468c9',
  people: '#b8558f',
} as const;

/**
 * How the k-th of several plans or series is drawn: what all are compared with, the first, in grey, and
 * no two of the first twenty alike.
 */
export function seriesStyle(k: number): {
  readonly colour: string;
  readonly dash: readonly number[];
} {
  return {
    colour: k === 0 ? HUES.now : SERIES[(k - 1) % SERIES.length]!,
    dash: DASHES[k % DASHES.length]!,
  };
}

/**
 * Channels that draw lines by the number of their series, in the field `series`.
 *
 * @param styles  number of each series' style, so that a plan keeps its own whichever others are drawn
 */
export function seriesChannels(styles: readonly number[]) {
  const domain = styles.map((_, series) => series);
  const all = styles.map(seriesStyle);
  const channel = (range: readonly unknown[]) => ({
    field: 'series',
    type: 'nominal',
    scale: { domain, range },
    legend: null,
  });
  return {
    color: channel(all.map(({ colour }) => colour)),
    strokeDash: channel(all.map(({ dash }) => dash)),
  };
}

/** A plan that a picture draws a line for. */
export interface Drawn {
  /** Its place among all plans, by which its line looks; among those drawn unless given. */
  readonly number?: number;
}

/** Numbers of the styles of plans. */
export const stylesOf = (plans: readonly Drawn[]): number[] =>
  plans.map(({ number }, k) => number ?? k);

const SERIES = [HUES.cold, HUES.warm, HUES.air, HUES.dry, HUES.people];
const DASHES = [
  [1, 0],
  [6, 3],
  [2, 2],
  [9, 3, 2, 3],
];
