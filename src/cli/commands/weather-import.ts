import { Command } from 'commander';
import type { ImportOptions } from '../actions/weather-import.ts';
import type { Io } from '../io.ts';
import { addWeatherOptions } from '../weather-options.ts';

/** `weather import <file>`: convert an outdoor file to the roombalance CSV. */
export function weatherImportCommand(io: Io): Command {
  const command = new Command('import')
    .summary('convert an outdoor file to the roombalance CSV')
    .description(
      'Read an outdoor file (TMY3, PVGIS typical year, ISD-Lite, or any CSV with a column map), ' +
        'check it, fill short gaps, and write it as the roombalance CSV that scenarios use.',
    )
    .argument('<file>', 'outdoor file')
    .option('-o, --output <file.csv>', 'write here instead of to standard output');
  return addWeatherOptions(command)
    .addHelpText(
      'after',
      '\nExamples:\n' +
        '  $ roombalance weather import station.csv --map station.yaml -o weather/station.csv\n' +
        '  $ roombalance weather import 037720-2023 --latitude 51.5 --longitude -0.5 --elevation 25 -o 2023.csv',
    )
    .action(async (path: string, options: ImportOptions) => {
      const { importFile } = await import('../actions/weather-import.ts');
      await importFile(io, path, options);
    });
}
