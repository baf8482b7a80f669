import { expect, test } from 'vitest';
import type { LoggedSeries } from '../../../src/log/log.ts';
import { joinSeries } from '../../../src/log/read/join-series.ts';

const part = (from: string, ...readings: [number, number][]): LoggedSeries => ({
  ...{
    quantity: 'temperature',
    place: 'room',
    room: 'den',
    device: null,
    reading: 'instant',
    from,
  },
  times: Float64Array.from(readings, ([time]) => time),
  values: Float64Array.from(readings, ([, value]) => value),
});

test('parts in any order become one; of two readings at one time that of the later part counts', () => {
  const [all, ...more] = joinSeries([
    part('b', [20, 2], [30, 2], [50, 2]),
    part('a', [0, 1], [10, 1], [20, 1], [60, 1]),
    part('c', [5, 3], [30, 3]),
  ]);
  expect(more).toEqual([]);
  expect([...all!.times]).toEqual([0, 5, 10, 20, 30, 50, 60]);
  expect([...all!.values]).toEqual([1, 3, 1, 1, 3, 2, 1]);
  expect(all!.from).toBe('b and a and c');
});

test('states that say nothing is known stay so', () => {
  const [all] = joinSeries([part('a', [0, 1], [10, Number.NaN]), part('b', [20, 0])]);
  expect([...all!.values]).toEqual([1, Number.NaN, 0]);
});
