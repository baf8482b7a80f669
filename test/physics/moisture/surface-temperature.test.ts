import { expect, test } from 'vitest';
import { relativeHumidity } from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { surfaceTemperature } from '../../../src/physics/moisture/surface-temperature.ts';
import { compare } from '../../reference/compare.ts';
import { temperatureFactor } from '../../reference/physics/moisture/temperature-factor.ts';

test.each([
  [20, 55, 0, 0.6, 92],
  [20, 55, 0, 0.7, 80],
  [20, 55, 0, 0.75, 75],
  [20, 55, 0, 0.8, 71],
  [20, 55, 0, 0.9, 62],
  [18, 65, 5, 0.6, 91],
  [18, 65, 5, 0.7, 83],
  [18, 65, 5, 0.75, 80],
  [18, 65, 5, 0.8, 77],
  [18, 65, 5, 0.9, 71],
])('a surface in a room of %s °C and %s %%, %s °C outside, factor %s', (...given) => {
  const [indoor, humidity, outdoor, factor, expected] = given;
  const vapour = (humidity / 100) * saturationPressure(indoor);
  const surface = surfaceTemperature(factor, indoor, outdoor);
  compare({
    topic: 'Surface damp',
    what: `surface humidity, ${indoor} °C ${humidity} % inside, ${outdoor} °C outside, factor ${factor}`,
    unit: '%',
    source: 'worked out apart from the definition of the temperature factor in ISO 13788',
    mark: 'closed form',
    expected,
    got: relativeHumidity(vapour, surface),
    tolerance: { absolute: 0.6 },
    because: 'worked out to a whole percent; saturation formulas differ by 0.1 %',
  });
});

test('the factor and the surface temperature undo each other', () => {
  expect(temperatureFactor(surfaceTemperature(0.73, 21, -4), 21, -4)).toBeCloseTo(0.73, 12);
  expect(surfaceTemperature(1, 21, -4)).toBe(21);
  expect(surfaceTemperature(0, 21, -4)).toBe(-4);
  expect(temperatureFactor(20, 20, 20)).toBeNaN();
  expect(temperatureFactor(18, 20, 20)).toBeNaN();
});

test('a surface under the dew point shows more than 100 %', () => {
  expect(relativeHumidity(saturationPressure(12), 11)).toBeGreaterThan(100);
  expect(() => relativeHumidity(1000, Number.NaN)).toThrow(RangeError);
});
