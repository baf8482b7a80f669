import { expect, test } from 'vitest';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { compare } from '../../reference/compare.ts';
import {
  surfaceTemperatureNeeded,
  temperatureFactorNeeded,
} from '../../reference/physics/moisture/temperature-factor-needed.ts';

test('the worked January of the humidity standard', () => {
  const outside = 0.92 * saturationPressure(2.8);
  const inside = outside + 617 * 1.1;
  const row = {
    topic: 'Surface damp',
    source: 'ISO 13788 (2001 edition, safety factor 1.1), worked January: 2.8 °C, 92 %',
    mark: 'from memory',
  } as const;
  compare({
    ...row,
    what: 'vapour pressure outside',
    unit: 'Pa',
    expected: 687,
    got: outside,
    tolerance: { absolute: 1 },
    because: 'printed in whole pascals',
  });
  compare({
    ...row,
    what: 'vapour pressure inside',
    unit: 'Pa',
    expected: 1366,
    got: inside,
    tolerance: { absolute: 1 },
    because: 'printed in whole pascals',
  });
  compare({
    ...row,
    what: 'least surface temperature',
    unit: '°C',
    expected: 15,
    got: surfaceTemperatureNeeded(inside),
    tolerance: { absolute: 0.05 },
    because: 'printed to a tenth',
  });
  compare({
    ...row,
    what: 'least temperature factor',
    unit: '-',
    expected: 0.71,
    got: temperatureFactorNeeded(inside, 20, 2.8),
    tolerance: { absolute: 0.002 },
    because: 'the printed surface temperature is rounded to a tenth',
  });
});

test('the German design case', () => {
  const vapour = 0.5 * saturationPressure(20);
  const row = {
    topic: 'Surface damp',
    source:
      'DIN 4108-2: 20 °C and 50 % inside, -5 °C outside (German energy agency 2021, gebaeudeforum.de, Mindestwärmeschutz)',
    mark: 'published arithmetic',
  } as const;
  compare({
    ...row,
    what: 'least surface temperature',
    unit: '°C',
    expected: 12.6,
    got: surfaceTemperatureNeeded(vapour),
    tolerance: { absolute: 0.05 },
    because: 'printed to a tenth',
  });
  compare({
    ...row,
    what: 'least temperature factor',
    unit: '-',
    expected: 0.7,
    got: temperatureFactorNeeded(vapour, 20, -5),
    tolerance: { absolute: 0.007 },
    because:
      'printed to two places from a surface temperature rounded to a tenth (0.005 + 0.05/25)',
  });
});

test('condensation needs a colder surface than mould; damper air a better wall', () => {
  expect(surfaceTemperatureNeeded(1200, 100)).toBeLessThan(surfaceTemperatureNeeded(1200, 80));
  expect(temperatureFactorNeeded(1300, 20, 0)).toBeGreaterThan(
    temperatureFactorNeeded(1200, 20, 0),
  );
  expect(temperatureFactorNeeded(400, 20, 10)).toBeLessThan(0);
  expect(() => surfaceTemperatureNeeded(1200, 0)).toThrow(
    'surfaceTemperatureNeeded: critical humidity must be between 1 and 100 %, got 0 %',
  );
});
