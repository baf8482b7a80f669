import { describe, expect, test } from 'vitest';
import { meansOver } from '../../../src/fit/readings/means-over.ts';

describe('means of stretches', () => {
  const known = Float64Array.of(1, 3, 5, Number.NaN, 9, 11);
  const two = { of: Int32Array.of(0, 0, 1, 1, 2, 2), known };

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
});
