import { createHash } from 'node:crypto';
import { fstatSync, statSync } from 'node:fs';
import { devNull, hostname } from 'node:os';
import type { Writer } from './neighbour.ts';
import { numbered } from './where-it-leads.ts';

/** What is used of a process. */
export type OwnProcess = Pick<
  NodeJS.Process,
  'stdin' | 'stdout' | 'stderr' | 'pid' | 'kill' | 'platform' | 'env'
>;

/** A process as the one who writes files. */
export function writtenBy({ pid, kill }: OwnProcess): Writer {
  const host = createHash('sha256').update(hostname()).digest('hex').slice(0, 6);
  const isRunning = (other: number): boolean => {
    try {
      return kill(other, 0); // asks only
    } catch (error) {
      return (error as NodeJS.ErrnoException).code !== 'ESRCH';
    }
  };
  return { host, pid, isRunning };
}

/**
 * `sharedName` of standard output; null where there is no telling, and for the null device, of which
 * nobody keeps anything, so that nothing can be lost there.
 */
export function nameOfOut(): string | null {
  try {
    const name = numbered(fstatSync(STDOUT, { bigint: true }));
    return name === numbered(statSync(devNull, { bigint: true })) ? null : name;
  } catch {
    return null;
  }
}

const STDOUT = 1;
