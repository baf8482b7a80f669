import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { temporaryFolder } from './temporary-folder.ts';

const BIN = 'dist/cli/bin.js';
const RECIPE = 'weather/saltmere-typical.recipe.yaml';
const root = temporaryFolder();

beforeAll(() => {
  if (!existsSync(BIN)) throw new Error(`${BIN} is not there: run "npm run build" first`);
});

/** How a process ended, and what it said. */
function ending(child: ChildProcess) {
  const said = { out: '', err: '' };
  child.stdout?.on('data', (piece) => {
    said.out += piece;
  });
  child.stderr?.on('data', (piece) => {
    said.err += piece;
  });
  return new Promise<{ status: number | null; signal: string | null; out: string; err: string }>(
    (done) => child.on('close', (status, signal) => done({ status, signal, ...said })),
  );
}

const start = (args: readonly string[], nodeArgs: readonly string[] = []) =>
  spawn(process.execPath, [...nodeArgs, BIN, ...args]);

test('the program says the version of the package', async () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(await ending(start(['--version']))).toMatchObject({
    status: 0,
    out: `${version}\n`,
    err: '',
  });
});

test('its exit status is the one of main', async () => {
  expect(await ending(start(['check', 'gone.yaml']))).toMatchObject({
    status: 2,
    out: '',
    err: 'gone.yaml: expected a file to read, got nothing of that name\n',
  });
});

test('a reader that closes the pipe early is no error', async () => {
  const child = start(['weather', 'make', RECIPE]);
  child.stdout.once('data', () => child.stdout.destroy());
  expect(await ending(child)).toMatchObject({ status: 0, err: '' });
});

test.each([
  ['SIGINT', 130],
  ['SIGTERM', 143],
  ['SIGHUP', 129],
] as const)(
  '%s in the middle of writing ends with %i and leaves nothing',
  async (signal, status) => {
    const folder = mkdtempSync(join(root, 'x'));
    // The last step of writing says that it begins, and then takes a minute.
    const slow = `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
    fs.promises.rename = () => new Promise((done) => { console.log('now'); setTimeout(done, 60000); });
    syncBuiltinESMExports();`;
    const nodeArgs = ['--import', `data:text/javascript,${encodeURIComponent(slow)}`];
    const child = start(['weather', 'make', RECIPE, '-o', join(folder, 'year.csv')], nodeArgs);
    const ended = ending(child);
    await new Promise((done) => child.stdout.once('data', done));
    expect(readdirSync(folder)).toEqual([expect.stringMatching(/^\.year\.csv\.[0-9a-f]+\.tmp$/)]);
    child.kill(signal);
    expect(await ended).toMatchObject({ status, err: '' });
    expect(readdirSync(folder)).toEqual([]);
  },
);

test('a signal in the middle of calculating ends it at once and leaves nothing', async () => {
  const folder = mkdtempSync(join(root, 'x'));
  // The first question about a path says that the work begins; then it never ends.
  const busy = `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
    fs.promises.realpath = () => { process.stdout.write('now', () => { for (;;); }); return new Promise(() => {}); };
    syncBuiltinESMExports();`;
  const nodeArgs = ['--import', `data:text/javascript,${encodeURIComponent(busy)}`];
  const child = start(['weather', 'make', RECIPE, '-o', join(folder, 'year.csv')], nodeArgs);
  const ended = ending(child);
  await new Promise((done) => child.stdout.once('data', done));
  child.kill('SIGINT');
  expect(await ended).toMatchObject({ signal: 'SIGINT' }); // which a shell tells as 130
  expect(readdirSync(folder)).toEqual([]);
});
