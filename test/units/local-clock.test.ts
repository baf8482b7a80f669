import { expect, test } from 'vitest';
import { localDay, nextJump, toLocal, toUtc, weekday } from '../../src/units/local-clock.ts';
import { AHEAD, AUTUMN, SPRING } from './summer-time.ts';

test('local time undoes UTC on both sides of a jump', () => {
  for (let hour = -5; hour < 5; hour++) {
    const utc = SPRING + hour * 3600;
    expect(toUtc(AHEAD, toLocal(AHEAD, utc))).toBe(utc);
  }
});

test('a reading that daylight saving skips means the jump itself', () => {
  const skipped = Date.UTC(2023, 2, 26, 2, 30) / 1000;
  expect(toUtc(AHEAD, skipped)).toBe(SPRING);
});

test('a reading that daylight saving repeats means the first of the two', () => {
  const repeated = Date.UTC(2023, 9, 29, 2, 30) / 1000;
  expect(toUtc(AHEAD, repeated)).toBe(AUTUMN - 1800);
});

test('the next jump is after the instant, never at it; after the last there is none', () => {
  expect(nextJump(AHEAD, SPRING - 1)).toBe(SPRING);
  expect(nextJump(AHEAD, SPRING)).toBe(AUTUMN);
  expect(nextJump(AHEAD, AUTUMN)).toBe(Number.POSITIVE_INFINITY);
});

test('days of the week start on Monday', () => {
  expect(weekday(localDay(Date.UTC(2026, 10, 23) / 1000))).toBe(0);
  expect(weekday(localDay(Date.UTC(2026, 10, 29) / 1000))).toBe(6);
  expect(weekday(-4)).toBe(6);
});
