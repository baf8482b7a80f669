import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { requireBuild } from '../cli/built-program.ts';
import { writeReport } from './report-pages.ts';

/**
 * Path of the report that the built program writes of a scenario.
 *
 * It is written once for all tests that open it, and kept until the program, the scenario, its
 * weather or what is asked for changes.
 */
export async function writtenReport(scenario: string, ...more: readonly string[]): Promise<string> {
  requireBuild();
  const page = resolve(FOLDER, `${keyOf(scenario, more)}.html`);
  const lock = `${page}.lock`;
  mkdirSync(FOLDER, { recursive: true });
  while (!existsSync(page)) {
    if (isTaken(lock)) {
      await setTimeout(200);
      continue;
    }
    forgetOld();
    try {
      const part = page.replace('.html', '.part.html');
      await writeReport(scenario, part, ...more);
      renameSync(part, page);
    } finally {
      rmSync(lock, { recursive: true });
    }
  }
  return page;
}

/** How long a page may take on a busy machine until one of the tests has written it. [ms] */
export const WRITING_TIME = 180_000;

/** Stands for all that a page is made from. */
function keyOf(scenario: string, more: readonly string[]): string {
  const hash = createHash('sha256').update(JSON.stringify([process.version, more]));
  const program = readdirSync('dist', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.js'))
    .sort();
  const weather = /^weather: (.+)$/m.exec(readFileSync(scenario, 'utf8'))![1]!;
  const files = program.map((file) => join('dist', file));
  for (const file of [...files, 'package-lock.json', scenario, join(dirname(scenario), weather)]) {
    hash.update(readFileSync(file));
  }
  return hash.digest('hex').slice(0, 24);
}

/** Whether another test writes that page; where not, it is now ours to write. */
function isTaken(lock: string): boolean {
  const since = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
  if (since !== undefined && Date.now() - since > LONGEST) rmSync(lock, { recursive: true });
  try {
    mkdirSync(lock);
    return false;
  } catch {
    return true;
  }
}

/** Pages of builds that are gone. */
function forgetOld(): void {
  for (const file of readdirSync(FOLDER)) {
    const path = join(FOLDER, file);
    const since = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Date.now() - since > DAY) rmSync(path, { recursive: true, force: true });
  }
}

const FOLDER = 'build/reports';
const LONGEST = 600_000; // [ms]: a process that writes for longer is gone
const DAY = 86_400_000; // [ms]
