import { expect, test } from 'vitest';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import {
  saturationPressure,
  saturationPressureOverWater,
} from '../../../src/physics/moist-air/saturation-pressure.ts';
import { compare } from '../../reference/compare.ts';

const TABLE = 'table of dew points as printed for painters (that of DIN 4108-3, from memory)';

test.each([
  [21, 55, 11.6, 0.05, 'Luxembourg energy agency, guidance on condensation (1nergie.lu)'],
  [20, 70, 14.4, 0.05, TABLE],
  [10, 90, 8.4, 0.05, TABLE],
])('%s °C and %s %% drips at %s °C', (t, humidity, dew, tolerance, source) => {
  compare({
    topic: 'Moist air',
    what: `dew point of ${t} °C and ${humidity} %`,
    unit: '°C',
    source,
    mark: 'published arithmetic',
    expected: dew,
    got: dewPoint((humidity / 100) * saturationPressure(t)),
    tolerance: { absolute: tolerance },
    because: 'the last digit printed',
  });
});

test('undoes saturationPressure to 1e-9 K', () => {
  for (let t = -100; t <= 200; t += 0.37) {
    expect(Math.abs(dewPoint(saturationPressure(t)) - t), `at ${t} °C`).toBeLessThan(1e-9);
  }
});

test('crosses from frost to dew without a jump', () => {
  const ice = saturationPressure(0.01);
  const water = saturationPressureOverWater(0.01);
  expect(dewPoint(ice)).toBeCloseTo(0.01, 9);
  expect(dewPoint((ice + water) / 2)).toBe(0.01);
  expect(dewPoint(water)).toBeCloseTo(0.01, 9);
});

test('refuses dry air, air beyond the curve, and no number', () => {
  for (const p of [0, 0.001, 1.6e6, Number.NaN]) expect(() => dewPoint(p)).toThrow(RangeError);
  expect(() => dewPoint(0)).toThrow(
    /^dewPoint: vapour pressure must be between 0\.0014\d* and 155\d{4}[.\d]* Pa, got 0 Pa$/,
  );
});
