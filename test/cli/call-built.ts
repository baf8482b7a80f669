import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Io } from '../../src/cli/io.ts';

/**
 * What the program says, as it was built, where it is called in this process and has no threads: much
 * sooner than a process of its own would, where the process is not what is tested. Paths are those of
 * this process, unless `over` reads and writes elsewhere.
 */
export async function calledHere(args: readonly string[], over: Partial<Io> = {}) {
  const { main } = await builtProgram();
  const said = { out: '', err: '' };
  const status = await main(args, {
    ...(await builtIo()),
    startWorkers: async () => null,
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    ...over,
  });
  return { status, signal: null, ...said };
}

/** What it says with threads, as many as a process of its own would have. */
export async function calledWithThreads(args: readonly string[], over: Partial<Io> = {}) {
  const { startWorkers } = await builtIo();
  return calledHere(args, { startWorkers, ...over });
}

/** Files, terminal and signals as the program has them. */
export async function builtIo(): Promise<Io> {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  return (await builtProgram()).nodeIo(version, process, (_, work) => work());
}

/** The program as it was built, so that both ways are of the same making. */
async function builtProgram(): Promise<Built> {
  const from = (file: string) => import(pathToFileURL(resolve('dist/cli', file)).href);
  return { ...(await from('main.js')), ...(await from('node-io.js')) };
}

type Built = Pick<typeof import('../../src/cli/main.ts'), 'main'> &
  Pick<typeof import('../../src/cli/node-io.ts'), 'nodeIo'>;
