import { defineConfig } from 'vitest/config';
import { CountLine } from './test/reference/count-line.ts';
import { LongestFirst } from './test/reference/longest-first.ts';
import { ValidationPage } from './test/reference/validation-page.ts';

/** Tests that count what is left on the heap, which what other files have run would change. */
const ALONE = 'test/**/allocation.test.ts';

/**
 * What everyday work leaves out: browsers, whole years, laws and drawn cases, and what takes seconds a
 * file: fits of whole logs, a second solver, processes of the program and their threads.
 */
const SLOW = [
  ...['test/{browser,fuzz,gallery,laws,years}/**', 'test/cli/{report,start-command,package,bin}*'],
  ...['test/cli/*-workers.test.ts', 'test/cli/serve/serve-command.test.ts', 'test/network.test.ts'],
  ...['test/engine/reference*', 'test/fit/{logged-flat,twins,gas-meter}.test.ts'],
];
const left = process.env['QUICK'] === '1' ? SLOW : [];

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    reporters: ['default', new ValidationPage(), new CountLine()],
    projects: [
      {
        extends: true,
        test: {
          name: 'shared',
          include: ['test/**/*.test.ts'],
          exclude: [ALONE, ...left],
          // Files share a process, which loads each module once: no test may leave anything changed behind.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'alone', include: [ALONE], isolate: true } },
    ],
  },
});
