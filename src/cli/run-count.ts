import type { Io } from './io.ts';

/** How many runs were asked for, and how many of them are over. */
export interface RunCount {
  asked(): void;
  done(): void;
  /** Take the bar away. */
  stop(): void;
}

/** A bar on standard error where that is a terminal, silence where it is not. It may grow longer. */
export async function startRunCount(io: Io): Promise<RunCount> {
  if (io.terminal === null) return { asked: () => {}, done: () => {}, stop: () => {} };
  const { default: cliProgress } = await import('cli-progress');
  const bar = new cliProgress.SingleBar({
    stream: io.terminal,
    format: '{bar}  {value} of {total} runs done',
    barCompleteChar: '#',
    barIncompleteChar: '.',
    clearOnComplete: false,
    linewrap: true, // leaves the terminal as it is, should the program be ended meanwhile
  });
  let total = 0;
  bar.start(0, 0);
  return {
    asked: () => bar.setTotal(++total),
    done: () => bar.increment(),
    stop: () => bar.stop(),
  };
}
