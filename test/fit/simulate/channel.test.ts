import { describe, expect, test } from 'vitest';
import { meansOver } from '../../../src/fit/simulate/channel.ts';

describe('means of stretches', () => {
  const known = Float64Array.of(1, 3, 5, Number.NaN, 9, 11);
  const two = { over: 2, anewAt: 0, known };

  test('are of the hours that are known, of a log and of a run alike', () => {
    expect([...meansOver(known, two)]).toEqual([2, 2, 5, Number.NaN, 10, 10]);
    // What ran in the hour that the log does not know is none of what it is compared with.
    const run = Float64Array.of(2, 4, 5, 1000, 8, 10);
    expect([...meansOver(run, two)]).toEqual([3, 3, 5, Number.NaN, 9, 9]);
  });

  test('are counted from the first hour of the log, wherever a run begins', () => {
    expect([...meansOver(Float64Array.of(4, 5, 1000, 8, 10), two, 1)]).toEqual([
      ...[4, 5, Number.NaN, 9, 9],
    ]);
  });

  test('are counted anew where hours begin to be withheld', () => {
    const three = Float64Array.of(1, 3, 5, 7, 9, 11, 13);
    const cut = (anewAt: number) => [...meansOver(three, { over: 3, anewAt, known: three })];
    expect(cut(0)).toEqual([3, 3, 3, 9, 9, 9, 13]);
    expect(cut(4)).toEqual([3, 3, 3, 7, 11, 11, 11]);
    // A run of the fitted hours alone has what the log has of them.
    const fitted = three.subarray(0, 4);
    expect([...meansOver(fitted, { over: 3, anewAt: 4, known: three })]).toEqual([3, 3, 3, 7]);
  });
});
