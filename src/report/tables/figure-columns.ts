import { figureText } from '../../units/figure-text.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';

/** One column of figures about named things. */
export interface FigureColumn<Thing> {
  readonly head: string;
  readonly decimals: number;
  readonly of: (thing: Thing) => number | null;
  /** Whether the column is left out where all its figures are 0 or not known. */
  readonly optional?: true;
}

/** Named things down, figures across; nothing where there are no things. */
export function figureTable<Thing>(
  head: string,
  things: Readonly<Record<string, Thing>>,
  figures: readonly FigureColumn<Thing>[],
  width = WIDTH,
): string {
  const all = Object.values(things);
  if (all.length === 0) return '';
  const told = figures.filter(
    ({ optional, of }) => !optional || all.some((it) => (of(it) ?? 0) !== 0),
  );
  const names: Column = { head, cells: Object.keys(things), align: 'left' };
  const columns = told.map(
    ({ head, decimals, of }): Column => ({
      head,
      cells: all.map((thing) => figureText(of(thing), decimals)),
    }),
  );
  return textTable([names, ...columns], width);
}
