import { withinFormulas } from '../../src/cli/runs/within-formulas.ts';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { InputProblems, problemText } from '../../src/units/problem.ts';

/**
 * What is wrong with how the program took a case; null where it did well: it either worked, or told
 * the person in problems that say where.
 */
export function wrongWith(work: () => string | null): string | null {
  try {
    return withinFormulas('case', work);
  } catch (error) {
    if (error instanceof InputProblems) return unlocated(error);
    return `threw ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
  }
}

/** Problems without words, place or end. */
function unlocated({ problems }: InputProblems): string | null {
  if (problems.length === 0) return 'refused without a problem';
  if (problems.length > MOST_PROBLEMS) return `told ${problems.length} problems`;
  for (const problem of problems) {
    const { file, expected, got } = problem;
    if (file === '' || expected === '' || got === '') return `no words: ${problemText(problem)}`;
    if (problemText(problem).length > LONGEST) return `a problem of ${problemText(problem).length}`;
    if (/undefined|\[object|NaN:/.test(`${problem.where} ${expected}`)) return problemText(problem);
  }
  return null;
}

/** What is wrong with the figures of a run: not finite, not balanced, or of a humidity that cannot be. */
export function wrongFigures(measures: PlanMeasures): string | null {
  const odd = notFinite(measures, []);
  if (odd !== null) return `${odd} is no number`;
  for (const [name, residual] of Object.entries(measures.balance)) {
    if (!(Math.abs(residual) <= 1e-9)) return `${name} is ${residual}`;
  }
  for (const [name, room] of Object.entries(measures.rooms)) {
    const humidity = room.mean_relative_humidity_pct;
    const told = measures.notices.some(({ id }) => id.includes('saturat'));
    if (!(humidity >= 0) || (humidity > 100 && !told)) return `${name} is at ${humidity} %`;
  }
  return null;
}

function notFinite(value: unknown, path: readonly string[]): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path.join('.');
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner, [...path, key]);
    if (found !== null) return found;
  }
  return null;
}

const MOST_PROBLEMS = 300;
const LONGEST = 3000;
