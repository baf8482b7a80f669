import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { makeFolder } from '../../../src/cli/files/make-folder.ts';
import { requireWritable } from '../../../src/cli/files/write-whole.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { writing } from './writing.ts';

const root = temporaryFolder();
writeFileSync(join(root, 'file'), 'x');
mkdirSync(join(root, 'folder'));

const refusal = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => 'no error',
    (error: Error) => error.message,
  );

test('a folder is made with those it stands in, and one that is there is left as it is', async () => {
  const path = join(root, 'a', 'b', 'c');
  await makeFolder(path);
  writeFileSync(join(path, 'kept'), 'x');
  await makeFolder(path);
  expect(statSync(join(path, 'kept')).size).toBe(1);
});

test.each([
  ['file', 'a file'],
  ['file/deeper', 'a path that leads through a file'],
  ['long'.repeat(100), 'a name that is too long'],
])('a folder cannot be made at %s', async (name, got) => {
  const path = join(root, name);
  expect(await refusal(makeFolder(path))).toBe(
    `${path}: expected a folder, or a path where one can be made, got ${got}`,
  );
});

test('a path that can be written is, whether something stands there or not', async () => {
  await requireWritable(join(root, 'file'), writing);
  await requireWritable(join(root, 'folder', 'new.html'), writing);
  await requireWritable(join(root, 'new.html'), writing);
  expect(statSync(join(root, 'file')).size).toBe(1);
  expect(() => statSync(join(root, 'folder', 'new.html'))).toThrow('ENOENT');
});

test.each([
  ['folder', 'a folder'],
  ['folder/', 'a folder'],
  ['new/', 'a folder'],
  ['file/page.html', 'a path that leads through a file'],
  ['gone/page.html', 'a path whose folder does not exist (make the folder ROOT/gone first)'],
])('that nothing can be written at %s is known before the work', async (name, got) => {
  const path = join(root, name);
  expect(await refusal(requireWritable(path, writing))).toBe(
    `${path}: expected a file that can be written, got ${got.replace('ROOT', root)}`,
  );
});
