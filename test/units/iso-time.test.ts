import { expect, test } from 'vitest';
import { isoDay, isoMinute, isoTime } from '../../src/units/iso-time.ts';

test('a time as a scenario and a page have it, to the minute', () => {
  const leapDay = Date.UTC(2024, 1, 29, 23, 59, 58) / 1000;
  expect([isoTime, isoMinute, isoDay].map((words) => words(leapDay))).toEqual([
    ...['2024-02-29T23:59Z', '2024-02-29 23:59', '2024-02-29'],
  ]);
});
