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

/** Means [W] of amounts that each stand behind so many seconds [J]. */
const amounts = (...readings: [after: number, amount: number][]) => {
  let at = 0;
  const times = Float64Array.from(readings, ([after]) => (at += after));
  return [
    ...meterMeans(
      times,
      Float64Array.from(readings, ([, amount]) => amount),
    ).values,
  ].slice(1);
};

test('an amount behind missing rows is that of its own interval, not of all the time', () => {
  const even = Array.from({ length: 12 }, (_, k): [number, number] => [10, k % 2 === 0 ? 50 : 20]);
  const found = amounts(...even, [400, 50], [10, 20]);
  expect(found.slice(-4)).toEqual([5, 2, Number.NaN, 2]);
  // A day of 25 hours among those of 24, February among the months.
  expect(amounts(...even, [14, 28]).at(-1)).toBe(2);
  expect(amounts(...even, [16, 32]).at(-1)).toBeNaN();
  // What was used since somebody last looked, now after 4 s and now after 20.
  const seldom = amounts([7, 70], [4, 40], [20, 100], [6, 90], [13, 26], [4, 60], [20, 40]);
  expect(seldom).toEqual([10, 5, 15, 2, 15, 2]);
});

test('a counter that falls again and again was not read wrongly each time', () => {
  // One wrong reading in 41 is left out, three are a counter that has its own ways.
  const found = (...places: number[]) =>
    meterMeans(
      Float64Array.from({ length: 41 }, (_, k) => k),
      Float64Array.from({ length: 41 }, (_, k) => 100 + 10 * k - (places.includes(k) ? 15 : 0)),
    ).wrong;
  expect(found(20)).toBe(1);
  expect(found(10, 20, 30)).toBe(0);
});
