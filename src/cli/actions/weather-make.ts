import type { Io } from '../io.ts';
import { keepApart } from '../keep-apart.ts';
import { MOST_SCENARIO } from '../load/load-scenario.ts';

/** What may be said beside the recipe's name. */
export interface MakeOptions {
  readonly output?: string;
  readonly seed?: number;
}

/** Write a year made from monthly normals. */
export async function make(io: Io, path: string, { output, seed }: MakeOptions): Promise<void> {
  const { readRecipe } = await import('../load/read-recipe.ts');
  const { makeWeather } = await import('../../weather/make/make-weather.ts');
  const { writeOwnCsv } = await import('../../weather/write-own-csv.ts');
  await keepApart(io, [{ option: '-o, --output <file.csv>', path: output }], [path]);
  if (output !== undefined) await io.requireWritable(output);
  const recipe = readRecipe(await io.readText(path, MOST_SCENARIO), path);
  const csv = writeOwnCsv(makeWeather(recipe, seed));
  if (output === undefined) io.out(csv);
  else await io.writeWhole(output, csv);
}
