import { expect, test } from 'vitest';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { filmTransfer } from '../../../src/physics/moisture/film-transfer.ts';
import { compare } from '../../reference/compare.ts';

const TOPIC = 'Water films';
const LATENT = 2.45e6; // J/kg

test('a unit of convection moves 6.80e-9 kg/(s m2 Pa)', () => {
  compare({
    topic: TOPIC,
    what: 'vapour to a film, a W/(m2 K) of convection',
    unit: 'ng/(s m2 Pa)',
    source: 'Lewis relation with a Lewis number of 0.85, air at 20 °C',
    mark: 'from memory',
    expected: 6.8,
    got: filmTransfer(1) * 1e9,
    tolerance: { absolute: 0.005 },
    because: 'given to three digits',
  });
});

// Worked from the equation with the Magnus curve (610.5 Pa at 0 °C), which is 0.1 % off.
test.each([
  {
    ...{ what: 'a film of 18 °C drying into 20 °C and 60 %', film: 18, air: 20, humidity: 0.6 },
    ...{ grams: -40.44, heat: -27.5 },
  },
  {
    ...{
      what: 'a tile of 12 °C in shower air of 24 °C and 90 %',
      film: 12,
      air: 24,
      humidity: 0.9,
    },
    ...{ grams: 78.48, heat: 53.4 },
  },
])('$what', ({ what, film, air, humidity, grams, heat }) => {
  const flow = filmTransfer(2.5) * (humidity * saturationPressure(air) - saturationPressure(film));
  const row = {
    topic: TOPIC,
    source: 'film law with 2.5 W/(m2 K) of convection, worked by hand',
    mark: 'closed form',
    because: 'another curve of saturation and latent heat',
  } as const;
  compare({
    ...{ ...row, what, unit: 'g/(m2 h)', expected: grams, got: flow * 3.6e6 },
    tolerance: { relative: 0.002 },
  });
  compare({
    ...{ ...row, what: `heat of ${what}`, unit: 'W/m2', expected: heat, got: flow * LATENT },
    tolerance: { relative: 0.005 },
  });
});

test('50 g/m2 are dry after an hour and a quarter', () => {
  const flow = filmTransfer(2.5) * (saturationPressure(18) - 0.6 * saturationPressure(20));
  compare({
    topic: TOPIC,
    what: '50 g/m2 at 18 °C dry into air of 20 °C and 60 %',
    unit: 'h',
    source: 'film law with 2.5 W/(m2 K) of convection, worked by hand',
    mark: 'closed form',
    expected: 1.236,
    got: 0.05 / flow / 3600,
    tolerance: { relative: 0.002 },
    because: 'another curve of saturation',
  });
});

test('out of range is refused in words', () => {
  expect(() => filmTransfer(-1)).toThrow(
    'filmTransfer: convective coefficient must be between 0 and 100 W/(m2 K), got -1 W/(m2 K)',
  );
});
