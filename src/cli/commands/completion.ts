import { Argument, Command } from 'commander';
import type { Shell } from '../actions/completion.ts';
import type { Io } from '../io.ts';

/** `completion <shell>`: what makes a shell complete the program's words. */
export function completionCommand(io: Io): Command {
  return new Command('completion')
    .summary('print what makes a shell complete commands, options and names')
    .description(
      'Print the lines with which a shell completes commands, options, their choices, and the names ' +
        'of plans and rooms of the scenario that stands in the line.',
    )
    .addArgument(new Argument('<shell>', 'your shell').choices(SHELLS))
    .addHelpText(
      'after',
      '\nExamples, each for the file with which the shell starts:\n' +
        '  source <(roombalance completion bash)     # ~/.bashrc\n' +
        '  source <(roombalance completion zsh)      # ~/.zshrc, after compinit\n' +
        '  roombalance completion fish | source      # ~/.config/fish/config.fish',
    )
    .action(async (shell: Shell) => {
      const { completion } = await import('../actions/completion.ts');
      completion(io, shell);
    });
}

const SHELLS: readonly Shell[] = ['bash', 'zsh', 'fish'];
