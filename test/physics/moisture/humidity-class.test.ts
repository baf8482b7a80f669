import { describe, expect, test } from 'vitest';
import { relativeHumidity } from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { humidityClass, humidityClassLimit } from '../../../src/physics/moisture/humidity-class.ts';
import { compare } from '../../reference/compare.ts';
import { temperatureFactorNeeded } from '../../reference/physics/moisture/temperature-factor-needed.ts';

describe.each([
  [1, 270, 2, 35.1, 0.367],
  [2, 540, 4, 46.6, 0.578],
  [3, 810, 6, 58.2, 0.748],
  [4, 1080, 8, 69.7, 0.89],
] as const)('the upper limit of humidity class %s', (number, pascals, grams, humidity, factor) => {
  const row = { topic: 'Surface damp', source: 'ISO 13788, internal humidity classes' } as const;

  test('in frost', () => {
    compare({
      ...row,
      what: `most vapour-pressure excess of class ${number}, 0 °C and colder`,
      unit: 'Pa',
      mark: 'from memory',
      expected: pascals,
      got: humidityClassLimit(number, -5),
      tolerance: { absolute: 0 },
      because: 'a convention',
    });
    compare({
      ...row,
      what: `most vapour-density excess of class ${number}, 0 °C and colder`,
      unit: 'g/m3',
      mark: 'from memory',
      expected: grams,
      got: humidityClassLimit(number, -5, 'g/m3'),
      tolerance: { absolute: 0 },
      because: 'a convention',
    });
  });

  test('what it means at 20 °C inside, 0 °C and 90 % outside', () => {
    const vapour = 0.9 * saturationPressure(0) + humidityClassLimit(number, 0);
    compare({
      ...row,
      what: `humidity inside at the limit of class ${number}, 0 °C and 90 % outside`,
      unit: '%',
      mark: 'closed form',
      expected: humidity,
      got: relativeHumidity(vapour, 20),
      tolerance: { absolute: 0.1 },
      because: 'worked out to a tenth',
    });
    compare({
      ...row,
      what: `temperature factor needed at the limit of class ${number}, 0 °C and 90 % outside`,
      unit: '-',
      mark: 'closed form',
      expected: factor,
      got: temperatureFactorNeeded(vapour, 20, 0),
      tolerance: { absolute: 0.002 },
      because: 'worked out to three places with another saturation formula',
    });
  });
});

test('limits fall straight to nothing at 20 °C', () => {
  expect(humidityClassLimit(2, 10)).toBe(270);
  expect(humidityClassLimit(4, 20)).toBe(0);
  expect(humidityClassLimit(4, 30)).toBe(0);
});

test('classes from excesses', () => {
  expect(humidityClass(-50, 5)).toBe(1);
  expect(humidityClass(270, 0)).toBe(1);
  expect(humidityClass(271, 0)).toBe(2);
  expect(humidityClass(2000, 0)).toBe(5);
  expect(humidityClass(4.1, -3, 'g/m3')).toBe(3);
  expect(humidityClass(1, 25)).toBe(5);
  expect(() => humidityClass(Number.NaN, 0)).toThrow(
    'humidityClass: excess must be between -10000 and 10000 Pa, got NaN Pa',
  );
});
