import { defineConfig } from 'vitest/config';
import { CountLine } from './test/reference/count-line.ts';
import { ValidationPage } from './test/reference/validation-page.ts';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Files share a process, which loads each module once: no test may leave anything changed behind.
    isolate: false,
    maxWorkers: '100%',
    reporters: ['default', new ValidationPage(), new CountLine()],
  },
});
