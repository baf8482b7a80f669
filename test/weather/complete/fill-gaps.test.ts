import { describe, expect, test } from 'vitest';
import { fillGaps, gapsOf } from '../../../src/weather/complete/fill-gaps.ts';

const NO = Number.NaN;
const limits = { straight: 3, longest: 3 };

describe('gapsOf', () => {
  test('finds runs, also at the ends', () => {
    expect(gapsOf(Float64Array.of(NO, 1, NO, NO, 2, NO), false)).toEqual([
      { from: 0, length: 1 },
      { from: 2, length: 2 },
      { from: 5, length: 1 },
    ]);
  });

  test('joins the ends of a series that closes on itself', () => {
    expect(gapsOf(Float64Array.of(NO, 1, NO, 2, NO, NO), true)).toEqual([
      { from: 2, length: 1 },
      { from: 4, length: 3 },
    ]);
  });

  test('a series of nothing is one gap', () => {
    expect(gapsOf(Float64Array.of(NO, NO), true)).toEqual([{ from: 0, length: 2 }]);
  });
});

describe('fillGaps', () => {
  test('bridges short gaps by straight lines and says which', () => {
    const values = Float64Array.of(1, NO, NO, 4, NO, 6);
    expect(fillGaps(values, limits, 24, false)).toEqual({
      filled: [
        { from: 1, length: 2 },
        { from: 4, length: 1 },
      ],
      left: [],
    });
    expect([...values]).toEqual([1, 2, 3, 4, 5, 6]);
  });

  test('holds the neighbour at an open end, and bridges the ends of a closed series', () => {
    const open = Float64Array.of(NO, 2, 3, NO);
    fillGaps(open, limits, 24, false);
    expect([...open]).toEqual([2, 2, 3, 3]);
    const closed = Float64Array.of(NO, 2, 8, NO);
    fillGaps(closed, limits, 24, true);
    expect([...closed]).toEqual([4, 2, 8, 6]);
  });

  test('leaves long gaps as they are and names them', () => {
    const values = Float64Array.of(1, NO, NO, NO, NO, 6);
    expect(fillGaps(values, limits, 24, false)).toEqual({
      filled: [],
      left: [{ from: 1, length: 4 }],
    });
    expect([...values]).toEqual([1, NO, NO, NO, NO, 6]);
  });

  test('borrows from the days around where long gaps may be filled', () => {
    const day = [1, 2, 3, 4, 5, 6];
    const values = Float64Array.from([...day, 1, NO, NO, NO, NO, 6, ...day.map((v) => v + 2)]);
    fillGaps(values, { straight: 3, longest: 5 }, 6, false);
    expect([...values.slice(6, 12)]).toEqual([1, 3, 4, 5, 6, 6]);
  });

  test('borrows only what was there, and not where days are no whole number of steps', () => {
    const alone = Float64Array.from([1, NO, NO, NO, NO, 6]);
    expect(fillGaps(alone, { straight: 3, longest: 5 }, 6, false).left.length).toBe(1);
    const odd = Float64Array.from([1, 2, 3, 4, 5, 6, NO, NO, NO, NO, 7]);
    expect(fillGaps(odd, { straight: 3, longest: 5 }, 5.5, false).left.length).toBe(1);
  });

  test('a series of nothing stays nothing', () => {
    const values = Float64Array.of(NO, NO);
    expect(fillGaps(values, limits, 24, true).left).toEqual([{ from: 0, length: 2 }]);
  });
});
