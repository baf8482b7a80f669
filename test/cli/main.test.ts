import { describe, expect, test, vi } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

/** Status and what was said after a call without files. */
async function call(...args: string[]) {
  const { io, said } = fakeIo();
  return { status: await main(args, io), ...said };
}

const COMMANDS = [
  ['check'],
  ['run'],
  ['compare'],
  ['weather'],
  ['weather', 'describe'],
  ['weather', 'import'],
  ['weather', 'make'],
];

describe('help', () => {
  test.each(COMMANDS.map((words) => [words.join(' '), words]))(
    '%s --help has an example',
    async (name, words) => {
      const { status, out, err } = await call(...words, '--help');
      expect(status).toBe(0);
      expect(err).toBe('');
      expect(out).toMatch(new RegExp(`^Usage: roombalance ${name} `));
      expect(out).toContain('  $ roombalance ');
    },
  );

  test('the program lists its commands and exit statuses', async () => {
    const { status, out } = await call('--help');
    expect(status).toBe(0);
    for (const name of ['check', 'run', 'compare', 'weather']) {
      expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
    }
    expect(out).toContain(
      "0 done, 1 usage error, 2 wrong input, 3 a check of the program's own failed",
    );
  });

  test('help <command> is the same as <command> --help', async () => {
    expect((await call('help', 'run')).out).toBe((await call('run', '--help')).out);
  });

  test('--version prints the version', async () => {
    expect(await call('--version')).toEqual({ status: 0, out: '1.2.3\n', err: '' });
  });
});

describe('a usage error ends with 1 and says what is wrong', () => {
  test.each([
    [['chek', 'a.yaml'], "error: unknown command 'chek'\n(Did you mean check?)\n"],
    [['weather', 'mak'], "error: unknown command 'mak'\n(Did you mean make?)\n"],
    [['run'], "error: missing required argument 'scenario'\n"],
    [['run', 'a.yaml', '--jsn'], "error: unknown option '--jsn'\n(Did you mean --json?)\n"],
    [['run', 'a.yaml', '--plan'], "error: option '--plan <name>' argument missing\n"],
    [['run', 'a.yaml', 'b.yaml'], 'error: too many arguments'],
    [
      ['run', 'a.yaml', '--set', 'heating/setpoint=19'],
      "error: option '--set <pointer=value>' argument 'heating/setpoint=19' is invalid. Give a place and a value, such as /heating/setpoint=19.\n",
    ],
    [['run', 'a.yaml', '--set', '/heating/setpoint'], 'Give a place and a value'],
    [
      ['compare', 'a.yaml', '--plans', 'a,,b'],
      "error: option '--plans <a,b>' argument 'a,,b' is invalid. Give different names with commas between, such as a,b.\n",
    ],
    [['compare', 'a.yaml', '--plans', 'a,a'], 'Give different names'],
    [['weather', 'make', 'r.yaml', '--seed', '-1'], 'Give a whole number of 0 or more.\n'],
    [['weather', 'make', 'r.yaml', '--seed', '1.5'], 'Give a whole number of 0 or more.\n'],
    [['weather', 'import', 'a', '--latitude', '91'], 'Give a number from -90 to 90.\n'],
    [['weather', 'import', 'a', '--latitude', ''], 'Give a number from -90 to 90.\n'],
  ])('%j', async (args, words) => {
    const { status, out, err } = await call(...args);
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain(words);
  });

  test('no command at all shows the help on standard error', async () => {
    const { status, out, err } = await call();
    expect({ status, out }).toEqual({ status: 1, out: '' });
    expect(err).toContain('Usage: roombalance');
  });
});

test('a file that is not there ends with 2', async () => {
  expect(await call('check', 'gone.yaml')).toEqual({
    status: 2,
    out: '',
    err: 'gone.yaml: expected a file to read, got nothing of that name\n',
  });
});

test('a fault of ours ends with 3 and keeps its trace', async () => {
  const { io, said } = fakeIo();
  const broken = vi.fn(() => Promise.reject(new TypeError('x is not a function')));
  expect(await main(['check', 'a.yaml'], { ...io, readText: broken })).toBe(3);
  expect(said.err).toMatch(/^This is a fault of roombalance, not of your files\./);
  expect(said.err).toContain('TypeError: x is not a function\n    at ');
});
