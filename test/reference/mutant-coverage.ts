import { afterAll, type RunnerTask } from 'vitest';

/**
 * While mutants are tried, counts what one test of a file reaches as reached by all tests of it.
 *
 * Tests of a file share runs that the first of them makes. Without this the others would not be
 * asked about a change in what made that run.
 */
// biome-ignore lint/correctness/noEmptyPattern: vitest reads from it which fixtures are wanted
afterAll(({}, suite) => {
  const { perTest } = world.__stryker__?.mutantCoverage ?? { perTest: {} };
  const ids = Object.keys(perTest).filter((id) => id.startsWith(`${suite.file.filepath}#`));
  const reached: Hits = {};
  for (const id of ids) {
    for (const [mutant, hits] of Object.entries(perTest[id] ?? {})) {
      reached[mutant] = (reached[mutant] ?? 0) + hits;
    }
  }
  for (const id of testIds(suite.tasks, suite.file.filepath, '')) perTest[id] = { ...reached };
});

function testIds(tasks: readonly RunnerTask[], file: string, above: string): string[] {
  return tasks.flatMap((task) => {
    const name = `${above} ${task.name}`.trim();
    return task.type === 'suite' ? testIds(task.tasks, file, name) : [`${file}#${name}`];
  });
}

/** Hits by number of the mutant. */
type Hits = Record<string, number>;
const world = globalThis as {
  __stryker__?: { mutantCoverage?: { perTest: Record<string, Hits> } };
};
