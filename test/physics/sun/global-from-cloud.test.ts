import { expect, test } from 'vitest';
import { globalFromCloud } from '../../../src/physics/sun/global-from-cloud.ts';
import { compare } from '../../reference/compare.ts';

test('an overcast sky leaves a quarter of the clear one', () => {
  compare({
    topic: 'Sun',
    what: 'global irradiance under 8 oktas over that under none',
    unit: '-',
    source: 'Kasten and Czeplak 1980: 1 - 0.75 n^3.4, as in the soil water model SOILWAT2',
    mark: 'published',
    expected: 0.25,
    got: globalFromCloud(1, 40) / globalFromCloud(0, 40),
    tolerance: { absolute: 1e-9 },
    because: 'the formula itself',
  });
  compare({
    topic: 'Sun',
    what: 'clear-sky global irradiance, sun at 30°',
    unit: 'W/m2',
    source:
      'Kasten and Czeplak 1980: 910 sin h - 30, as in the clear-sky models of the radiation laboratory of Thessaloniki (BBand_LAP), after Reno and Hansen',
    mark: 'published',
    expected: 425,
    got: globalFromCloud(0, 30),
    tolerance: { absolute: 1e-6 },
    because: 'the formula itself',
  });
});

test('more cloud is less sun, and a low sun gives none rather than less than none', () => {
  for (let n = 0; n < 1; n += 0.125) {
    expect(globalFromCloud(n + 0.125, 30)).toBeLessThan(globalFromCloud(n, 30));
  }
  expect(globalFromCloud(0, 1)).toBe(0);
  expect(globalFromCloud(0, -20)).toBe(0);
});

test('oktas for shares are refused', () => {
  expect(() => globalFromCloud(8, 30)).toThrow(
    'globalFromCloud: cloud must be between 0 and 1 of the sky, got 8 of the sky',
  );
});
