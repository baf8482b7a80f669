import { visibleValue } from '../units/visible-text.ts';
import type { Io } from './io.ts';
import { UsageError } from './usage-error.ts';

/** A file that a call writes. */
export interface Output {
  /** The option as `--help` shows it. */
  readonly option: string;
  /** File to write; undefined where nothing is written. */
  readonly path: string | undefined;
}

/**
 * Refuse to write a file over one that the same call reads, or into one that it also writes.
 *
 * Paths are compared by where they lead, through links of any kind.
 *
 * @param inputs  what is read
 * @param stdout  whether figures go to standard output as well
 * @throws UsageError
 */
export async function keepApart(
  io: Pick<Io, 'sharedName' | 'outName'>,
  outputs: readonly Output[],
  inputs: readonly (string | undefined)[],
  stdout = false,
): Promise<void> {
  const taken = new Map<string, string>();
  const out = stdout ? await io.outName() : null;
  if (out !== null) taken.set(out, WRITTEN);
  for (const path of inputs) {
    if (path !== undefined) taken.set(await io.sharedName(path), READ);
  }
  for (const { option, path } of outputs) {
    if (path === undefined) continue;
    const name = await io.sharedName(path);
    const why = taken.get(name);
    if (why !== undefined) {
      const shown = visibleValue(path);
      throw new UsageError(`error: option '${option}' argument '${shown}' is invalid. ${why}`);
    }
    taken.set(name, WRITTEN);
  }
}

const READ = 'It is read by the same call; name another file.';
const WRITTEN = 'Something else of the same call goes there; name another file.';
