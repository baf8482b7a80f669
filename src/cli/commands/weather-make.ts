import { Command } from 'commander';
import type { Io } from '../io.ts';
import { keepInputs } from '../keep-inputs.ts';
import { MOST_SCENARIO } from '../load-scenario.ts';
import { wholeNumber } from '../options.ts';

interface Options {
  readonly output?: string;
  readonly seed?: number;
}

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
    .action((path: string, options: Options) => make(io, path, options));
}

async function make(io: Io, path: string, { output, seed }: Options): Promise<void> {
  const { readRecipe } = await import('../read-recipe.ts');
  const { makeWeather } = await import('../../weather/make/make-weather.ts');
  const { writeOwnCsv: writeTidyCsv } = await import('../../weather/write-own-csv.ts');
  keepInputs('-o, --output <file.csv>', output, [path]);
  const recipe = readRecipe(await io.readText(path, MOST_SCENARIO), path);
  const csv = writeTidyCsv(makeWeather(recipe, seed));
  if (output === undefined) io.out(csv);
  else await io.writeWhole(output, csv);
}
