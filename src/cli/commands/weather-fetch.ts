import { Command, Option } from 'commander';
import type { FetchOptions } from '../actions/weather-fetch.ts';
import type { Io } from '../io.ts';
import { addServiceOptions, wholeNumber } from '../options.ts';

/** `weather fetch`: weather of a place from public services. */
export function weatherFetchCommand(io: Io): Command {
  return addServiceOptions(
    new Command('fetch')
      .summary('get the weather of a place from public services')
      .description(
        'Get a typical year (PVGIS) or the hours of one year (Open-Meteo archive) of a place, and ' +
          'write it as the roombalance CSV, with source, licence and attribution in its head. ' +
          'Asks before it uses the network; the place goes out rounded to a hundredth of a degree.',
      )
      .requiredOption('--at <lat,lon>', 'the place in degrees, north and east positive')
      .addOption(
        new Option('--year <year>', 'the hours of this year, 1940 or later')
          .argParser(wholeNumber)
          .conflicts('typical'),
      )
      .option('--typical', 'a typical year; so it is where no year is given')
      .addOption(
        new Option(
          '--sun <origin>',
          'whose sunshine a year has: of the archive, or from satellites',
        )
          .choices(['archive', 'satellite'])
          .default('archive'),
      )
      .option('-o, --output <file.csv>', 'write here instead of to standard output')
      .option('--title <text>', 'name of the place')
      .option('-y, --yes', 'use the network without asking'),
  )
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance weather fetch --at 54.2,-1.9 --typical -o weather/home.csv\n' +
        '  $ roombalance weather fetch --at 54.2,-1.9 --year 2023 --sun satellite -o 2023.csv --yes',
    )
    .action(async (options: FetchOptions) => {
      const { fetchFile } = await import('../actions/weather-fetch.ts');
      await fetchFile(io, options);
    });
}
