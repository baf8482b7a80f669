import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { expectShown } from '../reference/shown.ts';
import { fakeIo } from './fake-io.ts';

/** The page's example: the words of the call, and what it shows of the output. */
const EXAMPLE = /<!-- output of: (.*) -->\n\n```text\n([\s\S]*?)```/;

test('the example of README.md is what the program prints', async () => {
  const page = readFileSync('README.md', 'utf8');
  const [, words = '', shown = ''] = EXAMPLE.exec(page) ?? [];
  const { io, said } = fakeIo();
  const readText = async (path: string) => readFileSync(path, 'utf8');
  expect(await main(words.split(' '), { ...io, readText })).toBe(0);
  const now = `$ roombalance ${words}\n${said.out}`;
  expectShown('README.md', shown, now);
}, 60_000);

describe('pages', () => {
  const pages = [
    'README.md',
    'DEVELOPERS.md',
    'docs/architecture.md',
    'docs/commands.md',
    'docs/gallery.md',
    'docs/quantities.md',
    'docs/questions.md',
    'docs/scale.md',
    'docs/start.md',
  ];

  test.each(pages)('%s links only to what is there', (page) => {
    const folder = page.includes('/') ? 'docs/' : './';
    const links = [...readFileSync(page, 'utf8').matchAll(/\]\(([^)#:]+)\)/g)].map((m) => m[1]!);
    // The table of validation is written by the same run that asks for it.
    for (const link of links.filter((name) => name !== 'docs/validation.md'))
      expect(() => readFileSync(folder + link), link).not.toThrow();
  });

  test('README.md names every command', async () => {
    const page = readFileSync('README.md', 'utf8');
    const { io, said } = fakeIo();
    await main(['--help'], io);
    await main(['weather', '--help'], io);
    const commands = [...said.out.matchAll(/^ {2}(\w+) .*<[\w.]+>/gm)].map((m) => m[1]!);
    expect(commands).toHaveLength(11);
    for (const name of [...commands, 'fetch', 'start'])
      expect(page).toMatch(new RegExp(`roombalance (weather )?${name} `));
  });
});
