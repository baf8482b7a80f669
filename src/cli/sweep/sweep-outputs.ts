import { extname } from 'node:path';
import { visibleValue } from '../../units/visible-text.ts';
import type { Io } from '../io.ts';
import { keepApart } from '../keep-apart.ts';
import { UsageError } from '../usage-error.ts';

/** Files that a sweep writes. */
export interface SweepOutputs {
  readonly output: string;
  /** Picture of the frontier. */
  readonly plot?: string | undefined;
}

/** What kind of file a name asks for. @throws UsageError for an ending that is neither */
export function formatOf(output: string): 'csv' | 'ndjson' {
  const end = extname(output).toLowerCase();
  if (end === '.csv') return 'csv';
  if (end === '.ndjson') return 'ndjson';
  throw new UsageError(
    `error: option '-o, --output <file>' argument '${visibleValue(output)}' is invalid. End it in .csv or .ndjson.`,
  );
}

/** Refuse outputs that are read, that meet, or that cannot be written. */
export async function refuseOutputs(
  io: Io,
  { output, plot }: SweepOutputs,
  besides: readonly string[],
  read: readonly (string | undefined)[],
): Promise<void> {
  const option = '-o, --output <file>';
  const outputs = [output, ...besides].map((path) => ({ option, path }));
  const picture = { option: '--plot <file.svg>', path: plot };
  await keepApart(io, [...outputs, picture], read, true);
  await io.requireWritable(output);
  if (plot !== undefined) await io.requireWritable(plot);
}
