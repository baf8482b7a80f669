import { expect, test } from 'vitest';
import { createFileWatch } from '../../../src/cli/serve/file-watch.ts';
import { fakeIo } from '../fake-io.ts';

/** Resolves to false where a wait is not over after some looks at the files. */
const soon = (wait: Promise<void>): Promise<boolean> =>
  Promise.race([wait.then(() => true), new Promise<false>((no) => setTimeout(no, 40, false))]);

test('a file that was read counts, and no other', async () => {
  const { io, files } = fakeIo({ a: '1', b: '1' });
  const watch = createFileWatch(io);
  await watch.io.readText('a', 9);
  files['b'] = '2';
  expect(await soon(watch.next())).toBe(false);
  files['a'] = '2';
  expect(await soon(watch.next())).toBe(true);
  expect(watch.seen()).toBe('[["a","1"]]');
});

test('one that is not there counts when it comes, and one that goes', async () => {
  const { io, files } = fakeIo({ a: '1' });
  const watch = createFileWatch(io);
  await expect(watch.io.readText('gone', 9)).rejects.toThrow('nothing of that name');
  expect(await watch.changed()).toBe(false);
  files['gone'] = '1';
  expect(await soon(watch.next())).toBe(true);
  watch.restart();
  await watch.io.readText('a', 9);
  expect(await watch.changed()).toBe(false);
  delete files['a'];
  expect(await watch.changed()).toBe(true);
});

test('waits until whoever writes has finished', async () => {
  const { io, files } = fakeIo({ a: '' });
  const watch = createFileWatch(io);
  await watch.io.readText('a', 99);
  const writing = setInterval(() => {
    files['a'] += 'x';
  }, 1);
  const wait = watch.next();
  expect(await soon(wait)).toBe(false);
  clearInterval(writing);
  expect(await soon(wait)).toBe(true);
});

test('what is written while it is read is a change', async () => {
  const { io, files } = fakeIo({ a: '1' });
  const readText = async (path: string, limit: number): Promise<string> => {
    const text = await io.readText(path, limit);
    files['a'] = '2';
    return text;
  };
  const watch = createFileWatch({ ...io, readText });
  expect(await watch.io.readText('a', 9)).toBe('1');
  expect(await watch.changed()).toBe(true);
});

test('nobody waits for a watch that was stopped', async () => {
  const { io } = fakeIo({ a: '1' });
  const watch = createFileWatch(io);
  await watch.io.readText('a', 9);
  const wait = watch.next();
  watch.stop();
  expect(await soon(wait)).toBe(true);
});
