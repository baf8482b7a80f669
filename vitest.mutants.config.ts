import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { FailedFiles } from './test/reference/failed-files.ts';
import { NearestFirst } from './test/reference/nearest-first.ts';

/** Tests that shall notice a changed source; `run-mutants.mjs` names their folders. */
export default defineConfig({
  // Changed sources are not compiled anew, so that the step must run from them.
  resolve: {
    alias: [
      {
        find: /^\.\/step-module\.ts$/,
        replacement: fileURLToPath(new URL('test/reference/no-step-module.ts', import.meta.url)),
      },
    ],
  },
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
