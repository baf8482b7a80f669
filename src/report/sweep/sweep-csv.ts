import { csvLine, typedField } from '../csv-line.ts';
import type { SweepFigures, SweepResult } from './sweep-result.ts';

/** The columns of a sweep as CSV: those of any run, in an order that does not depend on the runs. */
export interface SweepColumns {
  /** Take up the columns of one run. */
  add(result: SweepResult): void;
  names(): string[];
}

export function createSweepColumns(pointers: readonly string[]): SweepColumns {
  const figures = new Set<string>();
  return {
    add: ({ figures: found }) => {
      if (found === null) return;
      for (const row of figureRows(found)) for (const name of row.cells.keys()) figures.add(name);
    },
    names: () => [...FIRST, ...pointers.map(typedField), 'problem', ...inOrder(figures)],
  };
}

/** The lines of one run: the home, and each of its rooms. */
export function sweepCsvLines(result: SweepResult, names: readonly string[]): string {
  const { sweep, run, of, home, plan, values, problem, figures } = result;
  const own = [sweep, String(run), String(of), typedField(home ?? ''), typedField(plan)];
  const varied = Object.values(values).map(String);
  const head = (room: string) => [...own, room, ...varied, typedField(problem ?? '')];
  const columns = names.slice(head('').length);
  const rows =
    figures === null ? [{ room: '', cells: new Map<string, string>() }] : figureRows(figures);
  return rows
    .map(({ room, cells }) => [
      ...head(typedField(room)),
      ...columns.map((c) => cells.get(c) ?? ''),
    ])
    .map((fields) => `${csvLine(fields)}\n`)
    .join('');
}

/** Names of figures in the order of the columns, whatever runs they come from. */
export function inOrder(names: Iterable<string>): string[] {
  const rank = (name: string) => {
    const found = GROUPS.indexOf(name.split('.', 1)[0]!);
    return found < 0 ? GROUPS.length : found;
  };
  return [...names].sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0));
}

/** Figures of the home, and of each room, by the names they have in `--json`. */
function figureRows({ scenario: _s, plan: _p, rooms, ...home }: SweepFigures) {
  return [
    { room: '', cells: flat(home) },
    ...Object.entries(rooms).map(([room, figures]) => ({ room, cells: flat(figures) })),
  ];
}

/** Figures by name, a dot between the parts of a name; lists are left out. */
function flat(value: object, before = '', into = new Map<string, string>()): Map<string, string> {
  for (const [key, inner] of Object.entries(value)) {
    const name = `${before}${key}`;
    if (Array.isArray(inner)) continue;
    if (typeof inner === 'object' && inner !== null) flat(inner, `${name}.`, into);
    else into.set(name, textOf(inner));
  }
  return into;
}

function textOf(value: unknown): string {
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  if (typeof value === 'string') return typedField(value);
  return typeof value === 'boolean' ? String(value) : '';
}

/** What every row begins with, before the values of what varies. */
export const FIRST: readonly string[] = ['sweep', 'run', 'of', 'home', 'plan', 'room'];

/** Figures of the whole home by their first word; those of rooms follow by the alphabet. */
const GROUPS: readonly string[] = [
  ...['period', 'money', 'heating', 'cooling', 'devices', 'blinds', 'carbon_kg', 'species'],
  ...['outdoor_air', 'outdoor_air_share_by_storey', 'airing', 'alerts', 'balance'],
  'handbook_cross_check',
];
