import type { Command } from 'commander';
import { main, programOf } from '../../src/cli/main.ts';
import { fakeIo } from '../cli/fake-io.ts';

/** A command that help shows, and the words that call it. */
export interface Shown {
  readonly words: readonly string[];
  readonly command: Command;
}

/** Every command that help shows, in its order, each followed by those below it. */
export function shownCommands(): Shown[] {
  const below = (command: Command, words: readonly string[]): Shown[] =>
    command
      .createHelp()
      .visibleCommands(command)
      .filter((each) => each.name() !== 'help')
      .flatMap((each) => {
        const own = [...words, each.name()];
        return [{ words: own, command: each }, ...below(each, own)];
      });
  return below(programOf(fakeIo().io), []);
}

/** docs/commands.md: the help of the program and of each of its commands. */
export async function commandsPage(): Promise<string> {
  const parts = [
    await part([]),
    ...(await Promise.all(shownCommands().map(({ words }) => part(words)))),
  ];
  return [HEAD, ...parts].join('\n');
}

async function part(words: readonly string[]): Promise<string> {
  const { io, said } = fakeIo();
  await main([...words, '--help'], io);
  return `## ${['roombalance', ...words].join(' ')}\n\n\`\`\`text\n${said.out.trimEnd()}\n\`\`\`\n`;
}

const HEAD = `# Commands

What \`--help\` of each command prints; a test keeps it so. Tab completes commands, options, and names of plans and rooms once a shell has read what \`roombalance completion\` prints. \`man roombalance\` has the same where npm installed the program globally.
`;
