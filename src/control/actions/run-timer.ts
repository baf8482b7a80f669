import type { DeviceControl } from '../automation.ts';

/** Keeps a device running, or at rest, for as long as it has to. */
export interface RunTimer {
  readonly running: boolean;
  /**
   * Decide for a step that begins at `utc` [s].
   *
   * @param wanted  share of full output asked for, 0 to stop [-]
   * @param halt    stop at once, without regard to the least run
   * @returns share of full output it runs at
   */
  readonly step: (wanted: number, halt: boolean, utc: number) => number;
}

/**
 * Least run and least rest are kept in whole steps: a device that has to go on does so at the share
 * it last ran at. After the longest run it rests for the least rest, for a step at the least; a
 * longest run that is shorter than the least one wins over it.
 */
export function createRunTimer({
  leastRun,
  leastRest,
  mostRun,
}: Pick<DeviceControl, 'leastRun' | 'leastRest' | 'mostRun'>): RunTimer {
  let started = Number.NEGATIVE_INFINITY;
  let stopped = Number.NEGATIVE_INFINITY;
  let lastShare = 0;

  const goOn = (wanted: number, utc: number): number => {
    const ran = utc - started;
    if (ran >= mostRun) return 0;
    return wanted > 0 || ran >= leastRun ? wanted : lastShare;
  };

  const timer = {
    running: false,
    step(wanted: number, halt: boolean, utc: number): number {
      let share = 0;
      if (!halt) {
        if (timer.running) share = goOn(wanted, utc);
        else if (utc - stopped >= leastRest) share = wanted;
      }
      if (share > 0 && !timer.running) started = utc;
      if (share <= 0 && timer.running) stopped = utc;
      timer.running = share > 0;
      lastShare = share;
      return share;
    },
  };
  return timer;
}
