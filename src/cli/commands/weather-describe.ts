import { Command } from 'commander';
import type { DescribeOptions } from '../actions/weather-describe.ts';
import type { Io } from '../io.ts';
import { jsonOption } from '../options.ts';
import { addWeatherOptions } from '../weather-options.ts';

/** `weather describe <file>`: what an outdoor file holds, in words and figures. */
export function weatherDescribeCommand(io: Io): Command {
  const command = new Command('describe')
    .summary('say what an outdoor file holds')
    .description(
      'Say what an outdoor file holds: extremes, degree-days, months, and what was filled or derived.',
    )
    .argument(
      '<file>',
      'outdoor file: roombalance CSV, TMY3, PVGIS typical year, ISD-Lite, or any by --map',
    )
    .addOption(jsonOption());
  return addWeatherOptions(command)
    .addHelpText(
      'after',
      '\nExample:\n  $ roombalance weather describe weather/saltmere-typical.csv',
    )
    .action(async (path: string, options: DescribeOptions) => {
      const { describe } = await import('../actions/weather-describe.ts');
      await describe(io, path, options);
    });
}
