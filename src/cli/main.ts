import { Command, CommanderError } from 'commander';
import { checkCommand } from './commands/check.ts';
import { compareCommand } from './commands/compare.ts';
import { completeCommand } from './commands/complete.ts';
import { completionCommand } from './commands/completion.ts';
import { findCommand } from './commands/find.ts';
import { fitCommand } from './commands/fit.ts';
import { logCommand } from './commands/log.ts';
import { reportCommand } from './commands/report.ts';
import { runCommand } from './commands/run.ts';
import { serveCommand } from './commands/serve.ts';
import { startCommand } from './commands/start.ts';
import { sweepCommand } from './commands/sweep.ts';
import { weatherCommand } from './commands/weather.ts';
import type { Io } from './io.ts';
import { speakVisibly, withWordsOnOneLine } from './speak-visibly.ts';

/**
 * Run the command line.
 *
 * @param args  the words after the program's name
 * @returns exit status: 0 done, 1 usage error, 2 wrong input, 3 a check of our own failed
 */
export async function main(args: readonly string[], world: Io): Promise<number> {
  const io = speakVisibly(world);
  const program = programOf(io);
  speakThrough(io, program, args);
  try {
    await program.parseAsync([...args], { from: 'user' });
    return 0;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode; // it has already said why
    const { explainError } = await import('./explain-error.ts');
    return explainError(error, io);
  }
}

/** All commands, as they are before they have words to go by. */
export function programOf(io: Io): Command {
  return new Command('roombalance')
    .description(ABOUT)
    .version(io.version, '-V, --version', 'print the version')
    .addCommand(startCommand(io))
    .addCommand(checkCommand(io))
    .addCommand(runCommand(io))
    .addCommand(compareCommand(io))
    .addCommand(reportCommand(io))
    .addCommand(serveCommand(io))
    .addCommand(fitCommand(io))
    .addCommand(sweepCommand(io))
    .addCommand(findCommand(io))
    .addCommand(weatherCommand(io))
    .addCommand(logCommand(io))
    .addCommand(completionCommand(io))
    .addCommand(completeCommand(io), { hidden: true })
    .addHelpText('after', EXAMPLES);
}

/** Every command, however deep, throws instead of exiting and speaks through io. */
function speakThrough(io: Io, command: Command, args: readonly string[]): void {
  command
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.out(text),
      writeErr: (text) => io.err(text),
      outputError: (text, write) => write(withWordsOnOneLine(text, args)),
    })
    .helpOption('-h, --help', 'show this help');
  if (command.commands.length > 0) command.helpCommand('help [command]', 'show help of a command');
  for (const each of command.commands) speakThrough(io, each, args);
}

const ABOUT = `Simulates the rooms of one home hour by hour (heat, humidity and air together)
and says what a setpoint, habit or device costs and does.`;

const EXAMPLES = `
Examples:
  $ roombalance start
  $ roombalance compare scenarios/terrace.yaml
  $ roombalance report scenarios/terrace.yaml --open
  $ roombalance run --help

Exit status: 0 done, 1 usage error, 2 wrong input, 3 a check of the program's own failed.`;
