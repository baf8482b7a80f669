import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { main, programOf } from '../../../src/cli/main.ts';
import { BIN, requireBuild } from '../built-program.ts';
import { fakeIo } from '../fake-io.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const FLAT = readFileSync('scenarios/flat.yaml', 'utf8');

/** What is offered in place of the last word, without what it is. */
async function offered(...words: string[]): Promise<string[]> {
  const { io, said } = fakeIo({ 'flat.yaml': FLAT, 'broken.yaml': 'plans: [' });
  expect(await main(['complete', '--', ...words], io)).toBe(0);
  expect(said.err).toBe('');
  return said.out
    .split('\n')
    .slice(0, -1)
    .map((line) => line.split('\t')[0]!);
}

describe('what may stand in place of the last word', () => {
  const commands = programOf(fakeIo().io).commands.map((command) => command.name());

  test('a command, each but the one that shells ask, and help', async () => {
    const shown = commands.filter((name) => name !== 'complete');
    expect(await offered('')).toEqual([...shown, 'help']);
    expect(await offered('re')).toEqual(['report']);
    expect(await offered('weather', 'f')).toEqual(['fetch']);
    expect(await offered('help', 'weather', 'm')).toEqual(['make']);
  });

  test('every option of every command, and none that is hidden', async () => {
    for (const command of programOf(fakeIo().io).commands) {
      if (command.name() === 'complete') continue;
      const flags = command.options.filter(({ hidden }) => !hidden).map(({ long }) => long);
      expect(await offered(command.name(), '--')).toEqual([...flags, '--help']);
    }
    expect(await offered('run', 'flat.yaml', '--lo')).toEqual([]); // a former name
    expect(await offered('weather', 'fetch', '--s')).toEqual(['--sun']);
  });

  test('choices of arguments and of options', async () => {
    expect(await offered('find', '')).toEqual([
      ...['setpoint', 'heat-or-dry', 'dehumidifier', 'airing', 'outdoor-air'],
    ]);
    expect(await offered('start', '--add', 'r')).toEqual(['room', 'rule']);
    expect(await offered('completion', '')).toEqual(['bash', 'zsh', 'fish']);
  });

  test('plans and rooms of the scenario in the line', async () => {
    expect(await offered('run', 'flat.yaml', '--plan', 'air')).toEqual([
      ...['airing', 'airing-and-warmer', 'air-conditioner'],
    ]);
    expect(await offered('compare', 'flat.yaml', '--plans', 'as-lived,door')).toEqual([
      'as-lived,door-open',
    ]);
    expect(await offered('run', 'flat.yaml', '--plot', '"b')).toEqual(['bedroom', 'bathroom']);
    expect(await offered('find', 'setpoint', 'flat.yaml', '--room', 'l')).toEqual(['living']);
  });

  test('nothing, so that the shell offers files, for a file, a number, a scenario that is none', async () => {
    for (const words of [
      ...[
        ['check', ''],
        ['weather', 'describe', ''],
        ['run', 'flat.yaml', '--trace', ''],
      ],
      ...[
        ['sweep', 'flat.yaml', '--plot', ''],
        ['run', 'flat.yaml', '--seed', ''],
      ],
      ...[
        ['run', 'broken.yaml', '--plan', ''],
        ['run', 'gone.yaml', '--plan', ''],
      ],
      ...[
        ['run', '--plan', ''],
        ['run', 'flat.yaml', ''],
        ['check', '--', '--'],
      ],
    ])
      expect(await offered(...words), words.join(' ')).toEqual([]);
  });
});

describe('in a shell', () => {
  const folder = temporaryFolder();
  const program = join(folder, 'roombalance');
  beforeAll(async () => {
    requireBuild();
    writeFileSync(program, `#!/bin/sh\nexec "${process.execPath}" "${BIN}" "$@"\n`);
    chmodSync(program, 0o755);
  });
  const env = () => ({ ...process.env, PATH: `${folder}:${process.env['PATH']}` });

  /** What bash would put in place of the last of some words, after the script was sourced. */
  const inBash = (...words: string[]): string[] => {
    const line = `source <("${program}" completion bash)
      COMP_WORDS=(roombalance "$@"); COMP_CWORD=$#
      _roombalance roombalance "\${COMP_WORDS[COMP_CWORD]}"
      printf '%s\\n' "\${COMPREPLY[@]}"; complete -p roombalance`;
    const args = ['--norc', '-euc', line, 'bash', ...words];
    return execFileSync('bash', args, { env: env(), encoding: 'utf8' }).trim().split('\n');
  };

  test('bash completes a name with a space in it, as it was begun', () => {
    const terrace = resolve('scenarios/terrace.yaml');
    const known = 'complete -o bashdefault -o default -F _roombalance roombalance';
    expect(inBash('find', 'airing', terrace, '--room', 'm')).toEqual(['main\\ bedroom', known]);
    expect(inBash('find', 'airing', terrace, '--room', '"m')).toEqual(['main bedroom', known]);
    expect(inBash('repo')).toEqual(['report', known]);
  });

  test.each([
    ['bash', ['-n']],
    ['zsh', ['-n']],
    ['fish', ['--no-execute']],
  ])('%s can read its script, where there is one', async (shell, args) => {
    const { io, said } = fakeIo();
    expect(await main(['completion', shell], io)).toBe(0);
    const file = join(folder, shell);
    writeFileSync(file, said.out);
    const { error, status, stderr } = spawnSync(shell, [...args, file], { encoding: 'utf8' });
    const missing = (error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT';
    if (!missing) expect([status, stderr]).toEqual([0, '']);
    expect(said.out).toContain(' complete -- ');
  });

  test('another shell is refused, with those there are', async () => {
    const { io, said } = fakeIo();
    expect(await main(['completion', 'tcsh'], io)).toBe(1);
    expect(said.err).toContain("'tcsh' is invalid");
    expect(said.err).toContain('Allowed choices are bash, zsh, fish.');
  });
});
