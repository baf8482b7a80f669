import type { Io } from '../io.ts';
import { barOn } from '../runs/bar.ts';

/** How far a sweep has come. */
export interface SweepProgress {
  done(): void;
  /** Take the bar away. */
  stop(): void;
}

/**
 * A bar on standard error where that is a terminal, silence where it is not. The time left goes by
 * the pace of the last runs of this call.
 *
 * @param total  runs of the part
 * @param before  runs that an earlier call has made
 */
export async function startSweepProgress(
  io: Io,
  total: number,
  before: number,
): Promise<SweepProgress> {
  if (io.terminal === null) return { done: () => {}, stop: () => {} };
  const bar = await barOn(io.terminal, {
    format: '{bar}  {value} of {total} runs done, {eta_formatted} left',
    clearOnComplete: true,
    etaBuffer: PACE,
  });
  bar.start(total, before);
  return { done: () => bar.increment(), stop: () => bar.stop() };
}

/** Runs over which the pace is taken. */
const PACE = 50;
