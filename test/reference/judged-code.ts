import { relative } from 'node:path';
import { originsOf } from './got-origins.ts';
import { importedNames, parse } from './imports.ts';

/** What a comparison judges: the program, a formula that only tests use, or one put through the other. */
export type Judged = 'program' | 'oracle' | 'both';

/** Where a comparison is called in a test's file, and where what called it is called [from 1]. */
export interface Place {
  readonly file: string;
  readonly lines: readonly number[];
}

/**
 * Tells what a comparison judges by the imports that its `got` goes back to.
 *
 * Whatever stands in src is the program's: knip refuses exports that only tests use, see
 * `knip.production.js`. Units are judged where there is nothing else to judge, because oracles share
 * them.
 *
 * @throws Error for a comparison that judges neither
 */
export function judgedAt({ file: path, lines }: Place): Judged {
  const file = path.startsWith('/') ? relative('.', path) : path;
  const targets = originsOf(file, parse(file), lines);
  const program = targets.some((target) => usesProgram(target));
  const oracle = targets.some(isOracle);
  if (program) return oracle ? 'both' : 'program';
  if (oracle) return 'oracle';
  if (targets.some(isUnits)) return 'program';
  throw new Error(`${file}:${lines[0]}: judges neither the program nor an oracle`);
}

/** Whether a file is the program's, or a helper of the tests that goes back to it. */
function usesProgram(file: string, seen = new Set<string>()): boolean {
  if (file.startsWith('src/')) return !isUnits(file);
  if (!file.startsWith('test/') || isOracle(file) || seen.has(file)) return false;
  seen.add(file);
  return [...importedNames(file, parse(file)).values()].some((target) => usesProgram(target, seen));
}

const isUnits = (file: string): boolean => file.startsWith('src/units/');
const isOracle = (file: string): boolean => file.startsWith('test/reference/physics/');
