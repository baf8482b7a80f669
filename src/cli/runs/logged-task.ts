import type { HourlyColumns } from '../../fit/simulate/hourly-columns.ts';
import { simulateLogged } from '../../fit/simulate/logged-run.ts';
import type { LoggedTask } from '../../fit/simulate/run-logged.ts';
import { InputProblems } from '../../units/problem.ts';
import type { SimulationSetup } from './simulation-task.ts';
import { withinFormulas } from './within-formulas.ts';

export type { LoggedTask };

/** Hourly means of a run beside a log; null where it left the formulas, so that others may go on. */
export interface LoggedAnswer {
  readonly hourly: HourlyColumns | null;
}

export function loggedAnswer(
  { file, weather }: SimulationSetup,
  { plan, logged }: LoggedTask,
): LoggedAnswer {
  try {
    return { hourly: withinFormulas(file, () => simulateLogged(plan, weather, logged)) };
  } catch (error) {
    if (error instanceof InputProblems) return { hourly: null };
    throw error;
  }
}
