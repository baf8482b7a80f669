import type { PreparedPlan } from '../../scenario/prepared.ts';
import { runPlan } from '../../studies/run-plan.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';

/**
 * Run a day of a plan and forget it, before many runs in one thread.
 *
 * V8 widens what it knows of the fields of an object the second time that a place in the code makes
 * one, and throws away what it had compiled by then. Without a rehearsal that happens at the start
 * of the second run, whose every function is then compiled anew: half a run's work.
 */
export function rehearse(plan: PreparedPlan, weather: Weather): void {
  const { start, step } = weather;
  const first = Math.ceil(start / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  if (weather.count * step < 2 * SECONDS_PER_DAY) return; // as short as a rehearsal
  try {
    runPlan({ plan, weather, period: { start: first, hours: 24 } }, [], 0);
  } catch {
    // The run itself will say what is wrong.
  }
}
