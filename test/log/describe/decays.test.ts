import { describe, expect, test } from 'vitest';
import { decaysIn } from '../../../src/log/describe/decays.ts';

const STEP = 300; // s
const RULE = { least: 200, until: 0.2, lasts: 1800 };
const found = (excess: readonly number[]) =>
  decaysIn(Float64Array.from(excess), { start: 0, step: STEP, count: excess.length }, RULE);
/** A well-mixed room without a source: C = C0 exp(-n t), n as given for each step [1/h]. */
function falling(rates: readonly number[]): number[] {
  const values = [900];
  for (const rate of rates) values.push(values.at(-1)! * Math.exp((-rate * STEP) / 3600));
  return values;
}
const times = (count: number, rate: number): number[] => Array.from({ length: count }, () => rate);

describe('a decay', () => {
  test('has the rate of the room', () => {
    const [decay, ...others] = found(falling(times(24, 0.6)));
    expect(others).toEqual([]);
    expect(decay!.rate).toBeCloseTo(0.6, 9);
  });

  test('may have halves that are not quite alike, but not a window opened half way', () => {
    expect(found(falling([...times(9, 0.5), ...times(9, 0.7)]))).toHaveLength(1);
    // The straight line still fits; twice the rate in the second half is another room.
    expect(found(falling([...times(9, 0.5), ...times(9, 1)]))).toEqual([]);
  });

  test('goes on over a reading that rises by a hundredth, and ends with one that rises by a tenth', () => {
    const straight = falling(times(24, 0.6));
    const [before, again] = [straight.slice(0, 12), straight.slice(12)];
    const rising = (share: number) => [...before, before.at(-1)! * share, ...again];
    expect(found(rising(1.01))).toHaveLength(1);
    expect(found(rising(1.1)).length).toBeGreaterThan(1);
  });
});
