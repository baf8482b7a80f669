import { describe, expect, test } from 'vitest';
import { nameOfOut, type OwnProcess } from '../../src/cli/files/written-by.ts';
import { main } from '../../src/cli/main.ts';
import { nodeIo } from '../../src/cli/node-io.ts';
import { typedAt } from '../../src/cli/typed-at.ts';
import { fakeIo } from './fake-io.ts';
import { JANUARY } from './january.ts';

// What people type or name must reach a terminal as text: it moves no cursor, sets no window's title,
// turns no words round and feigns no line.

const NASTY = JANUARY.replace(/^# title: .*/m, '# title: \u001b]0;w\u0007\u009b2J\u202eSaltmere');
const HOME = String.raw`title: "Cottage\e]0;gone\a\nNothing is wrong.\x9b2J"
weather: s.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-05" }
step: 60
home: { rooms: { den: { floor area: 14, use: living } } }
money: { currency: "EUR\x9b31m\u202e\n9" }
plans:
  "now\u202e": { description: "as it is\nand\e[2J", change: {} }
  "\u2066cooler": { description: less, change: { heating: { setpoint: 18 } } }
`;

/** Status and what was said after a call beside the cottage. */
async function call(args: string[], files: Record<string, string> = {}) {
  const world = fakeIo({ 'h.yaml': HOME, 's.csv': NASTY, ...files });
  const status = await main(args, world.io);
  return { status, ...world.said, files: world.files };
}

const STEERS = /(?![\n\t])\p{Cc}|\p{Bidi_Control}|\u2028|\u2029/u;

describe('figures', () => {
  test.each([
    [['check', 'h.yaml']],
    [['run', 'h.yaml']],
    [['run', 'h.yaml', '--plot', 'den']],
    [['compare', 'h.yaml']],
    [['compare', 'h.yaml', '--csv']],
    [['weather', 'describe', 's.csv']],
    [['weather', 'import', 's.csv']],
  ])('%j', async (args) => {
    const { status, out, err } = await call(args);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).not.toMatch(STEERS);
    expect(out).toMatch(/\\u(?:202e|001b)/);
  });

  test('a title stays on its line', async () => {
    const { out } = await call(['check', 'h.yaml']);
    expect(out.split('\n')[0]).toBe('Cottage\\u001b]0;gone\\u0007 Nothing is wrong.\\u009b2J');
    expect(out).toContain('\\u001b]0;w\\u0007\\u009b2J\\u202eSaltmere');
    expect(out).toMatch(/^now\\u202e +as it is and\\u001b\[2J$/m);
  });

  test('--json holds the same values', async () => {
    const { out } = await call(['compare', 'h.yaml', '--json']);
    expect(out).not.toMatch(STEERS);
    const { plans, baseline } = JSON.parse(out);
    expect(baseline).toBe('now\u202e');
    expect(plans[0].scenario).toBe('Cottage\u001b]0;gone\u0007\nNothing is wrong.\u009b2J');
    expect(plans[0].money.currency).toBe('EUR\u009b31m\u202e\n9');
    expect(plans[1].plan).toBe('\u2066cooler');
  });

  test('a file is written as it is', async () => {
    const { out, files } = await call(['weather', 'import', 's.csv', '-o', 'o.csv']);
    expect(out).toBe('');
    expect(files['o.csv']).toContain('# title: \u001b]0;w\u0007\u009b2J\u202eSaltmere\n');
  });
});

const onStdout = nameOfOut();

test.skipIf(onStdout === null).each([
  [true, 'a\\u202e\n'],
  [false, 'a\u202e\n'],
])('what is written to standard output, a terminal: %s', async (isTTY, expected) => {
  const written: string[] = [];
  const stdout = { isTTY, write: (text: string) => written.push(text) };
  const own = { ...OWN, stdout } as unknown as OwnProcess;
  await nodeIo('', own, (_, work) => work()).writeWhole('/dev/stdout', 'a\u202e\n');
  expect(written).toEqual([expected]);
});

test.each([
  ['linux', { LANG: 'C' }, '19 C\n'],
  ['linux', { LANG: 'C', LC_ALL: 'C.UTF-8' }, '19 °C\n'],
  ['linux', { LANG: 'de_DE.ISO-8859-1' }, '19 C\n'],
  ['linux', { LANG: 'de_DE.utf8' }, '19 °C\n'],
  ['linux', {}, '19 °C\n'],
  ['win32', { LANG: 'C' }, '19 °C\n'],
])('a terminal on %s with %o has the signs that it can show', async (platform, env, expected) => {
  const typed = await typedAt(platform, env);
  const printed = (isTTY: boolean): string => {
    const written: string[] = [];
    const stdout = { isTTY, write: (text: string) => written.push(text) };
    const own = { ...OWN, stdout, platform, env } as unknown as OwnProcess;
    nodeIo('', own, (_, work) => work(), undefined, typed).out('19 °C\n');
    return written.join('');
  };
  expect(printed(true)).toBe(expected);
  expect(printed(false)).toBe('19 °C\n'); // a file or a pipe
});

const OWN = { stderr: process.stderr, pid: process.pid, kill: process.kill, env: {} };

describe('problems', () => {
  test.each([
    [
      'a path',
      ['run', 'x\u009b2J\u202e\nh.yaml: fine'],
      'x\\u009b2J\\u202e\\u000ah.yaml: fine: expected a file to read, got nothing of that name\n',
    ],
    [
      'words of --set',
      ['run', 'h.yaml', '--set', '/home/rooms/den/floor area=\n\u009b1 kg'],
      '--set /home/rooms/den/floor area=\\u000a\\u009b1 kg: home.rooms.den.floor area: ',
    ],
    [
      'a plan that is not there',
      ['run', 'h.yaml', '--plan', 'a\nb\u202e'],
      "error: unknown plan 'a\\u000ab\\u202e', known are now\\u202e, \\u2066cooler\n",
    ],
    [
      'a command that is none',
      ['ru\nerror: no\u001b[2J'],
      "error: unknown command 'ru\\u000aerror: no\\u001b[2J'\n",
    ],
    [
      'an option that is none',
      ['run', 'h.yaml', '--jsn=\n\u202e'],
      "error: unknown option '--jsn=\\u000a\\u202e'\n",
    ],
    [
      'the argument of an option',
      ['run', 'h.yaml', '--set=/a\n\u202eb'],
      "error: option '--set <pointer=value>' argument '/a\\u000a\\u202eb' is invalid. Give a place",
    ],
    [
      'a file written over itself',
      ['run', 'a\nb.yaml', '--trace', 'a\nb.yaml'],
      "error: option '--trace <file.csv>' argument 'a\\u000ab.yaml' is invalid. It is read",
    ],
  ])('%s', async (_, args, words) => {
    const { status, out, err } = await call(args, { 'a\nb.yaml': HOME });
    expect([1, 2]).toContain(status);
    expect(out).toBe('');
    expect(err).not.toMatch(STEERS);
    expect(err.slice(0, words.length)).toBe(words);
  });

  test('names and values of a file', async () => {
    const wrong = HOME.replace('den:', String.raw`"den\e[2J\u202e\n": {}, "d\u2028":`);
    const { status, err } = await call(['check', 'h.yaml'], {
      'h.yaml': wrong.replace('use: living', String.raw`use: "liv\x9bing\u202e"`),
    });
    expect(status).toBe(2);
    expect(err).not.toMatch(STEERS);
    expect(err).toContain(
      'expected a name on one line, with no blanks at its ends, got "den\\u001b[2J\\u202e\\n"',
    );
    expect(err).toContain('got "liv\\u009bing\\u202e"');
    for (const line of err.trim().split('\n')) expect(line).toMatch(/^h\.yaml:\d+:\d+: /);
  });
});

test('a report has no mark that turns words round, in its page and its pictures', async () => {
  const args = ['report', 'h.yaml', '--doubt', '0', '--charts', 'drawn', '-o', 'new\nh.html'];
  const { status, err, files } = await call(args);
  expect(status).toBe(0);
  expect(err).toMatch(/^new\\u000ah\.html written, from \d+ runs\n$/);
  const written = Object.entries(files).filter(([path]) => /\.(?:html|svg)$/.test(path));
  expect(written.length).toBeGreaterThan(3);
  for (const [, text] of written) expect(text).not.toMatch(STEERS);
  expect(files['new\nh.html']).toContain('now\\u202e');
});
