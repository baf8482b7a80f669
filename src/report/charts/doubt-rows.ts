import { withMinus } from '../../units/minus-sign.ts';
import { shortened } from '../shortened.ts';
import type { WordBox } from './around-words.ts';
import { axisWithRoom } from './axis-with-room.ts';
import type { DoubtData } from './doubt-data.ts';

/** Where everything in the rows of the picture of doubts goes: places in [px], values on its axis. */
export interface DoubtRows {
  /** Width of the plot. [px] */
  readonly width: number;
  /** Height of the plot. [px] */
  readonly height: number;
  /** Distance from the left edge of the picture to the plot. [px] */
  readonly left: number;
  /** Names stand above their bars, as on a phone, or left of the plot. */
  readonly namesAbove: boolean;
  readonly domain: readonly [number, number];
  readonly names: readonly { readonly text: string; readonly y: number }[];
  readonly halves: readonly Half[];
  readonly words: readonly EndWord[];
  /** Rectangles that the words in the plot take up. [px] */
  readonly boxes: readonly WordBox[];
}

/** One half of a bar, from the figure as it is to what an end of the input makes of it. */
interface Half {
  /** Number of the end: 0 for low, 1 for high. */
  readonly end: 0 | 1;
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
}

/** What stands at the end of a bar, and to which side of it. */
interface EndWord {
  readonly text: string;
  readonly at: number;
  readonly side: -1 | 1;
  readonly y: number;
}

/**
 * One row an input. Where both ends of an input move the figure to the same side, its halves lie
 * one below the other, each half as thick, and one word says what both are.
 *
 * @param width  of the whole picture [px]
 */
export function doubtRows(inputs: DoubtData['inputs'], asIs: number, width: number): DoubtRows {
  const narrow = width < NAMES_BESIDE;
  const longest = Math.max(0, ...inputs.map((input) => [...labelOf(input)].length));
  const most = Math.floor(((narrow ? 1 : 0.38) * width - 2 * MARGIN - BESIDE) / CHARACTER);
  const left = narrow ? MARGIN : Math.ceil(MARGIN + widthOf(Math.min(longest, most)) + BESIDE + 1);
  const plot = width - left - MARGIN;
  const told = inputs.map((input) =>
    narrow ? inTwoLines(input, most) : [shortened(labelOf(input), most)],
  );
  const above = (k: number): number => (narrow ? NAME + LINE * (told[k]!.length - 1) : 0);
  const pitch = (k: number): number => above(k) + BAR + BETWEEN;
  const sumTo = (k: number): number => told.slice(0, k).reduce((sum, _, n) => sum + pitch(n), 0);
  const topOf = (k: number): number => sumTo(k) + above(k) + BETWEEN / 2;
  // A name's last line stands on its bar.
  const names = told.flatMap((lines, k) =>
    lines.map((text, line) => ({
      text,
      y: narrow ? topOf(k) - NAME / 2 - LINE * (lines.length - 1 - line) : topOf(k) + BAR / 2,
    })),
  );
  const halves = inputs.flatMap((input, k) => halvesOf(input, asIs, topOf(k)));
  const words = inputs.flatMap((input, k) => wordsOf(input, asIs, topOf(k) + BAR / 2, plot));
  const height = Math.max(NAME + BAR + BETWEEN, sumTo(told.length));
  const ends = [asIs, ...inputs.flatMap(({ atLow, atHigh }) => [atLow, atHigh])];
  const domain = axisWithRoom(
    ends,
    words.map(({ text, ...word }) => ({ ...word, room: BESIDE + widthOf([...text].length) + 2 })),
    plot,
  );
  const px = (value: number): number => ((value - domain[0]) / (domain[1] - domain[0])) * plot;
  const boxes = words.map(({ text, at, side, y }) => {
    const near = px(at) + side * BESIDE;
    const far = near + side * widthOf([...text].length);
    return { left: Math.min(near, far), right: Math.max(near, far), ...lineAt(y) };
  });
  const nameBoxes = names.map(({ text, y }) => ({
    ...{ left: 0, right: widthOf([...text].length), ...lineAt(y) },
  }));
  return {
    ...{ width: plot, height, left, namesAbove: narrow },
    ...{ domain, names, halves, words, boxes: narrow ? [...boxes, ...nameBoxes] : boxes },
  };
}

type Input = DoubtData['inputs'][number];

/** The name of an input with its unit. */
export const labelOf = ({ name, unit = '' }: Input): string =>
  unit === '' ? name : `${name} [${unit}]`;

/** A name with its unit in one line or two, parted before the unit or else between words; what is longer is shortened. */
function inTwoLines(input: Input, most: number): string[] {
  const all = [...labelOf(input)];
  if (all.length <= most) return [labelOf(input)];
  const named = [...input.name].length;
  const parted =
    named < all.length && named <= most ? named : all.slice(0, most + 1).lastIndexOf(' ');
  const at = parted > 0 ? parted : most;
  return [all.slice(0, at), all.slice(parted > 0 ? at + 1 : at)].map((line) =>
    shortened(line.join(''), most),
  );
}

function halvesOf({ atLow, atHigh }: Input, asIs: number, top: number): Half[] {
  const shared = sameSide(atLow, atHigh, asIs);
  return [atLow, atHigh].flatMap((to, k) =>
    to === asIs
      ? []
      : {
          ...{ end: k as 0 | 1, from: asIs, to },
          top: top + (shared && k === 1 ? BAR / 2 : 0),
          bottom: top + (shared && k === 0 ? BAR / 2 : BAR),
        },
  );
}

function wordsOf(input: Input, asIs: number, y: number, plot: number): EndWord[] {
  const { atLow, atHigh } = input;
  const [low, high] = [withMinus(input.low), withMinus(input.high)];
  if (sameSide(atLow, atHigh, asIs)) {
    const side = atLow > asIs ? 1 : -1;
    const at = side * Math.max(side * atLow, side * atHigh);
    const text = shortened(`low ${low}, high ${high}`, (0.45 * plot) / CHARACTER);
    return [{ text, at, side, y }];
  }
  const lowSide = atLow > asIs || atHigh < asIs ? 1 : -1;
  const most = (0.28 * plot) / CHARACTER;
  return [
    { text: shortened(low, most), at: atLow, side: lowSide, y },
    { text: shortened(high, most), at: atHigh, side: lowSide > 0 ? -1 : 1, y },
  ];
}

const sameSide = (atLow: number, atHigh: number, asIs: number): boolean =>
  Math.sign(atLow - asIs) * Math.sign(atHigh - asIs) > 0;

const widthOf = (characters: number): number => CHARACTER * characters;

const lineAt = (y: number) => ({ top: y - LINE / 2, bottom: y + LINE / 2 });

/** Pictures less wide than this have no room for names beside their bars. [px] */
const NAMES_BESIDE = 640;
/** Around the picture, and from a bar to its words. [px] */
const MARGIN = 6;
export const BESIDE = 5;
/** Heights of a name above its bar, a bar, and what is left free between rows. [px] */
const NAME = 16;
const BAR = 14;
const BETWEEN = 10;
const LINE = 13; // px
export const CHARACTER = 6.8; // px, at 11 px, in a wide font
