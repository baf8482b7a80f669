import type { Scenario } from '../../scenario/read-scenario.ts';
import { pointerAndValue } from '../../scenario/yaml/settings.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { prepareVariant } from '../plan-variant.ts';
import type { StockHome } from './sweep-layout.ts';

/** The plan in which homes are tried, and what is laid on it before they are. */
export interface HomesSetup {
  readonly scenario: Scenario;
  /** Texts of `Scenario.files`. */
  readonly files: ReadonlyMap<string, string>;
  readonly plan: string;
  readonly set: readonly string[];
}

/**
 * Refuse homes whose columns a scenario does not have: the first home is prepared, and for every
 * column that it leaves empty the first that does not. Others are found out when they are run.
 *
 * @param file  name of the file of homes, for messages
 * @throws InputProblems
 */
export function checkHomes(setup: HomesSetup, homes: readonly StockHome[], file: string): void {
  const seen = new Set<string>();
  const problems = homes.flatMap((home, k): readonly Problem[] => {
    const columns = home.set.map((words) => pointerAndValue(words)!.pointer);
    if (k > 0 && columns.every((column) => seen.has(column))) return [];
    for (const column of columns) seen.add(column);
    return problemsOf(setup, home).map((problem) => ofRow(inHome(problem, home, file), home, file));
  });
  if (problems.length > 0) throw new InputProblems(problems);
}

function problemsOf({ scenario, files, plan, set }: HomesSetup, home: StockHome) {
  try {
    prepareVariant(scenario, files, { plan, set: [...set, ...home.set] });
    return [];
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return error.problems;
  }
}

/** A problem with a value that a home brings, said of its row and column. */
export function inHome(problem: Problem, { name, set }: StockHome, file: string): Problem {
  const words = set.find((each) => problem.file === `--set ${each}`);
  if (words === undefined) return problem;
  const column = pointerAndValue(words)!.pointer;
  return { ...problem, file, where: `row of ${name}, column ${column}: ${problem.where}` };
}

/** A problem that only the row as a whole can have, such as a section that nothing else names. */
function ofRow(problem: Problem, { name }: StockHome, file: string): Problem {
  if (problem.file === file) return problem;
  return { ...problem, file, line: 0, column: 0, where: `row of ${name}: ${problem.where}` };
}
