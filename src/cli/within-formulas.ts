import { refused } from './file-trouble.ts';

/**
 * Run a simulation; where it leaves the range of a formula, say that of the home, not where in the
 * code. Such a home is written well but is none that the formulas were ever checked for.
 *
 * @param file  the scenario, as the person named it
 * @throws InputProblems in place of the RangeError of `requireWithin`
 */
export function withinFormulas<Result>(file: string, simulate: () => Result): Result {
  try {
    return simulate();
  } catch (error) {
    if (!(error instanceof RangeError) || !OUT_OF_RANGE.test(error.message)) throw error;
    const [, what = '', range = '', value = ''] = OUT_OF_RANGE.exec(error.message) ?? [];
    const got = `${what} of ${value.replace(DIGITS, '$1')}, outside ${range.replace(' and ', ' to ')}`;
    throw refused(file, 'a home that stays within the range of every formula', got, HINT);
  }
}

/** As `requireWithin` words it: name of the function, quantity, range, value. */
const OUT_OF_RANGE = /^(?:\w+: )?(.*) must be between (.*), got (.*)$/;
const DIGITS = /(\.\d\d)\d+/; // more than anybody reads
const HINT =
  'a room grows far too hot, cold or wet: look for large panes, heaters, heat pumps or water in a ' +
  'small room, and for a room that loses nothing';
