import { mkdtempSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expect, test } from 'vitest';
import { neighbourOf, removeAbandoned } from '../../../src/cli/files/neighbour.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const writer = { host: 'abc123', pid: 7, isRunning: (pid: number) => pid === 8 };
const TODAY = new Date();
const BEFORE_YESTERDAY = new Date(TODAY.getTime() - 2 * 86_400_000);

/** Names that are left of some, the target's among them. */
async function left(names: readonly string[], touched: Date): Promise<string[]> {
  const folder = mkdtempSync(join(root, 'x'));
  for (const name of ['a.csv', ...names]) {
    writeFileSync(join(folder, name), '');
    utimesSync(join(folder, name), touched, touched);
  }
  await removeAbandoned(join(folder, 'a.csv'), writer);
  return readdirSync(folder).filter((name) => name !== 'a.csv');
}

test('what a killed process left is removed', async () => {
  expect(await left(['.a.csv.abc123-9-0011aaff.tmp'], TODAY)).toEqual([]);
});

test('what a running process writes stays', async () => {
  const name = '.a.csv.abc123-8-0011aaff.tmp';
  expect(await left([name], BEFORE_YESTERDAY)).toEqual([name]);
});

test('what another host writes stays for a day', async () => {
  const name = '.a.csv.def456-9-0011aaff.tmp';
  expect(await left([name], TODAY)).toEqual([name]);
  expect(await left([name], BEFORE_YESTERDAY)).toEqual([]);
});

test('nothing of another name is touched', async () => {
  const names = [
    '.a.csv.abc123-9-0011aaff.tmp.txt',
    '.a.csv.abc123-9-0011aafg.tmp',
    '.a.csv.tmp',
    '.b.csv.abc123-9-0011aaff.tmp',
    'a.csv.abc123-9-0011aaff.tmp',
  ];
  expect(await left(names, BEFORE_YESTERDAY)).toEqual(names);
});

test.each([
  ['a long name', `${'a'.repeat(251)}.csv`, 'a'.repeat(100)],
  ['a long name of wide letters', `${'ä'.repeat(125)}.csv`, 'ä'.repeat(50)],
  ['one that would be cut within a letter', `${'€'.repeat(80)}.csv`, '€'.repeat(33)],
])('%s has a neighbour that is short enough', (_, name, begins) => {
  const neighbour = basename(neighbourOf(join('here', name), { ...writer, pid: 4_194_304 }));
  expect(neighbour).toMatch(new RegExp(`^\\.${begins}\\.abc123-4194304-[0-9a-f]{8}\\.tmp$`));
  expect(Buffer.byteLength(neighbour)).toBeLessThanOrEqual(143);
});
