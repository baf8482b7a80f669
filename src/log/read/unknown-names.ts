import { nearestHint } from '../../units/nearest-name.ts';
import type { Problem } from '../../units/problem.ts';
import type { LogOptions } from './log-options.ts';
import type { LogFile } from './read-log-file.ts';

/** A problem for each reading that a person named and no file has. */
export function unknownNames(
  read: readonly (LogFile | null)[],
  { readings }: LogOptions,
  file: string,
): Problem[] {
  const names = read.flatMap((each) => each?.names ?? []);
  return Object.keys(readings)
    .filter((name) => !names.includes(name))
    .map((name) => ({
      ...{ file, line: 0, column: 0, where: 'columns and names' },
      expected: `"${name}", as the scenario calls it`,
      got: names.slice(0, MOST_SAID).join(', '),
      hint:
        nearestHint(name, names) ||
        'give the file that has it too, or take it out of "log: readings:"',
    }));
}

const MOST_SAID = 12;
