import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with one plain line that counts its tests, for readers that are programs. */
export class CountLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const states = modules.flatMap((m) => [...m.children.allTests()].map((t) => t.result().state));
    const count = (state: string): number => states.filter((s) => s === state).length;
    const broken = modules.filter((m) => !m.ok() && m.children.size === 0).length;
    process.stdout.write(
      `${count('passed')} passed, ${count('failed') + broken} failed, ${count('skipped')} skipped\n`,
    );
  }
}
