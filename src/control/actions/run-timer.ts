import type { DeviceControl } from '../automation.ts';
import type { Moment } from '../control-context.ts';

/** Keeps a device running, or at rest, for as long as it has to. */
export interface RunTimer {
  readonly leastRun: number;
  readonly leastRest: number;
  readonly mostRun: number;
  /** Share of full output asked for, 0 to stop. [-] */
  wanted: number;
  /** Share of full output it runs at. [-] */
  share: number;
  /** Instants of the last start and stop. [s UTC] */
  started: number;
  stopped: number;
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
    share: 0,
    started: Number.NEGATIVE_INFINITY,
    stopped: Number.NEGATIVE_INFINITY,
    starts: 0,
  };
}

/**
 * Decide for the step at hand at what share a device runs of which `wanted` is wanted.
 *
 * Least run and least rest are kept in whole steps: a device that has to go on does so at the share
 * it last ran at. After the longest run it rests for the least rest, for a step at the least; a
 * longest run that is shorter than the least one wins over it.
 *
 * @param halt  stop at once, without regard to the least run
 */
export function runAt(timer: RunTimer, { utc }: Moment, halt: boolean): void {
  const { wanted } = timer;
  const wasRunning = timer.share > 0;
  if (halt) timer.share = 0;
  else if (wasRunning) goOn(timer, utc - timer.started);
  else timer.share = utc - timer.stopped >= timer.leastRest ? wanted : 0;
  const runs = timer.share > 0;
  if (runs === wasRunning) return;
  if (runs) {
    timer.started = utc;
    timer.starts++;
  } else {
    timer.stopped = utc;
  }
}

/** @param ran  how long it has been running [s] */
function goOn(timer: RunTimer, ran: number): void {
  if (ran >= timer.mostRun) timer.share = 0;
  else if (timer.wanted > 0 || ran >= timer.leastRun) timer.share = timer.wanted;
}
