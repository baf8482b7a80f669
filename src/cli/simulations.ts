import type { PlanVariant, RunVariant } from '../studies/plan-variant.ts';
import type { WatchedRun } from '../studies/report-study.ts';
import { InputProblems } from '../units/problem.ts';
import type { Io } from './io.ts';
import {
  createSimulator,
  type SimulationAnswer,
  type SimulationSetup,
  type SimulationTask,
} from './simulation-task.ts';

/** Runs of plans of one scenario, on all processors where the world has several. */
export interface Simulations {
  readonly run: RunVariant;
  /** Runs a variant of a plan and keeps its hourly series for pictures. */
  readonly watch: (variant: PlanVariant) => Promise<WatchedRun>;
  /** Call it when nothing is asked for any more, whatever happened. */
  close(): Promise<void>;
}

/** @param told  hears of every run that is asked for, and of every one that is over */
export async function startSimulations(
  io: Io,
  setup: SimulationSetup,
  told: { asked(): void; done(): void },
): Promise<Simulations> {
  const workers = io.startWorkers === null ? null : await io.startWorkers(setup);
  const here = workers === null ? createSimulator(setup) : null;

  async function answered(task: SimulationTask): Promise<SimulationAnswer> {
    return here === null ? workers!.ask(task) : here(task);
  }

  async function ask(variant: PlanVariant, watched: boolean) {
    told.asked();
    const task = { variant: variant, watched };
    const answer = await answered(task).finally(() => told.done());
    if ('problems' in answer) throw new InputProblems(answer.problems);
    return answer.done;
  }

  return {
    run: async (variant) => (await ask(variant, false)).measures,
    watch: async (variant) => (await ask(variant, true)) as WatchedRun,
    close: async () => workers?.close(),
  };
}
