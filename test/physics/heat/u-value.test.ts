import { expect, test } from 'vitest';
import {
  innerSurfaceResistance,
  OUTER_SURFACE_RESISTANCE,
} from '../../../src/physics/heat/surface-resistance.ts';
import { compare } from '../../reference/compare.ts';
import { uValue } from '../../reference/physics/heat/u-value.ts';

test('two components in series', () => {
  compare({
    topic: 'Heat through the fabric',
    what: 'U-value of 2.2 and 1.7 W/(m2 K) in series',
    unit: 'W/(m2 K)',
    source: 'MacKay, Sustainable Energy without the hot air, chapter E',
    mark: 'published arithmetic',
    expected: 0.96,
    got: uValue([1 / 2.2, 1 / 1.7]),
    tolerance: { absolute: 0.005 },
    because: 'printed to two places',
  });
});

test.each([
  ['upwards', 0.1],
  ['horizontal', 0.13],
  ['downwards', 0.17],
] as const)('surface resistance, heat flowing %s', (direction, expected) => {
  compare({
    topic: 'Heat through the fabric',
    what: `inner surface resistance, heat flowing ${direction}`,
    unit: 'm2 K/W',
    source: 'ISO 6946, conventional surface resistances (wiki.indigud.de, RSI_RSE)',
    mark: 'published',
    expected,
    got: innerSurfaceResistance(direction),
    tolerance: { absolute: 0 },
    because: 'a convention',
  });
});

test('a pane of no resistance is what its surfaces make it', () => {
  expect(uValue([innerSurfaceResistance('horizontal'), OUTER_SURFACE_RESISTANCE])).toBeCloseTo(
    5.88,
    2,
  );
});

test('nothing, less than nothing and NaN are refused', () => {
  expect(() => uValue([])).toThrow(
    'uValue: total resistance must be between 0.000001 and 10000 m2 K/W, got 0 m2 K/W',
  );
  expect(() => uValue([0.13, -0.1])).toThrow(
    'uValue: resistance must be between 0 and 1000 m2 K/W, got -0.1 m2 K/W',
  );
  expect(() => uValue([Number.NaN])).toThrow(RangeError);
});
