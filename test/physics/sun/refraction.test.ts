import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import { refraction } from '../../reference/physics/sun/refraction.ts';

test('the horizon is lifted by half a degree', () => {
  compare({
    topic: 'Sun',
    what: 'refraction at the horizon (true elevation -0.575°, apparent 0°)',
    unit: '°',
    source:
      "standard refraction at the horizon, 34' by convention and 35.4' in Allen 1976 (liquisearch.com/atmospheric_refraction/values)",
    mark: 'published',
    expected: 34.5 / 60,
    got: refraction(-34.5 / 60),
    tolerance: { absolute: 0.5 / 60 },
    because: 'conventions lie within half a minute',
  });
});

test('less and less towards the zenith, none out of sight', () => {
  expect(refraction(45)).toBeCloseTo(1 / 60, 2);
  expect(refraction(90)).toBeLessThan(1e-4);
  expect(refraction(-2)).toBe(0);
  expect(() => refraction(Number.NaN)).toThrow(RangeError);
});
