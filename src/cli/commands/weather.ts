import { Command } from 'commander';
import type { Io } from '../io.ts';
import { weatherDescribeCommand } from './weather-describe.ts';
import { weatherFetchCommand } from './weather-fetch.ts';
import { weatherImportCommand } from './weather-import.ts';
import { weatherMakeCommand } from './weather-make.ts';

/** `weather <describe|fetch|import|make>`: everything about outdoor series. */
export function weatherCommand(io: Io): Command {
  return new Command('weather')
    .summary('look at, fetch, convert or invent outdoor series')
    .description('Look at, fetch, convert or invent an outdoor series.')
    .addCommand(weatherDescribeCommand(io))
    .addCommand(weatherFetchCommand(io))
    .addCommand(weatherImportCommand(io))
    .addCommand(weatherMakeCommand(io))
    .addHelpText(
      'after',
      '\nExample:\n  $ roombalance weather describe weather/saltmere-typical.csv',
    );
}
