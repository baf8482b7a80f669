import { visibleProse } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { keepApart } from '../keep-apart.ts';
import { readOutdoors } from '../load/read-outdoors.ts';
import type { BesideFile } from '../weather-options.ts';

/** What may be said beside the file's name. */
export interface ImportOptions extends BesideFile {
  readonly output?: string;
}

/** Write an outdoor file as roombalance CSV. */
export async function importFile(
  io: Io,
  path: string,
  { output, ...beside }: ImportOptions,
): Promise<void> {
  const { writeOwnCsv } = await import('../../weather/write-own-csv.ts');
  await keepApart(io, [{ option: '-o, --output <file.csv>', path: output }], [path, beside.map]);
  if (output !== undefined) await io.requireWritable(output);
  const weather = await readOutdoors(io, path, beside);
  const csv = writeOwnCsv(weather);
  if (output === undefined) io.out(csv);
  else await io.writeWhole(output, csv);
  for (const { text } of weather.notes) io.err(`note: ${visibleProse(text)}\n`);
}
