import { OutOfRange } from '../../units/require-within.ts';
import { refused } from '../files/file-trouble.ts';

/**
 * Run a simulation; where it leaves the range of a formula, say that of the home, not where in the
 * code. Such a home is written well but is none that the formulas were ever checked for.
 *
 * @param file  the scenario, as the person named it
 * @throws InputProblems in place of the OutOfRange of `requireWithin`
 */
export function withinFormulas<Result>(file: string, simulate: () => Result): Result {
  try {
    return simulate();
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { quantity, value, range, unit } = error;
    const withUnit = (number: number | string) => (unit === '' ? `${number}` : `${number} ${unit}`);
    const outside = `outside ${range[0]} to ${withUnit(range[1])}`;
    const got = `${quantity} of ${withUnit(shortened(value))}, ${outside}`;
    throw refused(file, 'a home that stays within the range of every formula', got, HINT);
  }
}

/** No more than two digits behind the point: nobody reads more, and the last are rounding. */
const shortened = (value: number): string =>
  Number.isFinite(value) && Math.abs(value) < 1e15
    ? `${Math.trunc(value * 100) / 100}`
    : `${value}`;

const HINT =
  'a room grows far too hot, cold or wet: look for large panes, heaters, heat pumps or water in a ' +
  'small room, and for a room that loses nothing';
