import { OutOfRange } from '../../units/require-within.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';

/**
 * What is built from checked data; where that leaves the range of a formula, null and a finding.
 *
 * @param path      of what it is built from
 * @param findings  where the finding goes
 */
export function attempt<T>(build: () => T, path: Path, findings: Finding[]): T | null {
  try {
    return build();
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    const { quantity, value, range, unit } = error;
    const [low, high] = range.map((end) => Number(end.toPrecision(4)));
    const article = /^[aeio]/i.test(quantity) ? 'an' : 'a';
    const expected = `${article} ${quantity} of ${low} to ${high} ${unit}`.trimEnd();
    const got = `${Number(value.toPrecision(6))} ${unit}`.trimEnd();
    findings.push({ path, expected, got });
    return null;
  }
}
