import { describe, expect, test } from 'vitest';
import { anyQuantityWords, readAnyQuantity } from '../../src/units/any-quantity.ts';

describe('quantities in a unit that nobody knows', () => {
  test.each([
    [12, 12],
    ['12', 12],
    ['12 Bq/m3', 12],
    ['1.5e2 Bq/m³', 150],
    ['-3Bq / m3', -3],
  ])('%s', (written, value) => {
    expect(readAnyQuantity(written, 'Bq/m3')).toEqual({ value });
  });

  test.each([
    ['12 ppm', '"12 ppm", which has another unit'],
    ['0.2 kBq/m3', '"0.2 kBq/m3", which has another unit'],
    ['many', '"many"'],
    ['1,5 Bq/m3', '"1,5 Bq/m3"'],
    ['1e999', '"1e999"'],
    [Number.NaN, 'NaN'],
  ])('%s is refused', (written, got) => {
    expect(readAnyQuantity(written, 'Bq/m3')).toEqual({
      refused: { expected: 'a number in Bq/m3', got, hint: '' },
    });
  });

  test('known units are converted as everywhere', () => {
    expect(readAnyQuantity('0.2 mg/m3', 'µg/m3')).toEqual({ value: 200 });
    expect(readAnyQuantity('300 ppb', 'ppm')).toEqual({ value: 0.3 });
    expect(readAnyQuantity('500 ng/m3', 'µg/m3')).toEqual({ value: 0.5 });
    expect(anyQuantityWords('ppm')).toBe('a concentration in parts per million in ppm');
  });
});
