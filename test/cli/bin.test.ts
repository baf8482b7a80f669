import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { BIN, ending, imported, requireBuild } from './built-program.ts';
import { JANUARY } from './january.ts';
import { temporaryFolder } from './temporary-folder.ts';

const RECIPE = 'weather/saltmere-typical.recipe.yaml';
const root = temporaryFolder();
const MONTH = join(root, 'month.csv');

beforeAll(() => {
  requireBuild();
  writeFileSync(MONTH, JANUARY);
});

/** The last step of writing says that it begins, and then takes a minute. */
const STUCK_AT_RENAME = imported(`
  import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
  fs.promises.rename = () => new Promise((done) => { console.log('now'); setTimeout(done, 60000); });
  syncBuiltinESMExports();`);

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

/** How a call ended whose streams a shell redirects, such as `2>&-`. */
const inShell = (args: readonly string[], redirected: string) =>
  ending(spawn('sh', ['-c', `"$0" "$@" ${redirected}`, process.execPath, BIN, ...args]));

describe.runIf(existsSync('/dev/full'))('streams that take nothing', () => {
  test.each(['2>&-', '2>/dev/full'])('standard error %s keeps the exit status', async (words) => {
    expect(await inShell(['check', 'gone.yaml'], words)).toMatchObject({ status: 2, out: '' });
    expect(await inShell(['chek'], words)).toMatchObject({ status: 1, out: '' });
  });

  test('standard error that nobody reads keeps the exit status', async () => {
    const child = start(['check', 'gone.yaml']);
    child.stderr.destroy();
    expect(await ending(child)).toMatchObject({ status: 2, out: '' });
  });

  test('standard output on a full disk is told', async () => {
    expect(await inShell(['--help'], '>/dev/full')).toMatchObject({
      status: 2,
      err: 'standard output: expected a file that can be written, got a full disk\n',
    });
  });
});

test.runIf(existsSync('/dev/stdout'))('figures and series do not go to one place', async () => {
  const args = ['run', 'scenarios/flat.yaml', '--json', '--trace', '/dev/stdout'];
  expect(await ending(start(args))).toEqual({
    ...{ status: 1, signal: null, out: '' },
    err: "error: option '--trace <file.csv>' argument '/dev/stdout' is invalid. Something else of the same call goes there; name another file.\n",
  });
});

test.runIf(existsSync('/dev/stdout'))('an output may be standard output', async () => {
  const log = join(root, 'log.csv');
  writeFileSync(log, 'kept\n');
  const { status } = await inShell(['weather', 'import', MONTH, '-o', '/dev/stdout'], `>>${log}`);
  expect(status).toBe(0);
  expect(readFileSync(log, 'utf8')).toMatch(/^kept\n# title: Saltmere/);
});

test('a library that warns its programmers does not reach the terminal', async () => {
  const warns = imported(`
    import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
    const { open } = fs.promises;
    fs.promises.open = (...args) => { process.emitWarning('old'); return open(...args); };
    syncBuiltinESMExports();`);
  const { err } = await ending(start(['check', 'gone.yaml'], warns));
  expect(err).toBe('gone.yaml: expected a file to read, got nothing of that name\n');
});

test('what a killed run left is removed by the next', async () => {
  const folder = mkdtempSync(join(root, 'x'));
  const call = ['weather', 'import', MONTH, '-o', join(folder, 'year.csv')];
  const child = start(call, STUCK_AT_RENAME);
  const ended = ending(child);
  await new Promise((done) => child.stdout.once('data', done));
  child.kill('SIGKILL');
  await ended;
  expect(readdirSync(folder)).toEqual([expect.stringMatching(/^\.year\.csv\..*\.tmp$/)]);
  expect(await ending(start(call))).toMatchObject({ status: 0, err: '' });
  expect(readdirSync(folder)).toEqual(['year.csv']);
});

test.each([
  ['SIGINT', 130],
  ['SIGTERM', 143],
  ['SIGHUP', 129],
] as const)(
  '%s in the middle of writing ends with %i and leaves nothing',
  async (signal, status) => {
    const folder = mkdtempSync(join(root, 'x'));
    const call = ['weather', 'import', MONTH, '-o', join(folder, 'year.csv')];
    const child = start(call, STUCK_AT_RENAME);
    const ended = ending(child);
    await new Promise((done) => child.stdout.once('data', done));
    expect(readdirSync(folder)).toEqual([
      expect.stringMatching(/^\.year\.csv\.[0-9a-f]+-\d+-[0-9a-f]+\.tmp$/),
    ]);
    child.kill(signal);
    expect(await ended).toMatchObject({ status, err: '' });
    expect(readdirSync(folder)).toEqual([]);
  },
);

test('a signal in the middle of calculating ends it at once and leaves nothing', async () => {
  const folder = mkdtempSync(join(root, 'x'));
  // The first question about a path says that the work begins; then it never ends.
  const busy =
    imported(`import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
    fs.promises.stat = () => { process.stdout.write('now', () => { for (;;); }); return new Promise(() => {}); };
    syncBuiltinESMExports();`);
  const child = start(['weather', 'make', RECIPE, '-o', join(folder, 'year.csv')], busy);
  const ended = ending(child);
  await new Promise((done) => child.stdout.once('data', done));
  child.kill('SIGINT');
  expect(await ended).toMatchObject({ signal: 'SIGINT' }); // which a shell tells as 130
  expect(readdirSync(folder)).toEqual([]);
});
