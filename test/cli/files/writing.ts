import type { Writing } from '../../../src/cli/files/write-whole.ts';

/** What writing needs of a process that no signal reaches and that is the only one running. */
export const writing: Writing = {
  guard: (_cleanUp, work) => work(),
  writer: { host: 'abc123', pid: 7, isRunning: (pid) => pid === 7 },
};
