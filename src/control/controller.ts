import type { ControlReport } from './control-report.ts';
import type { DayInputs } from './day-inputs.ts';
import type { Commands, Observation } from './observations.ts';

/**
 * Carries out an Automation, step by step. Made once a run; keeps its own timers and states.
 */
export interface Controller {
  /**
   * Work out what the clock and the people decide for a day.
   *
   * @param start  instant at which its first step begins [s UTC]
   */
  readonly beginDay: (start: number, steps: number) => void;
  /**
   * Decide for step `s` of the day, on top of what the clock says: `commands` come in as
   * `followSchedules` left them and go out as the engine is to obey them. Allocates nothing.
   */
  readonly act: (day: DayInputs, s: number, observed: Observation, commands: Commands) => void;
  /** Reset all counts at the end of the spin-up. */
  readonly startCounting: () => void;
  readonly report: () => ControlReport;
}
