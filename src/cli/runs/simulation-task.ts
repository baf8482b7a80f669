import type { Observer } from '../../engine/record/trace.ts';
import { createPlanSeries } from '../../measures/series/plan-series.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { WatchedRun } from '../../studies/report-study.ts';
import { runPlan } from '../../studies/run-plan.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { periodOf } from '../../weather/period-of.ts';
import type { Weather } from '../../weather/weather.ts';
import { withinFormulas } from './within-formulas.ts';

/** What all runs of a scenario share. Plain data: it is read once and sent to every thread. */
export interface SimulationSetup {
  /** The scenario's file, as the person named it. */
  readonly file: string;
  readonly weather: Weather;
  /** Further years of weather, which tasks call by their number from 1 on. */
  readonly others?: readonly Weather[];
}

/** A run to make, as plain data. */
export interface SimulationTask {
  readonly plan: PreparedPlan;
  /** Whether to keep the hours for pictures. */
  readonly watched: boolean;
  /** Number of the weather among all years; 0 where not given. */
  readonly year?: number;
}

/** What came of a task. Problems are data, because an error loses its kind between threads. */
export type SimulationAnswer =
  | { readonly done: Pick<WatchedRun, 'measures'> & Partial<WatchedRun> }
  | { readonly problems: readonly Problem[] };

/** @param watchers  are shown each day of the run as it passes */
export function simulationAnswer(
  { file, weather: first, others = [] }: SimulationSetup,
  { plan, watched, year = 0 }: SimulationTask,
  watchers: readonly Observer[] = [],
): SimulationAnswer {
  try {
    const weather = year === 0 ? first : others[year - 1]!;
    const { from, to } = plan.period;
    const period = periodOf(weather, from, to, plan.household.clock);
    const series = watched
      ? createPlanSeries({ ...plan, period, clock: plan.household.clock })
      : null;
    const all = series === null ? watchers : [...watchers, series.observe];
    const { measures, run } = withinFormulas(file, () => runPlan({ plan, weather, period }, all));
    if (series === null) return { done: { measures } };
    return { done: { measures, series: series.result(), ledger: run.ledger } };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return { problems: error.problems };
  }
}
