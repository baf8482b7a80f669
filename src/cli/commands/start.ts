import { Command, Option } from 'commander';
import type { StartOptions } from '../actions/start.ts';
import type { Io } from '../io.ts';
import { addServiceOptions } from '../options.ts';

/** `start [file]`: a first scenario from a few questions, and its first answer. */
export function startCommand(io: Io): Command {
  const command = new Command('start')
    .summary('answer a few questions, get a scenario of your home and its first answer')
    .description(
      'Ask some 25 questions about your home, most answered by pressing Enter; write a scenario with ' +
        'plans that fit what bothers you, and weather beside it; compare the plans, and say which ' +
        'answers would narrow the result most. Breaking off keeps what was answered.',
    )
    .argument('[file]', 'scenario file to write', 'home.yaml')
    .option('-y, --yes', 'take the usual answer wherever nobody gave one')
    .option('--answers <file.yaml>', 'answers by the names of the questions; others are as usual')
    .addOption(
      new Option('--add <what>', 'add one thing to a scenario that is there').choices([
        ...['room', 'device', 'rule', 'plan'],
      ]),
    );
  return addServiceOptions(command)
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance start\n' +
        '  $ roombalance start flat.yaml --yes\n' +
        '  $ roombalance start flat.yaml --add device',
    )
    .action(async (path: string, options: StartOptions) => {
      const { start } = await import('../actions/start.ts');
      await start(io, path, options);
    });
}
