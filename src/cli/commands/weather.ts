import { Command } from 'commander';
import type { Io } from '../io.ts';
import { weatherDescribeCommand } from './weather-describe.ts';
import { weatherImportCommand } from './weather-import.ts';
import { weatherMakeCommand } from './weather-make.ts';

/** `weather <describe|import|make>`: everything about outdoor series. */
export function weatherCommand(io: Io): Command {
  return new Command('weather')
    .summary('look at, convert or invent outdoor series')
    .description('Look at, convert or invent an outdoor series.')
    .addCommand(weatherDescribeCommand(io))
    .addCommand(weatherImportCommand(io))
    .addCommand(weatherMakeCommand(io))
    .addHelpText(
      'after',
      '\nExample:\n  $ roombalance weather describe weather/saltmere-typical.csv',
    );
}
