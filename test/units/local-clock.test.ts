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

test('among many segments the one in force is found, also before the first and after the last', () => {
  const from = Array.from(
    { length: 40 },
    (_, k) => Date.UTC(2000 + (k >> 1), k % 2 ? 9 : 2, 28) / 1000,
  );
  const clock = { from, offset: from.map((_, k) => (k % 2 ? 0 : 3600)) };
  for (let k = 0; k < from.length; k++) {
    const begins = from[k]!;
    const before = k === 0 ? 3600 : k % 2 ? 3600 : 0; // the first covers all earlier time
    expect(toLocal(clock, begins)).toBe(begins + (k % 2 ? 0 : 3600));
    expect(toLocal(clock, begins - 1)).toBe(begins - 1 + before);
    expect(toUtc(clock, toLocal(clock, begins + 7200))).toBe(begins + 7200);
    expect(toUtc(clock, toLocal(clock, begins - 7200))).toBe(begins - 7200);
  }
  expect(toLocal(clock, 0)).toBe(3600);
  expect(toUtc(clock, toLocal(clock, from.at(-1)! + 1e9))).toBe(from.at(-1)! + 1e9);
});
