import type { Comparison } from '../studies/compare/compare.ts';
import { csvLine, typedField } from './csv-line.ts';

/**
 * A comparison as CSV: under one header line, for each plan a row of the whole home and one of each
 * room. Columns are the figures of `--json` under the names they have there, with the same digits;
 * lists are left out. Described in docs/quantities.md.
 */
export function compareCsv({ plans, differences }: Comparison): string {
  const homes = plans.map(({ scenario, plan, rooms, ...home }) => home);
  const changes = differences.map(({ plan, ...figures }) => ({ differences: figures }));
  const rooms = plans.flatMap((plan) => Object.values(plan.rooms));
  const ofHomes = [...pathsOf(homes), ...pathsOf(changes)];
  const ofRooms = pathsOf(rooms);
  const header = ['plan', 'room', ...[...ofHomes, ...ofRooms].map((path) => path.join('.'))];
  const lines = plans.flatMap((plan, k) => {
    const home = { ...homes[k], ...changes[k - 1] };
    const name = typedField(plan.plan);
    return [
      [name, '', ...ofHomes.map((path) => textAt(home, path)), ...ofRooms.map(() => '')],
      ...Object.entries(plan.rooms).map(([room, figures]) => [
        ...[name, typedField(room)],
        ...ofHomes.map(() => ''),
        ...ofRooms.map((path) => textAt(figures, path)),
      ]),
    ];
  });
  return [header, ...lines].map((fields) => `${csvLine(fields)}\n`).join('');
}

/** Keys that lead to a figure, from the outermost in. */
type Path = readonly string[];

/** Where figures are in any of some objects, in the order in which they stand there. */
function pathsOf(values: readonly unknown[]): Path[] {
  const groups = values.filter(isGroup);
  if (groups.length === 0) return values.some(isFigure) ? [[]] : [];
  const keys = [...new Set(groups.flatMap((group) => Object.keys(group)))];
  return keys.flatMap((key) =>
    pathsOf(groups.flatMap((group) => (Object.hasOwn(group, key) ? [group[key]] : []))).map(
      (rest) => [key, ...rest],
    ),
  );
}

/** The figure at a path as text; empty where there is none, or where it is not known. */
function textAt(value: unknown, [key, ...rest]: Path): string {
  if (key !== undefined) {
    return isGroup(value) && Object.hasOwn(value, key) ? textAt(value[key], rest) : '';
  }
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  if (typeof value === 'string') return typedField(value);
  return typeof value === 'boolean' ? String(value) : '';
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isFigure = (value: unknown): boolean => !isGroup(value) && !Array.isArray(value);
