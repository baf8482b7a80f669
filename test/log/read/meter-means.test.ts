import { expect, test } from 'vitest';
import { meterMeans } from '../../../src/log/read/meter-means.ts';

/** Means [W] of readings a second apart [J]. */
const means = (...energies: number[]) => [
  ...meterMeans(
    Float64Array.from(energies, (_, k) => k),
    Float64Array.from(energies),
  ).values,
];
/** Numbers that rise by 10 so many times. */
const rising = (from: number, times: number) =>
  Array.from({ length: times + 1 }, (_, k) => from + 10 * k);

test('a counter gives differences, 0 where it stands still', () => {
  expect(means(100, 110, 110, 140)).toEqual([Number.NaN, 10, 0, 30]);
});

test('numbers of which one change in ten is a fall are a counter, of two in eleven they are not', () => {
  expect(means(...rising(0, 9), 60).slice(-2)).toEqual([10, Number.NaN]);
  expect(means(...rising(0, 9), 60, 30).slice(-3)).toEqual([90, 60, 30]);
});

test('a reading of a counter that its neighbours belie is left out', () => {
  // Two seconds from 90 to 110, whatever was read between.
  expect(means(...rising(0, 9), 210, 110, 120).slice(-3)).toEqual([10, 10, 10]);
  expect(means(...rising(0, 9), 20, 110, 120).slice(-3)).toEqual([10, 10, 10]);
  // Another meter, or one that begins again, goes on from where it is.
  expect(means(...rising(100, 9), 50, 60, 70).slice(-3)).toEqual([Number.NaN, 10, 10]);
  expect(means(...rising(100, 9), 5, 200, 400).slice(-3)).toEqual([Number.NaN, 195, 200]);
});

test('falls that all end near 0 may be a quarter of all changes, and no more', () => {
  expect(means(60, 80, 100, 120, 12)).toEqual([Number.NaN, 20, 20, 20, Number.NaN]);
  expect(means(60, 80, 100, 120, 13)).toEqual([Number.NaN, 80, 100, 120, 13]);
  expect(means(80, 100, 120, 12)).toEqual([Number.NaN, 100, 120, 12]);
  // One of two falls ends far from 0.
  expect(means(...rising(0, 3), 2, ...rising(10, 3), 30).slice(-2)).toEqual([40, 30]);
});
