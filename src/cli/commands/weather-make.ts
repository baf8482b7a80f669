import { Command } from 'commander';
import type { MakeOptions } from '../actions/weather-make.ts';
import type { Io } from '../io.ts';
import { wholeNumber } from '../options.ts';

/** `weather make <recipe>`: invent a year from monthly normals. */
export function weatherMakeCommand(io: Io): Command {
  return new Command('make')
    .summary('invent a year from monthly normals')
    .description(
      'Invent a typical year from monthly normals, hour by hour, and write it as CSV. ' +
        'The same recipe and seed give the same year.',
    )
    .argument('<recipe>', 'monthly normals (YAML)')
    .option('-o, --output <file.csv>', 'write here instead of to standard output')
    .option('--seed <number>', 'another year of the same climate; 1 where not given', wholeNumber)
    .addHelpText(
      'after',
      '\nExample:\n  $ roombalance weather make weather/saltmere-typical.recipe.yaml -o year.csv',
    )
    .action(async (path: string, options: MakeOptions) => {
      const { make } = await import('../actions/weather-make.ts');
      await make(io, path, options);
    });
}
