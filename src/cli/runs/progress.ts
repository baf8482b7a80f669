import type { Observer } from '../../engine/record/trace.ts';
import type { Io } from '../io.ts';
import { barOn } from './bar.ts';

/** How far a number of runs has come. */
export interface Progress {
  /** Watches the run that is going on. */
  readonly observe: Observer;
  /** One run is over. */
  next(): void;
  /** Take the bar away. */
  stop(): void;
}

/**
 * A bar on standard error where that is a terminal, silence where it is not.
 *
 * @param hours  length of each run to come [h]
 * @param name   what is counted, e.g. "plans"
 */
export async function startProgress(
  io: Io,
  hours: readonly number[],
  name: string,
): Promise<Progress> {
  if (io.terminal === null) return SILENT;
  const bar = await barOn(io.terminal, {
    format: `{bar} {percentage} %  {done} of ${hours.length} ${name} done`,
    clearOnComplete: true,
  });
  const total = hours.reduce((sum, h) => sum + h, 0);
  let done = 0;
  let before = 0;
  bar.start(total, 0, { done });
  return {
    observe: ({ firstStep, steps, dt }) => {
      bar.update(before + ((firstStep + steps) * dt) / 3600, { done });
    },
    next: () => {
      before += hours[done] ?? 0;
      done++;
      bar.update(before, { done });
    },
    stop: () => bar.stop(),
  };
}

const SILENT: Progress = { observe: () => {}, next: () => {}, stop: () => {} };
