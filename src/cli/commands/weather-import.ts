import { Command } from 'commander';
import type { Io } from '../io.ts';
import { keepInputs } from '../keep-inputs.ts';
import { addWeatherOptions, type BesideFile, readOutdoors } from '../weather-options.ts';

interface Options extends BesideFile {
  readonly output?: string;
}

/** `weather import <file>`: convert an outdoor file to the tidy CSV. */
export function weatherImportCommand(io: Io): Command {
  const command = new Command('import')
    .summary('convert an outdoor file to the tidy CSV')
    .description(
      'Read an outdoor file (TMY3, PVGIS typical year, ISD-Lite, or any CSV with a column map), ' +
        'check it, fill short gaps, and write it as the tidy CSV that scenarios use.',
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
    .action((path: string, options: Options) => importFile(io, path, options));
}

async function importFile(io: Io, path: string, { output, ...beside }: Options): Promise<void> {
  const { writeOwnCsv: writeTidyCsv } = await import('../../weather/write-own-csv.ts');
  keepInputs('-o, --output <file.csv>', output, [path, beside.map]);
  const weather = await readOutdoors(io, path, beside);
  const csv = writeTidyCsv(weather);
  if (output === undefined) io.out(csv);
  else await io.writeWhole(output, csv);
  for (const { text } of weather.notes) io.err(`note: ${text}\n`);
}
