import type { DeviceControl } from '../automation.ts';
import type { Moment } from '../control-context.ts';

/** Keeps a device running, or at rest, for as long as it has to. */
export interface RunTimer {
  readonly leastRun: number;
  readonly leastRest: number;
  readonly mostRun: number;
  /** Share of full output asked for, 0 to stop. [-] */
  wanted: number;
  /** Share of full output it runs at while it runs, 0 at rest. [-] */
  rate: number;
  /** Share of full output in the mean over the step at hand. [-] */
  share: number;
  /** When it was last started, and when its last rest is over. [s UTC] */
  started: number;
  rested: number;
  /** How often it was started since this was last set to 0. */
  starts: number;
}

export function createRunTimer({
  leastRun,
  leastRest,
  mostRun,
}: Pick<DeviceControl, 'leastRun' | 'leastRest' | 'mostRun'>): RunTimer {
  return {
    leastRun,
    leastRest,
    mostRun,
    wanted: 0,
    rate: 0,
    share: 0,
    started: Number.NEGATIVE_INFINITY,
    rested: Number.NEGATIVE_INFINITY,
    starts: 0,
  };
}

/**
 * Decide for the step at hand at what share a device runs of which `wanted` is wanted.
 *
 * What is wanted is heeded at the start of a step, and a least run lasts in whole steps: a device that
 * has to go on does so at the share it last ran at. Rests and the longest run end to the second, and
 * the steps in which they do count by their share. After the longest run it rests for the least rest,
 * for ten minutes where there is none; a longest run that is shorter than the least one wins over it.
 *
 * @param halt  stop at once, without regard to the least run
 */
export function runAt(timer: RunTimer, { utc }: Moment, halt: boolean, dt: number): void {
  const { wanted, leastRun, leastRest } = timer;
  timer.share = 0;
  if (timer.rate > 0) {
    if (halt) timer.rate = 0;
    else if (wanted > 0 || utc - timer.started >= leastRun) timer.rate = wanted;
    if (timer.rate === 0) timer.rested = utc + leastRest;
  }
  if (!halt) runThrough(timer, utc, dt);
}

/** Run and rest by turns until the step is over. */
function runThrough(timer: RunTimer, utc: number, dt: number): void {
  const { wanted, mostRun, leastRest } = timer;
  const end = utc + dt;
  let at = utc;
  while (at < end) {
    if (timer.rate === 0) {
      const start = Math.max(at, timer.rested);
      if (wanted === 0 || start >= end) return;
      timer.rate = wanted;
      timer.started = start;
      timer.starts++;
      at = start;
    }
    const stop = timer.started + mostRun;
    const until = Math.min(end, stop);
    timer.share += timer.rate * ((until - at) / dt);
    at = until;
    if (stop >= end) return;
    timer.rate = 0;
    timer.rested = stop + (leastRest > 0 ? leastRest : REST);
  }
}

/** Rest after the longest run where no least one is given. [s] */
const REST = 600;
