import type { Edges } from '../charts/climate.ts';

/** A scale of characters: its ends, how many characters it has, and the band marked on it. */
export interface BarScale {
  readonly low: number;
  readonly high: number;
  readonly length: number;
  readonly band: Edges;
}

/** Least, mean and most of something. */
export interface Range {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

/** ".....|.===o==.....|..": the scale, `=` from least to most, `o` the mean, `|` the band's edges. */
export function rangeBar({ least, mean, most }: Range, scale: BarScale): string {
  const cells = Array<string>(scale.length).fill('.');
  cells.fill('=', placeOf(least, scale), placeOf(most, scale) + 1);
  for (const edge of edgesOn(scale)) cells[placeOf(edge, scale)] = '|';
  cells[placeOf(mean, scale)] = 'o';
  return cells.join('');
}

/** "...===o==x...": `=` from least to most, `o` their mean, `x` another mean, `*` where both fall. */
export function besideBar(range: Range, other: number, scale: BarScale): string {
  const cells = [...rangeBar(range, scale)];
  const at = placeOf(other, scale);
  cells[at] = at === placeOf(range.mean, scale) ? '*' : 'x';
  return cells.join('');
}

/** The figures of a scale, each over its place: the band's edges first, the ends where room is left. */
export function barRuler(scale: BarScale): string {
  let line = ' '.repeat(scale.length);
  for (const figure of [...edgesOn(scale), scale.low, scale.high]) {
    const text = String(figure);
    const middle = placeOf(figure, scale) - Math.floor(text.length / 2);
    const at = Math.max(0, Math.min(scale.length - text.length, middle));
    const around = line.slice(Math.max(0, at - 1), at + text.length + 1);
    if (around.trim() === '') line = line.slice(0, at) + text + line.slice(at + text.length);
  }
  return line;
}

/** Number of the character that a value falls on; values are within the scale. */
function placeOf(value: number, { low, high, length }: BarScale): number {
  return Math.round(((value - low) / (high - low)) * (length - 1));
}

const edgesOn = ({ low, high, band }: BarScale): number[] =>
  [band.low, band.high].filter((edge) => edge >= low && edge <= high);
