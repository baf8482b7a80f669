import { expect, test } from 'vitest';
import { extraterrestrialNormal } from '../../../src/physics/sun/extraterrestrial.ts';
import { compare } from '../../reference/compare.ts';
import { declinationOfDay } from '../../reference/physics/sun/declination-of-day.ts';
import { extraterrestrialDaily } from '../../reference/physics/sun/extraterrestrial-daily.ts';

test.each([
  [1353, 33.4],
  [1367, 33.8],
])('a day outside the atmosphere with a solar constant of %s W/m2', (constant, expected) => {
  compare({
    topic: 'Sun',
    what: `irradiation outside the atmosphere, 43° N, 15 April, constant ${constant} W/m2`,
    unit: 'MJ/m2',
    source: 'Duffie and Beckman, example 1.8.1 (editions differ in the constant)',
    mark: 'published',
    expected,
    got: extraterrestrialDaily(105, 43, declinationOfDay(105), constant) / 1e6,
    tolerance: { absolute: 0.1 },
    because: 'printed to a tenth',
  });
});

test.each([
  [1, 1.03505], // 1.00011 + 0.034221 + 0.000719
  [47, 1.02513], // 46/365 of the turn: 1.00011 + 0.024041 + 0.000911 - 0.000009 + 0.000077
])('on day %s the series gives what it gives by hand', (day, ratio) => {
  expect(Math.abs(extraterrestrialNormal(day, 1) - ratio)).toBeLessThan(2e-6);
});

test('the earth is nearest in January', () => {
  const days = Array.from({ length: 365 }, (_, k) => extraterrestrialNormal(k + 1));
  expect(days.indexOf(Math.max(...days)) + 1).toBeLessThanOrEqual(6);
  expect(Math.max(...days) / Math.min(...days)).toBeCloseTo((1.0167 / 0.9833) ** 2, 2);
});

test('polar night gets nothing, polar day the whole turn', () => {
  expect(extraterrestrialDaily(355, 80, -23.4)).toBeCloseTo(0, 6);
  const whole = 86_400 * extraterrestrialNormal(172) * Math.sin((23.4 * Math.PI) / 180);
  expect(extraterrestrialDaily(172, 90, 23.4)).toBeCloseTo(whole, -3);
});

test('a day that is none is refused', () => {
  expect(() => extraterrestrialNormal(0)).toThrow(
    'extraterrestrialNormal: day of year must be between 1 and 367, got 0',
  );
  expect(() => declinationOfDay(Number.NaN)).toThrow(RangeError);
});
