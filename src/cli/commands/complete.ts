import { Command } from 'commander';
import type { Io } from '../io.ts';

/** `complete -- WORDS`: what may stand in place of the last word; asked by the shell, see `completion`. */
export function completeCommand(io: Io): Command {
  return new Command('complete')
    .description('Print what may stand in place of the last word, a line each.')
    .argument('[words...]', 'the words of the line, without the name of the program')
    .action(async (words: readonly string[], _options: unknown, command: Command) => {
      const { complete } = await import('../actions/complete.ts');
      await complete(io, command.parent!, words);
    });
}
