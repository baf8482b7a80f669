import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { fileTrouble } from '../../../src/cli/files/file-trouble.ts';
import { type Guard, writeWhole } from '../../../src/cli/files/write-whole.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { temporaryFolder } from '../temporary-folder.ts';
import { writing as calm } from './writing.ts';

const root = temporaryFolder();
let folder = '';
let count = 0;

beforeEach(async () => {
  folder = join(root, String(count++));
  await mkdir(folder);
});

test('writes a new file and leaves nothing beside it', async () => {
  await writeWhole(join(folder, 'a.csv'), 'one\n', calm);
  expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe('one\n');
  expect(readdirSync(folder)).toEqual(['a.csv']);
});

test('replaces a file and keeps its permissions', async () => {
  const path = join(folder, 'a.csv');
  writeFileSync(path, 'a much longer old text');
  chmodSync(path, 0o640);
  await writeWhole(path, 'new', calm);
  expect(readFileSync(path, 'utf8')).toBe('new');
  expect(statSync(path).mode & 0o777).toBe(0o640);
});

test('follows a link instead of replacing it', async () => {
  writeFileSync(join(folder, 'real.csv'), 'old');
  symlinkSync('real.csv', join(folder, 'link.csv'));
  await writeWhole(join(folder, 'link.csv'), 'new', calm);
  expect(readFileSync(join(folder, 'real.csv'), 'utf8')).toBe('new');
  expect(readdirSync(folder).sort()).toEqual(['link.csv', 'real.csv']);
});

test('follows a link to what is not there yet, and from link to link', async () => {
  await mkdir(join(folder, 'deep'));
  symlinkSync('deep/second.csv', join(folder, 'first.csv'));
  symlinkSync('new.csv', join(folder, 'deep/second.csv'));
  await writeWhole(join(folder, 'first.csv'), 'new', calm);
  expect(readlinkSync(join(folder, 'first.csv'))).toBe('deep/second.csv');
  expect(readlinkSync(join(folder, 'deep/second.csv'))).toBe('new.csv');
  expect(readFileSync(join(folder, 'deep/new.csv'), 'utf8')).toBe('new');
  expect(readdirSync(join(folder, 'deep')).sort()).toEqual(['new.csv', 'second.csv']);
});

test('links in a circle are told', async () => {
  const path = join(folder, 'round.csv');
  symlinkSync('round.csv', path);
  await expect(writeWhole(path, 'x', calm)).rejects.toThrow(
    `${path}: expected a file that can be written, got links that lead in a circle`,
  );
});

test('writes a name as long as there may be', async () => {
  const name = `${'a'.repeat(250)}.csv`;
  await writeWhole(join(folder, name), 'new', calm);
  expect(readdirSync(folder)).toEqual([name]);
});

test('removes what a killed process left there', async () => {
  writeFileSync(join(folder, '.a.csv.abc123-9-0011aaff.tmp'), 'half');
  await writeWhole(join(folder, 'a.csv'), 'new', calm);
  expect(readdirSync(folder)).toEqual(['a.csv']);
});

test.runIf(existsSync('/dev/full'))('writes to a device, and tells what it answers', async () => {
  await writeWhole('/dev/null', 'x', calm);
  expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  await expect(writeWhole('/dev/full', 'x', calm)).rejects.toThrow(
    '/dev/full: expected a file that can be written, got a full disk',
  );
});

test('writes into a pipe without taking its place', async () => {
  const pipe = join(folder, 'pipe');
  execFileSync('sh', ['-c', 'mkfifo "$0"', pipe]);
  const [text] = await Promise.all([readFile(pipe, 'utf8'), writeWhole(pipe, 'through', calm)]);
  expect(text).toBe('through');
  expect(statSync(pipe).isFIFO()).toBe(true);
});

test('until it is whole, the old file stands and the new one is hidden', async () => {
  const path = join(folder, 'a.csv');
  writeFileSync(path, 'old');
  let during: string[] = [];
  const interrupted: Guard = async (cleanUp, work) => {
    await work().catch(() => {});
    during = readdirSync(folder);
    cleanUp();
    throw new Error('ended by a signal');
  };
  const unwritable = { toString: () => 'x' } as unknown as string; // fails after the neighbour is made
  await expect(writeWhole(path, unwritable, { ...calm, guard: interrupted })).rejects.toThrow(
    'ended by a signal',
  );
  expect(during).toEqual(['a.csv']);
  expect(readFileSync(path, 'utf8')).toBe('old');
});

test('a signal in the middle removes what was begun', async () => {
  const path = join(folder, 'a.csv');
  let seen: string[] = [];
  const signalled: Guard = async (cleanUp, work) => {
    const working = work();
    while (seen.length === 0) {
      await new Promise((done) => setImmediate(done));
      seen = readdirSync(folder);
    }
    cleanUp();
    const left = readdirSync(folder);
    await working.catch(() => {});
    expect(left).toEqual([]);
    throw new Error('ended by a signal');
  };
  await expect(writeWhole(path, 'x'.repeat(50e6), { ...calm, guard: signalled })).rejects.toThrow(
    'ended by a signal',
  );
  expect(seen).toHaveLength(1);
  expect(seen[0]).toMatch(/^\.a\.csv\.abc123-7-[0-9a-f]{8}\.tmp$/);
  expect(readdirSync(folder)).toEqual([]);
});

test.each([
  ['no/where/a.csv', 'a path whose folder does not exist (make the folder FOLDER/no/where first)'],
  ['', 'a folder'],
  ['file/a.csv', 'a path that leads through a file'],
  [`${'long'.repeat(100)}.csv`, 'a name that is too long'],
])('%j is refused in words', async (name, got) => {
  writeFileSync(join(folder, 'file'), '');
  const path = join(folder, name);
  const message = await writeWhole(path, 'x', calm).then(
    () => 'no error',
    (e: Error) => e.message,
  );
  expect(message).toBe(
    `${path}: expected a file that can be written, got ${got.replace('FOLDER', folder)}`,
  );
  expect(readdirSync(folder)).toEqual(['file']);
});

test.runIf(existsSync('/proc/self'))('a folder that takes no files is told', async () => {
  await expect(writeWhole('/proc/a.csv', 'x', calm)).rejects.toThrow(
    '/proc/a.csv: expected a file that can be written, got a folder in which none can be made',
  );
});

test.each([
  ['EACCES', 'a place where you may not write'],
  ['EROFS', 'a disk that can only be read'],
  ['ENOSPC', 'a full disk'],
  ['EPIPE', 'a pipe that nobody reads any more'],
  ['ERR_INVALID_ARG_VALUE', 'a name with a null character'],
])('%s is told in words', async (code, got) => {
  const trouble = await fileTrouble(Object.assign(new Error(), { code }), 'out.csv', 'write');
  expect(trouble).toBeInstanceOf(InputProblems);
  expect(String(trouble)).toContain(`out.csv: expected a file that can be written, got ${got}`);
});

test('an answer of the system that has no words yet is told by its name', async () => {
  const error = Object.assign(new Error(), { code: 'EIO', syscall: 'read' });
  expect(String(await fileTrouble(error, 'in.csv', 'read'))).toContain(
    'in.csv: expected a file to read, got one that the system refuses with EIO',
  );
});

test('an error that is not about the path stays itself', async () => {
  const bug = new TypeError('ours');
  expect(await fileTrouble(bug, 'out.csv', 'write')).toBe(bug);
});
