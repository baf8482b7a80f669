import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { LoggedAnswer, LoggedTask } from './logged-task.ts';
import type { SimulationAnswer, SimulationSetup, SimulationTask } from './simulation-task.ts';

/** Threads that answer simulation tasks. */
export interface Workers {
  /** How many there are. */
  readonly threads: number;
  /** Send what tasks share to every thread, before the first of them; holds until it is sent anew. */
  share(setup: SimulationSetup): void;
  ask<Task extends AnyTask>(task: Task): Promise<AnswerTo<Task>>;
  /** End the threads, whatever they are at. */
  close(): Promise<void>;
}

export type AnyTask = SimulationTask | LoggedTask;
type AnswerTo<Task> = Task extends LoggedTask ? LoggedAnswer : SimulationAnswer;

/** To a thread. */
export type ThreadOrder = { readonly setup: SimulationSetup } | { readonly task: AnyTask };

/** From a thread: an answer, or the error of a fault of our own. */
export type ThreadReply =
  | { readonly answer: SimulationAnswer | LoggedAnswer }
  | { readonly fault: unknown };

/** A task that waits for its answer. */
interface Job {
  readonly task: AnyTask;
  readonly settle: (reply: ThreadReply) => void;
}

/**
 * Start threads, one for each run but no more than there are processors. They load the engine at
 * once, while this thread still reads, and take tasks as they come, first come, first served.
 *
 * @param runs  how many runs are expected
 */
export function startWorkers(runs: number): Workers {
  const waiting: Job[] = [];
  const idle: Worker[] = [];
  const jobs = new Map<Worker, Job>();
  const threads = Array.from({ length: Math.min(runs, availableParallelism()) }, startThread);

  function startThread(): Worker {
    const worker = new Worker(new URL('./simulation-worker.js', import.meta.url));
    worker.on('message', (reply: ThreadReply) => {
      jobs.get(worker)?.settle(reply);
      jobs.delete(worker);
      next(worker);
    });
    // A thread that breaks down takes all with it: what it was at can be answered by no other.
    worker.on('error', (fault) => {
      for (const job of [...jobs.values(), ...waiting.splice(0)]) job.settle({ fault });
    });
    idle.push(worker);
    return worker;
  }

  function next(worker: Worker): void {
    const job = waiting.shift();
    if (job === undefined) {
      idle.push(worker);
      return;
    }
    jobs.set(worker, job);
    worker.postMessage({ task: job.task } satisfies ThreadOrder);
  }

  return {
    threads: threads.length,
    share: (setup) => {
      for (const worker of threads) worker.postMessage({ setup } satisfies ThreadOrder);
    },
    ask: (task) =>
      new Promise((resolve, reject) => {
        waiting.push({
          task,
          // A thread answers what it was asked.
          settle: (reply) =>
            'answer' in reply ? resolve(reply.answer as never) : reject(reply.fault),
        });
        const worker = idle.shift();
        if (worker !== undefined) next(worker);
      }),
    close: async () => {
      await Promise.all(threads.map((worker) => worker.terminate()));
    },
  };
}
