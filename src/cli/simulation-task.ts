import type { Observer } from '../engine/trace.ts';
import { createPlanSeries } from '../measures/series/plan-series.ts';
import { readScenario } from '../scenario/read-scenario.ts';
import { type PlanVariant, prepareVariant } from '../studies/plan-variant.ts';
import type { WatchedRun } from '../studies/report-study.ts';
import { runPlan } from '../studies/run-plan.ts';
import { InputProblems, type Problem } from '../units/problem.ts';
import { periodOf } from '../weather/period-of.ts';
import { readWeather } from '../weather/read/read-weather.ts';
import { withinFormulas } from './within-formulas.ts';

/** Everything runs of one scenario are made from, as text: it can be sent to a worker. */
export interface SimulationSetup {
  /** The scenario's, as the person named it, and as it was written. */
  readonly file: string;
  readonly text: string;
  /** Texts of `Scenario.files`, by the path that the scenario wrote. */
  readonly files: ReadonlyMap<string, string>;
  readonly weatherFile: string;
  readonly weatherText: string;
}

export interface SimulationTask {
  readonly variant: PlanVariant;
  /** Whether to keep the hours for pictures. */
  readonly watched: boolean;
}

/** What came of a task. Problems are data, because an error loses its kind between workers. */
export type SimulationAnswer =
  | { readonly done: Pick<WatchedRun, 'measures'> & Partial<WatchedRun> }
  | { readonly problems: readonly Problem[] };

/** Reads scenario and weather once and answers one task after the other. */
export function createSimulator(
  setup: SimulationSetup,
): (task: SimulationTask) => SimulationAnswer {
  const scenario = readScenario(setup.text, setup.file);
  const weather = readWeather(setup.weatherText, setup.weatherFile);

  function simulated({ variant, watched }: SimulationTask): SimulationAnswer {
    const plan = prepareVariant(scenario, setup.files, variant);
    const { from, to } = plan.period;
    const period = periodOf(weather, from, to, plan.household.clock);
    const series = watched ? createPlanSeries({ ...plan, period }) : null;
    const watchers: Observer[] = series === null ? [] : [series.observe];
    const { measures, run } = withinFormulas(setup.file, () =>
      runPlan({ plan, weather, period }, watchers),
    );
    if (series === null) return { done: { measures } };
    return { done: { measures, series: series.result(), ledger: run.ledger } };
  }

  return (task) => {
    try {
      return simulated(task);
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
      return { problems: error.problems };
    }
  };
}
