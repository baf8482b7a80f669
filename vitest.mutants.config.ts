import { defineConfig } from 'vitest/config';
import { FailedFiles } from './test/reference/failed-files.ts';
import { NearestFirst } from './test/reference/nearest-first.ts';

/** Tests that shall notice a changed source; `run-mutants.mjs` names their folders. */
export default defineConfig({
  test: {
    include: (process.env['MUTANT_TESTS'] ?? '')
      .split(',')
      .map((top) => `test/${top}/**/*.test.ts`),
    exclude: ['test/**/allocation.test.ts'], // counting mutants takes memory of its own
    setupFiles: ['test/reference/mutant-coverage.ts'],
    testTimeout: 60_000,
    isolate: false,
    reporters: [new FailedFiles()],
    sequence: { sequencer: NearestFirst },
  },
});
