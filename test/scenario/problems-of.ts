import { readScenario } from '../../src/scenario/read-scenario.ts';
import { InputProblems, problemText } from '../../src/units/problem.ts';

/** The problems of doing something, one line each; none where it succeeds. */
export function problemsOf(work: () => unknown): string[] {
  try {
    work();
  } catch (error) {
    if (error instanceof InputProblems) return error.problems.map(problemText);
    throw error;
  }
  return [];
}

/** The problems of a scenario text in a file called h.yaml. */
export const readingProblems = (text: string): string[] =>
  problemsOf(() => readScenario(text, 'h.yaml'));

/** A home of two rooms with more lines behind it. */
export const homeWith = (more: string): string => `title: Test
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
home:
  rooms:
    living: { floor area: 16 }
    bedroom: { floor area: 12 }
${more}`;
