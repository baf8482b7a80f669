import type { Run } from '../engine/run.ts';
import { simulate } from '../engine/simulate.ts';
import type { Observer } from '../engine/trace.ts';
import { createMeasures } from '../measures/create-measures.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Weather } from '../weather/weather.ts';

/** Request to run one plan over one period of weather. */
export interface PlanRequest {
  readonly plan: PreparedPlan;
  readonly weather: Weather;
  /** First instant, on the hour [s UTC], and length [h]. */
  readonly period: { readonly start: number; readonly hours: number };
}

/** What came of it. */
export interface PlanOutcome {
  readonly measures: PlanMeasures;
  readonly run: Run;
}

/**
 * Simulate one plan and make its figures. Whoever else wants to see the run may watch it.
 *
 * @param spinUpDays  days before the period in which walls forget the temperatures they began with
 */
export function runPlan(
  request: PlanRequest,
  watchers: readonly Observer[] = [],
  spinUpDays = SPIN_UP_DAYS,
): PlanOutcome {
  const { plan, weather, period } = request;
  const { home, household, automation, dt } = plan;
  const heatsByPresence = automation.thermostats.some(({ gate }) => gate.present !== 'no matter');
  const { clock } = household;
  const measures = createMeasures({ ...plan, heatsByPresence, clock, weather, period });
  const run = simulate({ home, household, automation, weather, dt, ...period, spinUpDays }, [
    measures.observe,
    ...watchers,
  ]);
  return { measures: measures.finish(run), run };
}

/** After this long a home of heavy walls has forgotten 99 % of the temperatures it began with. [day] */
const SPIN_UP_DAYS = 30;
