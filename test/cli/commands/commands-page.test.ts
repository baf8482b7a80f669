import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { commandsPage, shownCommands } from '../../reference/commands-page.ts';
import { manPage } from '../../reference/man-page.ts';

const { version, man } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  version: string;
  man: string;
};

/** That a file is what it is written from; with UPDATE_VALIDATION=1 it is written instead. */
function expectWritten(path: string, now: string): void {
  if (process.env['UPDATE_VALIDATION'] === '1') {
    mkdirSync('man', { recursive: true });
    writeFileSync(path, now);
  }
  const again = 'UPDATE_VALIDATION=1 npx vitest run test/cli/commands/commands-page.test.ts';
  expect(readFileSync(path, 'utf8'), `run "${again}" to write it anew`).toBe(now);
}

test('docs/commands.md has the help of every command', async () => {
  const page = await commandsPage();
  expectWritten('docs/commands.md', page);
  expect(shownCommands().length).toBeGreaterThanOrEqual(17); // counted
  for (const { words } of shownCommands()) {
    expect(page).toContain(
      `## roombalance ${words.join(' ')}\n\n\`\`\`text\nUsage: roombalance ${words.join(' ')} `,
    );
  }
  expect(page).not.toContain('## roombalance complete\n');
});

test('the manual page has every command and option', () => {
  const page = manPage(version);
  expectWritten(man, page);
  for (const { words, command } of shownCommands()) {
    if (command.commands.length > 0) continue;
    expect(page).toContain(`.SS ${words.join(' ')}`);
    for (const { long, hidden } of command.options) {
      if (!hidden) expect(page).toContain(`${long}`.replaceAll('-', '\\-'));
    }
  }
});

test('a formatter takes the manual page without a warning, where there is one', () => {
  const groff = spawnSync('groff', ['-ww', '-man', '-Tutf8', '-z', man], { encoding: 'utf8' });
  const missing = (groff.error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT';
  if (!missing) expect([groff.status, groff.stderr]).toEqual([0, '']);
  expect(readFileSync(man, 'utf8')).not.toMatch(/^\.(?!TH|SH|SS|TP|PP|B|I|RI|nf|fi)/m);
});
