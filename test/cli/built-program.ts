import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

/** The program as the build leaves it. */
export const BIN = resolve('dist/cli/bin.js');

/** Fails in words where nobody has built. */
export function requireBuild(): void {
  if (!existsSync(BIN)) throw new Error(`${BIN} is not there: run "npm run build" first`);
}

/** How a process ended, and what it said. */
export function ending(child: ChildProcess) {
  const said = { out: '', err: '' };
  child.stdout?.on('data', (piece) => {
    said.out += piece;
  });
  child.stderr?.on('data', (piece) => {
    said.err += piece;
  });
  return new Promise<{ status: number | null; signal: string | null; out: string; err: string }>(
    (done) => child.on('close', (status, signal) => done({ status, signal, ...said })),
  );
}

/** What a process of the program says, called in a folder. */
export const called = (args: readonly string[], cwd: string) =>
  ending(spawn(process.execPath, [BIN, ...args], { cwd }));

/** Words for node that run some code before the program. */
export function imported(code: string): string[] {
  return ['--import', `data:text/javascript,${encodeURIComponent(code)}`];
}
