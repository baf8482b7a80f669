import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import type { SimulationAnswer, SimulationSetup, SimulationTask } from './simulation-task.ts';

/** Threads that answer simulation tasks. */
export interface Workers {
  ask(task: SimulationTask): Promise<SimulationAnswer>;
  close(): Promise<void>;
}

/** One thread a processor; each reads the scenario and its weather for itself, once. */
export function startWorkers(setup: SimulationSetup): Workers {
  const pool = new Piscina<SimulationTask, SimulationAnswer>({
    filename: new URL('./simulation-worker.js', import.meta.url).href,
    name: 'simulationTask',
    workerData: setup,
    minThreads: 1,
    maxThreads: availableParallelism(),
  });
  return { ask: (task) => pool.run(task), close: () => pool.destroy() };
}
