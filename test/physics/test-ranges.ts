import { expect, test } from 'vitest';

/** A documented range: what refuses, its ends, its unit, and a call with the value in question. */
export type Range = readonly [
  what: string,
  ends: readonly [number, number],
  unit: string,
  call: (value: number) => unknown,
];

/** Both ends are taken. What lies beyond either, or is no number, is refused in words that tell all. */
export function testRanges(ranges: readonly Range[]): void {
  test.each(ranges)('%s', (what, [low, high], unit, call) => {
    const refused = (value: number): void => {
      const words = `${what} must be between ${low} and ${high} ${unit}, got ${value} ${unit}`;
      const refusal = refusalOf(call, value);
      expect(refusal).toBeInstanceOf(RangeError);
      expect((refusal as RangeError).message).toBe(words.replaceAll(/ (?=,|$)/g, ''));
    };
    const justBeyond = (end: number): number => 1e-9 * (Math.abs(end) || 1);
    for (const end of [low, high]) {
      if (Number.isFinite(end)) expect(() => call(end)).not.toThrow(`${what} must be between`);
    }
    refused(Number.NaN);
    refused(low - justBeyond(low));
    if (Number.isFinite(high)) refused(high + justBeyond(high));
  });
}

function refusalOf(call: (value: number) => unknown, value: number): unknown {
  try {
    return call(value);
  } catch (refusal) {
    return refusal;
  }
}
