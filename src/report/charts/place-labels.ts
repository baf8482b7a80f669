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
 * the word stands over others beside its mark, inside the picture if that can be.
 */
export function placeLabels(
  marks: readonly Mark[],
  [width, height]: readonly [number, number],
): LabelPlace[] {
  const taken: Box[] = marks.map(({ x, y }) => ({
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
    const free = inside.find((box) => !taken.some((other) => overlap(box, other)));
    const box = free ?? inside[0] ?? boxes[0]!;
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

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

const DOT = 6; // px
const LINE = 13; // px
const STEP = 7; // px
const RISES = 24;
const CHARACTER = 6.2; // px, at 11 px
