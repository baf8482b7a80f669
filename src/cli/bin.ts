#!/usr/bin/env node
import { readFileSync } from 'node:fs';
import type { Guard } from './files/write-whole.ts';
import { main } from './main.ts';
import { nodeIo } from './node-io.ts';

// The only file that touches the process: its words, its streams, its signals, its exit status.

const { version } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
) as { version: string };

/**
 * Handlers stand only while there is something to clean up. Without them a signal ends the program
 * at once, even in the middle of a long calculation, and the shell sees the usual 128 + number.
 */
const guard: Guard = async (cleanUp, work) => {
  const ends = Object.entries(STATUS_AFTER).map(([signal, status]) => {
    const end = () => {
      cleanUp();
      process.exit(status);
    };
    process.on(signal, end);
    return () => process.off(signal, end);
  });
  try {
    return await work();
  } finally {
    for (const stop of ends) stop();
  }
};

/** Ends what goes on until a person ends it, which is no failure. */
const untilEnded = () =>
  new Promise<void>((done) => {
    for (const signal of Object.keys(STATUS_AFTER)) process.once(signal, () => done());
  });

const STATUS_AFTER = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 };

// A reader that has seen enough (`| head`) closes the pipe; that is no error.
process.stdout.on('error', async (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  const { fileTrouble } = await import('./files/file-trouble.ts');
  const trouble = (await fileTrouble(error, 'standard output', 'write')) as Error;
  process.stderr.write(`${trouble.message}\n`, () => process.exit(2));
});

// Where nobody reads what is said beside the figures, the exit status still tells.
process.stderr.on('error', () => {});

// What Node and libraries warn their programmers of is none of a person's business.
process.removeAllListeners('warning');

const isSeen = process.stdout.isTTY || process.stderr.isTTY;
const typed = isSeen
  ? await (await import('./typed-at.ts')).typedAt(process.platform, process.env)
  : null;
process.exitCode = await main(
  process.argv.slice(2),
  nodeIo(version, process, guard, untilEnded, typed),
);
