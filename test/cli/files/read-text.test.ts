import { mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readText } from '../../../src/cli/files/read-text.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
const LIMIT = 1e6;

/** What reading a file says, with the folder left out. */
async function said(name: string, limit = LIMIT): Promise<string> {
  const text = await readText(join(folder, name), limit).catch((e: Error) => e.message);
  return text.replaceAll(`${folder}/`, '');
}

test('gives the text, without byte order mark', async () => {
  writeFileSync(join(folder, 'home.yaml'), '\uFEFFtitle: Überlingen, 21 °C\n');
  expect(await said('home.yaml')).toBe('title: Überlingen, 21 °C\n');
});

test('puts the pieces of a long text together', async () => {
  const long = 'é'.repeat(200_001);
  writeFileSync(join(folder, 'long.txt'), long);
  expect(await said('long.txt')).toBe(long);
});

test('a file exactly at the limit is read, one byte more is refused', async () => {
  writeFileSync(join(folder, 'four'), 'four');
  expect(await said('four', 4)).toBe('four');
  expect(await said('four', 3)).toBe(
    'four: expected a file of at most 0.000003 MB, got 0.000004 MB',
  );
});

test('fifty megabytes are refused before they are read', async () => {
  writeFileSync(join(folder, 'huge.yaml'), '');
  truncateSync(join(folder, 'huge.yaml'), 50e6);
  expect(await said('huge.yaml')).toBe('huge.yaml: expected a file of at most 1 MB, got 50 MB');
});

test('an endless device is refused at the limit', async () => {
  await expect(readText('/dev/zero', LIMIT)).rejects.toThrow(
    '/dev/zero: expected a file of at most 1 MB, got more',
  );
});

test.each([
  [
    'picture.yaml',
    [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13],
    'a text file, got a binary file',
  ],
  ['wide.yaml', [0xff, 0xfe, 0x74, 0x00], 'text in UTF-8, got text in UTF-16 (save it as UTF-8)'],
  [
    'old.csv',
    [0x32, 0x31, 0xb0, 0x43],
    'text in UTF-8, got bytes that are not UTF-8 (save it as UTF-8)',
  ],
])('%s is refused by its bytes', async (name, bytes, words) => {
  writeFileSync(join(folder, name), Uint8Array.from(bytes));
  expect(await said(name)).toBe(`${name}: expected ${words}`);
});

test('a path that is not there, with the nearest name in its folder', async () => {
  writeFileSync(join(folder, 'terrace.yaml'), '');
  expect(await said('terace.yaml')).toBe(
    'terace.yaml: expected a file to read, got nothing of that name (did you mean terrace.yaml?)',
  );
  // what is alike is the ending that most files there have
  expect(await said('terr.yaml')).not.toContain('did you mean');
  writeFileSync(join(folder, 'med.yaml'), '');
  expect(await said('semi.yaml')).not.toContain('did you mean');
  expect(await said('terrace.yml')).toContain('(did you mean terrace.yaml?)');
  expect(await said('unlike.txt')).toBe(
    'unlike.txt: expected a file to read, got nothing of that name',
  );
  expect(await said('gone/a.yaml')).toContain(`(there is no folder gone either)`);
});

test('folders, files taken for folders and circles are named', async () => {
  mkdirSync(join(folder, 'sub'));
  symlinkSync('ring', join(folder, 'ring'));
  expect(await said('sub')).toBe('sub: expected a file to read, got a folder');
  expect(await said('four/x')).toBe('four/x: expected a file to read, got nothing of that name');
  expect(await said('ring')).toBe('ring: expected a file to read, got links that lead in a circle');
});
