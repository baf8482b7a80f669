import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { BIN, called, ending, requireBuild } from '../built-program.ts';
import { calledHere, calledWithThreads } from '../call-built.ts';
import { JANUARY } from '../january.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const HOME = `title: Test cottage
weather: w.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home: { rooms: { den: { floor area: 14 }, nook: { floor area: 9 } } }
heating: { setpoint: 20 }
plans:
  now: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day } } } }
`;
const VARY = ['--vary', '/heating/setpoint=18 to 20 by 1', '--plans', 'now,dry'];

beforeAll(requireBuild);

function folderWith(name: string, text = HOME, weather = JANUARY): string {
  const folder = join(root, name);
  mkdirSync(folder);
  writeFileSync(join(folder, 'cottage.yaml'), text);
  writeFileSync(join(folder, 'w.csv'), weather);
  return folder;
}

const wordsOf = (folder: string, output: string) => [
  ...['sweep', join(folder, 'cottage.yaml'), '-o', join(folder, output)],
  ...VARY,
];

/** A process of its own, with threads unless told otherwise. */
const sweep = (folder: string, output: string, ...words: string[]) =>
  called([...wordsOf(folder, output), ...words], folder);

/** In this process, all runs in its one thread. */
const sweepHere = (folder: string, output: string, ...words: string[]) =>
  calledHere([...wordsOf(folder, output), '--threads', '1', ...words]);

test('threads give the very bytes of one, in the order of the runs', async () => {
  const folder = folderWith('threads');
  expect(await sweep(folder, 'all.ndjson')).toMatchObject({ status: 0, err: '' });
  const parts: string[][] = [];
  for (const i of [1, 2, 3]) {
    const { status } = await sweepHere(folder, `${i}.ndjson`, '--shard', `${i}/3`);
    expect(status).toBe(0);
    parts.push(linesOf(join(folder, `${i}.ndjson`)));
  }
  expect(await sweepHere(folder, 'one.ndjson')).toMatchObject({ status: 0, err: '' });
  const two = [...wordsOf(folder, 'two.ndjson'), '--threads', '2'];
  expect(await calledWithThreads(two)).toMatchObject({ status: 0, err: '' });
  const whole = linesOf(join(folder, 'all.ndjson'));
  expect(linesOf(join(folder, 'one.ndjson'))).toEqual(whole);
  expect(linesOf(join(folder, 'two.ndjson'))).toEqual(whole);
  expect(whole.map((line) => JSON.parse(line).run)).toEqual([1, 2, 3, 4, 5, 6]);
  expect(whole.filter((_, k) => k % 3 === 0)).toEqual(parts[0]);
  expect(whole.filter((_, k) => k % 3 === 1)).toEqual(parts[1]);
  expect(whole.filter((_, k) => k % 3 === 2)).toEqual(parts[2]);
});

test('a call that is ended leaves its runs, and --resume gives the bytes of a whole one', async () => {
  const year = readFileSync('weather/saltmere-typical.csv', 'utf8');
  const folder = folderWith('ended', HOME.replace('"01-06"', '"06-30"'), year);
  const child = spawn(process.execPath, [BIN, ...wordsOf(folder, 'all.csv')]);
  const ended = ending(child);
  const left = join(folder, 'all.csv.unfinished');
  while (!existsSync(left) || linesOf(left).length < 2) {
    await new Promise((done) => setTimeout(done, 5));
  }
  child.kill('SIGINT');
  await ended;
  const runs = linesOf(left).length - 1;
  expect(runs).toBeGreaterThanOrEqual(1);
  expect((await sweepHere(folder, 'all.csv')).err).toContain(
    'all.csv.unfinished: expected no such file yet, got what an earlier call left unfinished',
  );
  expect(await sweep(folder, 'all.csv', '--resume')).toMatchObject({ status: 0, err: '' });
  expect(await sweepHere(folder, 'whole.csv')).toMatchObject({ status: 0, err: '' });
  const [resumed, whole] = ['all.csv', 'whole.csv'].map((name) =>
    readFileSync(join(folder, name), 'utf8'),
  );
  expect(resumed === whole).toBe(true);
});

test.skipIf(!existsSync('/dev/full'))('a full disk is told, and what was run is kept', async () => {
  const folder = folderWith('full');
  symlinkSync('/dev/full', join(folder, 'all.csv'));
  const { status, out, err } = await sweepHere(folder, 'all.csv');
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toMatch(/all\.csv: expected a file that can be written, got a full disk\n$/);
  expect(linesOf(join(folder, 'all.csv.unfinished'))).toHaveLength(1 + 6);
});

/** Whole lines of a file. */
const linesOf = (path: string): string[] => readFileSync(path, 'utf8').split('\n').slice(0, -1);
