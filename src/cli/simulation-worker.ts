import { workerData } from 'node:worker_threads';
import {
  createSimulator,
  type SimulationAnswer,
  type SimulationSetup,
  type SimulationTask,
} from './simulation-task.ts';

// What runs in each worker: one simulator for all the tasks that come to it.

const simulator = createSimulator(workerData as SimulationSetup);

export const simulationTask = (task: SimulationTask): SimulationAnswer => simulator(task);
