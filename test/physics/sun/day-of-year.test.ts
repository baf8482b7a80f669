import { expect, test } from 'vitest';
import { dayOfYear } from '../../../src/physics/sun/day-of-year.ts';

test('counts from 1, with the fraction of the day', () => {
  expect(dayOfYear(Date.UTC(2023, 0, 1) / 1000)).toBe(1);
  expect(dayOfYear(Date.UTC(2023, 11, 31, 12) / 1000)).toBe(365.5);
  expect(dayOfYear(Date.UTC(2024, 11, 31) / 1000)).toBe(366);
});
