import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { HourlyColumns } from './hourly-columns.ts';
import type { LoggedRun } from './logged-run.ts';

/** One run to make beside a log. */
export interface LoggedTask {
  readonly plan: PreparedPlan;
  readonly logged: LoggedRun;
}

/** Makes a run, in a thread or at once; null where it leaves the formulas. */
export type RunLogged = (task: LoggedTask) => Promise<HourlyColumns | null>;
