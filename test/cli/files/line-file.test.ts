import { existsSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openLineFile } from '../../../src/cli/files/line-file.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const at = (name: string) => join(root, name);

test('lines that are added can be read again, also by the next who opens it', async () => {
  const file = await openLineFile(at('a'), 'new');
  const places = [await file.append('first'), await file.append('zwölf €'), await file.append('')];
  expect(await Promise.all(places.map((place) => file.read(place)))).toEqual([
    'first',
    'zwölf €',
    '',
  ]);
  await file.close();
  const again = await openLineFile(at('a'), 'go on');
  const seen: unknown[] = [];
  expect(await again.scan((line, place) => seen.push([line, place]))).toBe('');
  expect(seen).toEqual([
    ['first', places[0]],
    ['zwölf €', places[1]],
    ['', places[2]],
  ]);
  await again.append('last');
  expect(readFileSync(at('a'), 'utf8')).toBe('first\nzwölf €\n\nlast\n');
  await again.remove();
  expect(existsSync(at('a'))).toBe(false);
});

test('a line that breaks off is told and dropped', async () => {
  writeFileSync(at('b'), 'whole\nbro');
  const file = await openLineFile(at('b'), 'go on');
  expect(await file.scan(() => {})).toBe('bro');
  await file.dropRest();
  await file.append('next');
  await file.close();
  expect(readFileSync(at('b'), 'utf8')).toBe('whole\nnext\n');
});

test('lines longer than a piece that is read at once', async () => {
  const lines = ['x'.repeat(3_000_000), 'y', 'z'.repeat(1_048_576)];
  writeFileSync(at('c'), lines.map((line) => `${line}\n`).join(''));
  const file = await openLineFile(at('c'), 'read');
  const seen: string[] = [];
  await file.scan((line) => seen.push(line));
  await file.close();
  expect(seen.map(({ length }) => length)).toEqual([3_000_000, 1, 1_048_576]);
});

test('going on where there is none makes one', async () => {
  const file = await openLineFile(at('d'), 'go on');
  await file.append('one');
  await file.close();
  expect(readFileSync(at('d'), 'utf8')).toBe('one\n');
});

test('one that an earlier call left is not written over', async () => {
  writeFileSync(at('e'), 'old\n');
  await expect(openLineFile(at('e'), 'new')).rejects.toThrow(
    `${at('e')}: expected no such file yet, got what an earlier call left unfinished (--resume goes on with it; remove it to begin anew)`,
  );
});

test.skipIf(!existsSync('/dev/full'))('a full disk is told in words', async () => {
  symlinkSync('/dev/full', at('f'));
  const file = await openLineFile(at('f'), 'go on');
  await expect(file.append('one')).rejects.toThrow(
    `${at('f')}: expected a file that can be written, got a full disk`,
  );
  await file.close();
});
