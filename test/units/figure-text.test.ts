import { describe, expect, test } from 'vitest';
import { figureText, signedText } from '../../src/units/figure-text.ts';

describe('figureText', () => {
  test.each([
    [12_345.6, '12346'],
    [123.4, '123'],
    [99.94, '99.9'],
    [1.234, '1.23'],
    [0.04567, '0.0457'],
    [1e-9, '0.000000'],
    [0, '0'],
    [-0.5, '-0.500'],
  ])('%s is written %s', (value, text) => {
    expect(figureText(value)).toBe(text);
  });

  test('keeps the decimals asked for, and never writes -0', () => {
    expect(figureText(2.345, 1)).toBe('2.3');
    expect(figureText(-0.04, 1)).toBe('0.0');
    expect(figureText(-0.06, 1)).toBe('-0.1');
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, null, undefined])(
    '%s is a dash',
    (value) => {
      expect(figureText(value)).toBe('-');
      expect(signedText(value, 2)).toBe('-');
    },
  );
});

test('signedText marks what is above zero as printed', () => {
  expect([12, 0, -12, 0.3].map((value) => signedText(value, 0))).toEqual(['+12', '0', '-12', '0']);
});
