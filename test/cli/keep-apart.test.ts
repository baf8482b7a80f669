import { linkSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sharedName } from '../../src/cli/files/where-it-leads.ts';
import { keepApart } from '../../src/cli/keep-apart.ts';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';
import { temporaryFolder } from './temporary-folder.ts';

const root = temporaryFolder();
mkdirSync(join(root, 'homes'));
writeFileSync(join(root, 'homes/h.yaml'), 'kept');
symlinkSync('homes/h.yaml', join(root, 'symbolic.csv'));
symlinkSync('symbolic.csv', join(root, 'twice.csv'));
symlinkSync('homes', join(root, 'folder'));
linkSync(join(root, 'homes/h.yaml'), join(root, 'hard.csv'));
symlinkSync('homes/new.csv', join(root, 'dangling.csv'));

const disk = { sharedName, outName: async () => null };
const at = (name: string): string => join(root, name);
const trace = (path: string) => [{ option: '--trace <file.csv>', path }];
const readToo = (path: string): string =>
  `error: option '--trace <file.csv>' argument '${path}' is invalid. It is read by the same call; name another file.`;
const writtenToo = (path: string): string =>
  `error: option '--trace <file.csv>' argument '${path}' is invalid. Something else of the same call goes there; name another file.`;

test.each([
  ['itself', 'homes/h.yaml'],
  ['another way to it', 'homes/../homes/h.yaml'],
  ['a symbolic link', 'symbolic.csv'],
  ['a link to a link', 'twice.csv'],
  ['a linked folder', 'folder/h.yaml'],
  ['a hard link', 'hard.csv'],
])('refuses to write over an input by %s', async (_, name) => {
  const path = at(name);
  await expect(keepApart(disk, trace(path), [undefined, at('homes/h.yaml')])).rejects.toThrow(
    readToo(path),
  );
});

test('lets any other file be written, and none', async () => {
  await keepApart(disk, trace(at('other.csv')), [at('homes/h.yaml'), undefined]);
  await keepApart(disk, trace(at('dangling.csv')), [at('homes/h.yaml')]);
  await keepApart(disk, [{ option: '-o', path: undefined }], [at('homes/h.yaml')], true);
});

test.each([
  ['one that both make', 'homes/new.csv', 'homes/../homes/new.csv'],
  ['one that a dangling link leads to', 'homes/new.csv', 'dangling.csv'],
  ['one that is there', 'homes/h.yaml', 'hard.csv'],
])('refuses two outputs into %s', async (_, first, second) => {
  const outputs = [{ option: '-o', path: at(first) }, ...trace(at(second))];
  await expect(keepApart(disk, outputs, [])).rejects.toThrow(writtenToo(at(second)));
});

test('refuses a file where the figures go, but only where they do', async () => {
  const redirected = { sharedName, outName: () => sharedName(at('hard.csv')) };
  const path = at('symbolic.csv');
  await expect(keepApart(redirected, trace(path), [], true)).rejects.toThrow(writtenToo(path));
  await keepApart(redirected, trace(path), [], false);
});

test('a recipe is not lost to the year made of it', async () => {
  const { io, said, files } = fakeIo({ 'r.yaml': 'title: kept' });
  expect(await main(['weather', 'make', 'r.yaml', '-o', './r.yaml'], io)).toBe(1);
  expect(files).toEqual({ 'r.yaml': 'title: kept' });
  expect(said.err).toContain("argument './r.yaml' is invalid");
});
