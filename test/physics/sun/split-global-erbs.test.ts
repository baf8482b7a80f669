import { expect, test } from 'vitest';
import { extraterrestrialNormal } from '../../../src/physics/sun/extraterrestrial.ts';
import { diffuseShareErbs, splitGlobalErbs } from '../../../src/physics/sun/split-global-erbs.ts';
import { compare } from '../../reference/compare.ts';

test('the three pieces of the correlation meet', () => {
  const row = {
    topic: 'Sun',
    unit: '-',
    source:
      'Erbs, Klein and Duffie 1982, equation 1, as in the package pvlib, irradiance.erbs: its pieces must meet',
    mark: 'published',
    tolerance: { absolute: 0.002 },
    because: 'coefficients printed to four places',
  } as const;
  for (const [border, share] of [
    [0.22, 1 - 0.09 * 0.22],
    [0.8, 0.165],
  ] as const) {
    compare({
      ...row,
      what: `diffuse share at clearness ${border}`,
      expected: share,
      got: diffuseShareErbs(border === 0.22 ? border + 1e-9 : border - 1e-9),
    });
  }
});

test('the share only falls from overcast to clear', () => {
  for (let k = 0; k < 0.78; k += 0.01) {
    expect(diffuseShareErbs(k + 0.01)).toBeLessThanOrEqual(diffuseShareErbs(k) + 1e-4);
  }
});

test('both parts always add up to the global, and the beam stays under the sun outside', () => {
  for (const cosZenith of [0.005, 0.05, 0.2, 0.6, 1]) {
    for (const global of [0, 5, 80, 400, 1100]) {
      const { directNormal, diffuseHorizontal } = splitGlobalErbs(global, cosZenith, 100);
      expect(directNormal * cosZenith + diffuseHorizontal).toBeCloseTo(global, 9);
      expect(directNormal).toBeGreaterThanOrEqual(0);
      expect(diffuseHorizontal).toBeGreaterThanOrEqual(0);
      expect(directNormal).toBeLessThan(extraterrestrialNormal(100));
    }
  }
});

test.each([
  ['mean sky', 0.5, 0.6, 0.65915],
  ['overcast', 0.2, 0.4, 0.982],
  ['clear beyond the last piece', 0.85, 0.5, 0.165],
])("a %s leaves the correlation's share diffuse", (_, clearness, cosZenith, share) => {
  const global = clearness * extraterrestrialNormal(100) * cosZenith;
  // Shares by hand: 1 - 0.09 k; 0.9511 - 0.1604 k + 4.388 k2 - 16.638 k3 + 12.336 k4; 0.165.
  const { directNormal, diffuseHorizontal } = splitGlobalErbs(global, cosZenith, 100);
  expect(diffuseHorizontal / global).toBeCloseTo(share, 9);
  expect(directNormal).toBeCloseTo((global * (1 - share)) / cosZenith, 9);
});

test('a sun lower than 3.7° has the clearness it would have there', () => {
  const global = 0.2 * extraterrestrialNormal(100) * 0.065; // 0.065 is the cosine of 86.3°
  const { diffuseHorizontal } = splitGlobalErbs(global, 0.01, 100);
  expect(diffuseHorizontal / global).toBeCloseTo(1 - 0.09 * 0.2, 9);
});

test('at night everything is diffuse', () => {
  expect(splitGlobalErbs(3, 0, 1)).toEqual({ directNormal: 0, diffuseHorizontal: 3 });
  expect(splitGlobalErbs(3, -0.1, 1)).toEqual({ directNormal: 0, diffuseHorizontal: 3 });
});

test('missing codes are refused', () => {
  expect(() => splitGlobalErbs(-9900, 0.5, 1)).toThrow(
    'splitGlobalErbs: global irradiance must be between 0 and 1600 W/m2, got -9900 W/m2',
  );
  expect(() => splitGlobalErbs(Number.NaN, 0.5, 1)).toThrow(RangeError);
});
