import type { Observer } from '../../engine/record/trace.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { WatchedRun } from '../../studies/report-study.ts';
import { InputProblems } from '../../units/problem.ts';
import type { SimulationSetup, SimulationTask } from './simulation-task.ts';
import type { Workers } from './start-workers.ts';

/** Runs of plans in one stretch of weather. */
export interface Simulations {
  /** @param year  number of the weather among all years of the setup; the first where not given */
  readonly run: (plan: PreparedPlan, year?: number) => Promise<PlanMeasures>;
  /** Runs a plan and keeps its hourly series for pictures. */
  readonly watch: (plan: PreparedPlan) => Promise<WatchedRun>;
}

/** Who hears of runs. */
export interface Told {
  /** A run is asked for. */
  asked?(): void;
  /** A run is over. */
  done(): void;
  /** Is shown the days of a run in this thread; those of runs in others pass unseen. */
  readonly observe?: Observer;
}

/** @param workers  threads that share the runs; null where they are all made in this one */
export async function startSimulations(
  workers: Workers | null,
  setup: SimulationSetup,
  told: Told,
): Promise<Simulations> {
  workers?.share(setup);
  const here = workers === null ? (await import('./simulation-task.ts')).simulationAnswer : null;
  const watchers = told.observe === undefined ? [] : [told.observe];

  async function ask(task: SimulationTask) {
    told.asked?.();
    try {
      const answer = here === null ? await workers!.ask(task) : here(setup, task, watchers);
      if ('problems' in answer) throw new InputProblems(answer.problems);
      return answer.done;
    } finally {
      told.done();
    }
  }

  return {
    run: async (plan, year = 0) => (await ask({ plan, watched: false, year })).measures,
    watch: async (plan) => (await ask({ plan, watched: true })) as WatchedRun,
  };
}
