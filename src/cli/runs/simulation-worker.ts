import { parentPort } from 'node:worker_threads';
import { loggedAnswer } from './logged-task.ts';
import { rehearse } from './rehearse.ts';
import { type SimulationSetup, simulationAnswer } from './simulation-task.ts';
import type { AnyTask, ThreadOrder, ThreadReply } from './start-workers.ts';

// What runs in each thread. The setup comes before tasks, so that what is worked out from it serves them all.

let setup: SimulationSetup | null = null;
let rehearsed = false;

parentPort!.on('message', (order: ThreadOrder) => {
  if ('setup' in order) setup = order.setup;
  else parentPort!.postMessage(replyTo(order.task, setup!));
});

function replyTo(task: AnyTask, shared: SimulationSetup): ThreadReply {
  if (!rehearsed) rehearse(task.plan, shared.weather);
  rehearsed = true;
  try {
    const answer = 'logged' in task ? loggedAnswer(shared, task) : simulationAnswer(shared, task);
    return { answer };
  } catch (fault) {
    return { fault };
  }
}
