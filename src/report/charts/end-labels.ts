import { shortenedApart } from '../shortened.ts';
import { seriesChannels } from './palette.ts';
import { spreadOut } from './spread-out.ts';

/** A line of a picture and where it ends. */
export interface LineEnd {
  readonly name: string;
  /** Last value, on the upright axis. */
  readonly value: number;
}

/**
 * Names written at the right ends of lines, moved apart where lines end close together and tied to
 * them by a thin line and a stroke in the line's own colour and dash.
 *
 * @param domain  of the upright axis
 * @param height  of the plot, about [px]
 * @param room  right of the plot [px]
 * @param channels  how the strokes are drawn, by the field `series`; as the lines unless given
 */
export function endLabels(
  ends: readonly LineEnd[],
  [low, high]: readonly [number, number],
  height: number,
  room: number,
  channels: object = seriesChannels(ends.map((_, k) => k)),
): object[] {
  const gap = (LINE * (high - low)) / height;
  const places = spreadOut(
    ends.map(({ value }) => value),
    gap,
    [low, high],
  );
  const all = ends.map(({ name }) => name);
  const names = shortenedApart(all, (room - TIE - 2) / CHARACTER);
  const values = ends.map(({ value }, series) => ({
    series,
    name: names[series]!,
    value: Math.min(high, Math.max(low, value)),
    place: places[series]!,
  }));
  const y = (field: string) => ({ field, type: 'quantitative' });
  return [
    {
      data: { values },
      mark: { type: 'rule', xOffset: 1, x2Offset: LEAN, opacity: 0.4 },
      encoding: {
        x: { value: 'width' },
        x2: { value: 'width' },
        y: y('value'),
        y2: { field: 'place' },
      },
    },
    {
      data: { values },
      mark: { type: 'rule', xOffset: LEAN, x2Offset: TIE - 3, strokeWidth: 2 },
      encoding: { x: { value: 'width' }, x2: { value: 'width' }, y: y('place'), ...channels },
    },
    {
      data: { values },
      mark: { type: 'text', dx: TIE },
      encoding: {
        x: { value: 'width' },
        y: y('place'),
        text: { field: 'name', type: 'nominal' },
      },
    },
  ];
}

/** Room that names right of a plot need, at most so much of the picture. [px] */
export function roomForNames(names: readonly string[], width: number): number {
  const longest = Math.max(0, ...names.map((name) => [...name].length));
  return Math.round(Math.min(TIE + 4 + CHARACTER * longest, 0.44 * width));
}

const LINE = 13; // px
/** Distance from the plot to the stroke, and from there to the name. [px] */
const LEAN = 8;
const TIE = 26;
const CHARACTER = 6.2; // px, at 11 px
