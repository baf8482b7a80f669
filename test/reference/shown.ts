import { readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

/**
 * Expect that a page shows what the program prints now.
 *
 * With UPDATE_VALIDATION=1 it is written into the page instead, as the table of validation is.
 *
 * @param shown  the part of the page that is compared
 */
export function expectShown(path: string, shown: string, now: string): void {
  if (process.env['UPDATE_VALIDATION'] !== '1') {
    expect(shown, 'run "npm run validation" to write it anew').toBe(now);
    return;
  }
  const page = readFileSync(path, 'utf8');
  writeFileSync(
    path,
    page.replace(shown, () => now),
  );
}
