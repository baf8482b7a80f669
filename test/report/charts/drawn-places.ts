/** Where on a drawn picture its plot and its marks lie, from its left edge. [px] */
export interface DrawnPlaces {
  readonly plot: readonly [number, number];
  /** Per mark that is a path, the places of its corners in their order. */
  readonly marks: readonly (readonly number[])[];
}

/** Read from the SVG text, every group shifted as it says. */
export function drawnPlaces(svg: string): DrawnPlaces {
  const shifts = [0];
  const marks: number[][] = [];
  let plot: readonly [number, number] = [0, 0];
  for (const [tag, name] of svg.matchAll(/<(\/?[a-zA-Z]+)[^>]*>/g)) {
    const own = Number(/transform="translate\((-?[\d.]+)/.exec(tag)?.[1] ?? 0);
    const left = shifts.at(-1)! + own;
    if (name === 'g' && !tag.endsWith('/>')) shifts.push(left);
    if (name === '/g') shifts.pop();
    if (name === 'path') marks.push(corners(/ d="([^"]*)"/.exec(tag)![1]!).map((x) => x + left));
    // Lines of the upright axis go all the way across.
    const across = Number(/ x2="([\d.]+)"/.exec(tag)?.[1] ?? 0);
    if (name === 'line' && across > plot[1] - plot[0]) plot = [left, left + across];
  }
  return { plot, marks };
}

function corners(path: string): number[] {
  const places: number[] = [];
  for (const [, letter, x] of path.matchAll(/([MLh])(-?[\d.]+)/g)) {
    places.push(letter === 'h' ? places.at(-1)! + Number(x) : Number(x));
  }
  return places;
}
