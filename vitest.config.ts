import { defineConfig } from 'vitest/config';
import { builtSource } from './test/reference/built-source.ts';
import { CountLine } from './test/reference/count-line.ts';
import { LONGEST, LongestFirst } from './test/reference/longest-first.ts';
import { ValidationPage } from './test/reference/validation-page.ts';

/** Tests that count what is left on the heap, which what other files have run would change. */
const ALONE = 'test/**/allocation.test.ts';
/** Tests that put something else in the place of a module, which only sources allow. */
const REPLACING = 'test/species/fourth-species.test.ts';

/** What everyday work leaves out. */
const LONG = LONGEST.map((part) => `test/${part}*${part.endsWith('/') ? '*' : ''}`);
const left = process.env['QUICK'] === '1' ? LONG : [];
/** `npm test` builds first and tests that; whoever calls vitest tests the sources as they stand. */
const plugins = process.env['AS_BUILT'] === '1' ? [builtSource] : [];

export default defineConfig({
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: '100%',
    // What is built is loaded as it is, and what is transformed is kept for the next run.
    server: { deps: { external: [/\/dist\//] } },
    experimental: { fsModuleCache: true },
    sequence: { sequencer: LongestFirst },
    reporters: ['default', new ValidationPage(), new CountLine()],
    projects: [
      {
        extends: true,
        plugins,
        test: {
          name: 'shared',
          include: ['test/**/*.test.ts'],
          exclude: [ALONE, REPLACING, ...left],
          // Files share a process, which loads each module once: no test may leave anything changed behind.
          isolate: false,
          // Room for young garbage, so that it is not copied again and again [MB]; and functions run longer
          // until they are optimised, which for homes that run a few days each costs more than it saves.
          execArgv: ['--max-semi-space-size=64', '--interrupt-budget=1000000'],
        },
      },
      {
        extends: true,
        plugins,
        test: { name: 'alone', include: [ALONE], exclude: left, isolate: true },
      },
      {
        extends: true,
        test: { name: 'sources', include: [REPLACING], exclude: left, isolate: true },
      },
    ],
  },
});
