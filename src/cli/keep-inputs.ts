import { resolve } from 'node:path';
import { UsageError } from './usage-error.ts';

/**
 * Refuse to write over a file that the same call reads.
 *
 * @param option   of the file to be written, as `--help` shows it
 * @param output   where to write; undefined where nothing is written
 * @param inputs   what is read
 * @throws UsageError
 */
export function keepInputs(
  option: string,
  output: string | undefined,
  inputs: readonly (string | undefined)[],
): void {
  const same = inputs.find(
    (input) => input !== undefined && output !== undefined && resolve(input) === resolve(output),
  );
  if (same === undefined) return;
  throw new UsageError(
    `error: option '${option}' argument '${output}' is invalid. It is read by the same call; name another file.`,
  );
}
