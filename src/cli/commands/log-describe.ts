import { Command } from 'commander';
import type { LogDescribeOptions } from '../actions/log-describe.ts';
import type { Io } from '../io.ts';
import { addLogOptions, jsonOption } from '../options.ts';

/** `log describe <files...>`: how logged readings are understood, and what they tell alone. */
export function logDescribeCommand(io: Io): Command {
  const command = new Command('describe')
    .summary('say how logged readings are understood')
    .description(
      'Say how logged readings are understood: layout, times, units, gaps, what speaks against ' +
        'them, and air change where decays show it.',
    )
    .argument('<files...>', 'CSV files of sensors, loggers or meters');
  return addLogOptions(command)
    .addOption(jsonOption())
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance log describe bedroom.csv --zone Europe/London\n' +
        '  $ roombalance log describe hall.csv bath.csv --dates day-first',
    )
    .action(async (paths: readonly string[], options: LogDescribeOptions) => {
      const { describeLogFiles } = await import('../actions/log-describe.ts');
      await describeLogFiles(io, paths, options);
    });
}
