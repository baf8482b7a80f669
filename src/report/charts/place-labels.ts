/** A mark on a picture and the word that belongs to it. [px] */
export interface Mark {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** Place of a word: its left edge and its middle. [px] */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
}

/**
 * A place for the word of every mark, as near to it as there is room: over no other mark, over no
 * other word, inside the picture. Marks from top to bottom choose first. Where there is room nowhere
 * the word stands over others beside its mark, inside the picture if that can be. Lines are kept clear
 * where there is room elsewhere.
 *
 * @param lines  places that lines go through, each from one to the next [px]
 * @param others  marks without words [px]
 */
export function placeLabels(
  marks: readonly Mark[],
  [width, height]: readonly [number, number],
  lines: readonly (readonly Pick<Mark, 'x' | 'y'>[])[],
  others: readonly Pick<Mark, 'x' | 'y'>[] = [],
): LabelPlace[] {
  const drawn = lines.flatMap(alongLine);
  const taken: Box[] = [...marks, ...others].map(({ x, y }) => ({
    x: x - DOT,
    y: y - DOT,
    w: 2 * DOT,
    h: 2 * DOT,
  }));
  const places = new Array<LabelPlace>(marks.length);
  const order = marks.map((_, k) => k).sort((a, b) => marks[a]!.y - marks[b]!.y);
  for (const k of order) {
    const mark = marks[k]!;
    const w = CHARACTER * [...mark.text].length;
    const boxes = candidates(mark, w);
    const inside = boxes.filter(
      (box) => box.x >= 0 && box.x + box.w <= width && box.y >= 0 && box.y + box.h <= height,
    );
    const free = inside.filter((box) => !taken.some((other) => overlap(box, other)));
    const clear = free.slice(0, NEAR).find((box) => !drawn.some((other) => overlap(box, other)));
    const box = clear ?? free[0] ?? inside[0] ?? boxes[0]!;
    taken.push(box);
    places[k] = { x: box.x, y: box.y + LINE / 2 };
  }
  return places;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Right and left of the mark first, then further and further up and down. */
function candidates({ x, y }: Mark, w: number): Box[] {
  const rises = [0, ...Array.from({ length: RISES }, (_, k) => [-(k + 1), k + 1]).flat()];
  return rises.flatMap((rise) => {
    const out = rise === 0 ? DOT + 3 : DOT + 6 + Math.min(12, 2 * Math.abs(rise));
    const top = y - LINE / 2 + rise * STEP;
    return [
      { x: x + out, y: top, w, h: LINE },
      { x: x - out - w, y: top, w, h: LINE },
    ];
  });
}

/** Small boxes along a line. */
function alongLine(line: readonly Pick<Mark, 'x' | 'y'>[]): Box[] {
  return line.slice(1).flatMap((to, k) => {
    const from = line[k]!;
    const pieces = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / PIECE));
    return Array.from({ length: pieces + 1 }, (_, n) => ({
      x: from.x + ((to.x - from.x) * n) / pieces - 1,
      y: from.y + ((to.y - from.y) * n) / pieces - 1,
      ...{ w: 2, h: 2 },
    }));
  });
}

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

const DOT = 6; // px
const LINE = 13; // px
const STEP = 7; // px
const RISES = 24;
const PIECE = 4; // px
/** Free places that are looked at for one off the lines, the nearest. */
const NEAR = 8;
const CHARACTER = 6.5; // px, at 11 px
