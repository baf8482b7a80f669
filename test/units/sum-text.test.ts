import { expect, test } from 'vitest';
import { signedSum, sumText, withoutGroups } from '../../src/units/sum-text.ts';
import { plainGroups } from '../../src/units/visible-text.ts';

test.each([
  [128_886, 0, '128\u202f886'],
  [27_000, 0, '27\u202f000'],
  [1_234_567.891, 2, '1\u202f234\u202f567.89'],
  [-60_814, 0, '-60\u202f814'],
  [9999.5, 0, '10\u202f000'],
  [9999, 0, '9999'],
  [1484, 0, '1484'],
  [0.123_456, 6, '0.123456'],
  [Number.NaN, 0, '-'],
])('%f with %i decimals', (value, decimals, text) => {
  expect(sumText(value, decimals)).toBe(text);
});

test('a difference has its sign', () => {
  expect([60_814, -60_814, 340, 0].map((value) => signedSum(value, 0))).toEqual([
    ...['+60\u202f814', '-60\u202f814', '+340', '0'],
  ]);
});

test('on a terminal a plain blank stands between groups, for programs nothing', () => {
  const text = `costs ${sumText(1_234_567, 0)} JPY, 100 for 2\u202f5`;
  expect(plainGroups(text)).toBe('costs 1 234 567 JPY, 100 for 2\u202f5');
  expect(withoutGroups(text)).toBe('costs 1234567 JPY, 100 for 2\u202f5');
});
