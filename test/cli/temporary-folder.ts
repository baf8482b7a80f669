import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** An empty folder that is gone again after the tests of the file. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'roombalance-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
