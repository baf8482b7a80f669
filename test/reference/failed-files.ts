import type { RunnerTestFile } from 'vitest';
import type { Reporter, Vitest } from 'vitest/node';

/**
 * While mutants are tried, adds a failed test to each file that fails outside its tests.
 *
 * A change that makes a file throw while it is loaded, or in a hook, leaves no failed test behind;
 * the mutant runner, which asks tests only, would take it for a change that nobody noticed.
 */
export class FailedFiles implements Reporter {
  private vitest: Vitest | undefined;

  onInit(vitest: Vitest): void {
    this.vitest = vitest;
  }

  onTestRunEnd(): void {
    for (const file of this.vitest?.state.getFiles() ?? []) {
      if (file.result?.state === 'fail' && file.result.errors?.length) addFailedTest(file);
    }
  }
}

function addFailedTest(file: RunnerTestFile): void {
  const name = 'loads and ends without an error';
  file.tasks.push({
    type: 'test',
    id: `${file.id}_file`,
    name,
    fullName: name,
    fullTestName: name,
    mode: 'run',
    file,
    meta: {},
    timeout: 0,
    annotations: [],
    artifacts: [],
    context: {} as never, // nobody reads what a test that never ran was given
    ...(file.result && { result: file.result }),
  });
}
