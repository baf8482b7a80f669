import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { Io } from '../../../src/cli/io.ts';
import { BIN, called, imported, requireBuild } from '../built-program.ts';
import { builtIo, calledHere, calledWithThreads } from '../call-built.ts';
import { JANUARY } from '../january.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const root = temporaryFolder();
const HOME = `title: Test cottage
weather: w.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom }
plans:
  now: { change: {} }
  cool: { change: { heating: { setpoint: 18 } } }
  dry:
    change: { devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day } } }
    purchases: [{ what: drier, price: 180, lasts: 8 years }]
  both: { based on: dry, change: { heating: { setpoint: 18 } } }
`;

const YEAR = readFileSync('weather/saltmere-typical.csv', 'utf8');

beforeAll(requireBuild);

/** A folder with a cottage and its weather. */
function folderWith(name: string, text: string, weather = YEAR): string {
  const folder = join(root, name);
  mkdirSync(folder);
  writeFileSync(join(folder, 'cottage.yaml'), text);
  writeFileSync(join(folder, 'w.csv'), weather);
  return folder;
}

/** What the program says in this process, called in a folder, unless told otherwise without threads. */
async function here(args: readonly string[], cwd: string, call = calledHere) {
  const io = await builtIo();
  const readText: Io['readText'] = (path, limit) => io.readText(join(cwd, path), limit);
  return call(args, { readText });
}

const withThreads = (args: readonly string[], cwd: string) => here(args, cwd, calledWithThreads);

test.each([
  [['--csv'], called],
  [['--json', '--doubt', '4'], withThreads],
])('threads give the very bytes of one: %j', async (options, call) => {
  const folder = folderWith(`all${options.join('')}`, HOME, JANUARY);
  const args = ['compare', 'cottage.yaml', ...options];
  const threads = await call(args, folder);
  expect(threads).toMatchObject({ status: 0, err: '' });
  expect(threads.out).toContain('both');
  expect(await here(args, folder)).toEqual(threads);
});

test('of two plans that leave the formulas, the first is told, once', async () => {
  const oven = `nook: { floor area: 1, height: 2, elements: [], emitter: none, panes: [{ area: 50,
      faces: south, u-value: 0.2, g-value: 1, shading: 0, frame: 0 }] }`;
  const text = HOME.replace(/nook: \{.*/, oven).replace('"01-06"', '"09-30"');
  const { status, out, err } = await called(['compare', 'cottage.yaml'], folderWith('oven', text));
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toMatch(
    /^cottage\.yaml: expected a home that stays within the range of every formula, got .*\n$/,
  );
});

test('Ctrl-C while threads run ends the program at once', async () => {
  const text = HOME.replace(/period.*\n/, '').replace('step: 60', 'step: 1');
  const folder = folderWith('long', text);
  // Says so when the first run is given to a thread.
  const telling = imported(`import { Worker } from 'node:worker_threads';
    const { postMessage } = Worker.prototype;
    Worker.prototype.postMessage = function (order) {
      if ('task' in order) process.stdout.write('now');
      return postMessage.call(this, order);
    };`);
  const args = [...telling, BIN, 'compare', 'cottage.yaml'];
  const child = spawn(process.execPath, args, { cwd: folder });
  const ended = new Promise<string | null>((done) =>
    child.on('close', (_, signal) => done(signal)),
  );
  await new Promise((done) => child.stdout.once('data', done));
  await new Promise((done) => setTimeout(done, 200));
  child.kill('SIGINT');
  expect(await ended).toBe('SIGINT');
});
