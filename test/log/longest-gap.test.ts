import { expect, test } from 'vitest';
import type { LoggedSeries } from '../../src/log/log.ts';
import { longestGap } from '../../src/log/longest-gap.ts';

const read = (
  apart: readonly number[],
  reading: LoggedSeries['reading'] = 'instant',
  quantity = 'temperature',
) => {
  let at = 0;
  const times = Float64Array.from([0, ...apart], (seconds) => {
    at += seconds;
    return at;
  });
  return longestGap({
    ...{ quantity, place: 'room', room: 'den', device: null, reading },
    ...{ times, values: times.map(() => 20), from: 'den.csv, T' },
  });
};

test('two hours of a sensor that reads by the clock', () => {
  expect(read(Array(50).fill(600))).toBe(2 * 3600);
  expect(read([600])).toBe(2 * 3600);
  expect(read([])).toBe(2 * 3600);
});

test('four times what nine in ten keep of one that reports changes, up to eight hours', () => {
  // Nine of ten are an hour or less: between the ninth and the tenth, half an hour and an hour and a half.
  expect(read([...Array(9).fill(1800), 5400])).toBe(4 * 3600);
  // Eleven: the tenth of them.
  expect(read([...Array(9).fill(1800), 5400, 9000])).toBe(6 * 3600);
  expect(read(Array(50).fill(3 * 3600))).toBe(8 * 3600);
});

test('a meter that is read once a day, and a window that nobody touched', () => {
  // Read on every day at any hour: two days and a little.
  expect(read([86_400], 'mean')).toBe(50 * 3600);
  expect(read([3600], 'state')).toBe(14 * 86_400);
  // A heater that is off in a mild month drew nothing in it.
  expect(read([3600], 'state', 'device power')).toBeGreaterThan(31 * 86_400);
});
