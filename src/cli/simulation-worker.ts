import { parentPort } from 'node:worker_threads';
import { rehearse } from './rehearse.ts';
import { type SimulationSetup, type SimulationTask, simulationAnswer } from './simulation-task.ts';
import type { ThreadOrder, ThreadReply } from './start-workers.ts';

// What runs in each thread. The setup comes once, so that what is worked out from it serves every task.

let setup: SimulationSetup | null = null;
let rehearsed = false;

parentPort!.on('message', (order: ThreadOrder) => {
  if ('setup' in order) setup = order.setup;
  else parentPort!.postMessage(replyTo(order.task, setup!));
});

function replyTo(task: SimulationTask, shared: SimulationSetup): ThreadReply {
  if (!rehearsed) rehearse(task.plan, shared.weather);
  rehearsed = true;
  try {
    return { answer: simulationAnswer(shared, task) };
  } catch (fault) {
    return { fault };
  }
}
