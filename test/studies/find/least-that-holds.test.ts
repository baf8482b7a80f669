import { describe, expect, test } from 'vitest';
import { leastThatHolds } from '../../../src/studies/find/least-that-holds.ts';

const search = (from: number, ends = { low: 0, high: 10, tolerance: 0.1 }) =>
  leastThatHolds({
    ...ends,
    at: async (value) => value,
    holds: (value) => value >= from,
  });

describe('the least value that holds', () => {
  test.each([0.05, 1, 3.3, Math.PI, 9.99, 10])('from %s on', async (from) => {
    const { found, all } = await search(from);
    expect(found!.value).toBeGreaterThanOrEqual(from);
    expect(found!.value - from).toBeLessThanOrEqual(0.1);
    expect(found!.holds).toBe(true);
    // Two ends, and as many halvings as make 10 no longer than 0.1.
    expect(all.length).toBeLessThanOrEqual(2 + 7);
    expect(all.map(({ value }) => value)).toEqual(
      all.map(({ value }) => value).sort((a, b) => a - b),
    );
    const nextBelow = all.filter(({ holds }) => !holds).at(-1)!;
    expect(found!.value - nextBelow.value).toBeLessThanOrEqual(0.1 * (1 + 1e-9));
  });

  test('is the low end where that does it', async () => {
    const { found, all } = await search(-1);
    expect(found?.value).toBe(0);
    expect(all).toHaveLength(2);
  });

  test('is none where the high end does not', async () => {
    const { found, all } = await search(11);
    expect(found).toBeNull();
    expect(all.map(({ value }) => value)).toEqual([0, 10]);
  });

  test('what fails ends it', async () => {
    const at = async (value: number) => {
      if (value === 5) throw new Error('no home');
      return value;
    };
    const holds = (value: number) => value > 3;
    await expect(leastThatHolds({ low: 0, high: 10, tolerance: 1, at, holds })).rejects.toThrow(
      'no home',
    );
  });

  test.each([
    { low: 1, high: 1, tolerance: 1 },
    { low: 0, high: 1, tolerance: 0 },
    { low: Number.NaN, high: 1, tolerance: 1 },
  ])('%j is refused', async (ends) => {
    await expect(search(0, ends)).rejects.toThrow(
      'leastThatHolds: needs low < high and a tolerance above 0',
    );
  });
});
