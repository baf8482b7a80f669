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
  warm: '#c4681a',
  cold: '#3d7fc9',
  damp: '#12908c',
  dry: '#9a7f1c',
  air: '#8468c9',
  people: '#b8558f',
} as const;

/** How the k-th of several plans or rooms is drawn: no two of the first sixty alike. */
export function seriesStyle(k: number): {
  readonly colour: string;
  readonly dash: readonly number[];
  readonly shape: string;
} {
  return {
    colour: SERIES[k % SERIES.length]!,
    dash: DASHES[k % DASHES.length]!,
    shape: SHAPES[k % SHAPES.length]!,
  };
}

/** Channels that draw marks by the number of their series, in the field `series`. */
export function seriesChannels(count: number, ...which: readonly ('strokeDash' | 'shape')[]) {
  const domain = Array.from({ length: count }, (_, k) => k);
  const styles = domain.map(seriesStyle);
  const channel = (range: readonly unknown[]) => ({
    field: 'series',
    type: 'nominal',
    scale: { domain, range },
    legend: null,
  });
  return {
    color: channel(styles.map(({ colour }) => colour)),
    ...(which.includes('strokeDash')
      ? { strokeDash: channel(styles.map(({ dash }) => dash)) }
      : {}),
    ...(which.includes('shape') ? { shape: channel(styles.map(({ shape }) => shape)) } : {}),
  };
}

const SERIES = [HUES.cold, HUES.warm, HUES.air, HUES.dry, HUES.people];
const DASHES = [
  [1, 0],
  [6, 3],
  [2, 2],
  [9, 3, 2, 3],
];
const SHAPES = ['circle', 'square', 'triangle-up', 'diamond', 'cross', 'triangle-down'];
