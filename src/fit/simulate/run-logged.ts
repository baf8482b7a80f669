import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { HourlyColumns } from './hourly-columns.ts';
import type { LoggedRun } from './logged-run.ts';

/** One run to make beside a log. */
export interface LoggedTask {
  readonly plan: PreparedPlan;
  readonly logged: LoggedRun;
}

/** Makes several runs, in threads or one after the other; null for one that leaves the formulas. */
export type RunLogged = (
  tasks: readonly LoggedTask[],
) => Promise<readonly (HourlyColumns | null)[]>;
