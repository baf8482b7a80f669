import type { Io } from '../io.ts';
import { barOn } from './bar.ts';

/** How many runs were asked for, and how many of them are over. */
export interface RunCount {
  asked(): void;
  done(): void;
  /** Take the bar away. */
  stop(): void;
}

/**
 * A bar on standard error where that is a terminal, silence where it is not. It grows longer where more
 * is asked for than was expected, and ends full. Before anything is expected or asked for there is none,
 * because none of none would be a full one.
 *
 * @param expected  runs that will be asked for, as far as can be told before
 */
export async function startRunCount(io: Io, expected = 0): Promise<RunCount> {
  if (io.terminal === null) return { asked: () => {}, done: () => {}, stop: () => {} };
  const bar = await barOn(io.terminal, {
    format: '{bar}  {value} of {total} runs done',
    clearOnComplete: false,
  });
  let asked = 0;
  let done = 0;
  if (expected > 0) bar.start(expected, 0);
  return {
    asked: () => {
      asked++;
      if (expected === 0 && asked === 1) bar.start(1, 0);
      else bar.setTotal(Math.max(expected, asked));
    },
    done: () => bar.update(++done),
    stop: () => {
      if (expected === 0 && asked === 0) return;
      bar.setTotal(asked);
      bar.stop();
    },
  };
}
