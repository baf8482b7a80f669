import type { HourlyColumns } from '../fit/simulate/hourly-columns.ts';
import { simulateLogged } from '../fit/simulate/logged-run.ts';
import type { LoggedTask } from '../fit/simulate/run-logged.ts';
import { InputProblems } from '../units/problem.ts';
import type { SimulationSetup } from './simulation-task.ts';
import { withinFormulas } from './within-formulas.ts';

/** A run beside a log, as plain data for a thread. */
export interface NumberedLoggedTask extends Pick<LoggedTask, 'plan'> {
  /** Number of what is known from the log, among `SimulationSetup.logged`. */
  readonly logged: number;
}

/** Hourly means of a run beside a log; null where it left the formulas, so that others may go on. */
export interface LoggedAnswer {
  readonly hourly: HourlyColumns | null;
}

export function loggedAnswer(
  { file, weather, logged: known = [] }: SimulationSetup,
  { plan, logged }: NumberedLoggedTask,
): LoggedAnswer {
  try {
    return { hourly: withinFormulas(file, () => simulateLogged(plan, weather, known[logged]!)) };
  } catch (error) {
    if (error instanceof InputProblems) return { hourly: null };
    throw error;
  }
}

/** What a thread may hand over without copying it. */
export function buffersOf({ hourly }: LoggedAnswer): ArrayBuffer[] {
  if (hourly === null) return [];
  const { temperature, humidity, heating, species } = hourly;
  return [temperature, humidity, heating, ...species]
    .flat()
    .map((series) => series.buffer as ArrayBuffer);
}
