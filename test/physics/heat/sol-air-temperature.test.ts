import { expect, test } from 'vitest';
import { skyLoss } from '../../../src/physics/heat/sky-loss.ts';
import { compare } from '../../reference/compare.ts';
import { solAirTemperature } from '../../reference/physics/heat/sol-air-temperature.ts';

const OUTER = 1 / 17; // [m2 K/W], the handbook's outer film

test('a dark level roof in the sun', () => {
  compare({
    topic: 'Heat through the fabric',
    what: 'sol-air temperature, 35 °C, 800 W/m2, dark and level',
    unit: '°C',
    source: 'ASHRAE Fundamentals: absorptance over film 0.052 m2 K/W, sky 3.9 K',
    mark: 'from memory',
    expected: 72.7,
    got: solAirTemperature(35, 800, 0.052 / OUTER, OUTER, 3.9 / OUTER),
    tolerance: { absolute: 0.05 },
    because: 'worked out to a tenth from the printed coefficients',
  });
  compare({
    topic: 'Heat through the fabric',
    what: 'what a level roof loses to the sky, as a temperature, black surface',
    unit: 'K',
    source: 'ASHRAE Fundamentals: 3.9 K (7 °F)',
    mark: 'from memory',
    expected: 3.9,
    got: skyLoss(0, 1) * OUTER,
    tolerance: { relative: 0.06 },
    because: 'the handbook rounds 63 W/m2 over 17 W/(m2 K) to 7 °F',
  });
});

test('neither sun nor sky leaves the air temperature; walls lose nothing to the sky', () => {
  expect(solAirTemperature(8, 0, 0.9, 0.04)).toBe(8);
  expect(skyLoss(90)).toBeCloseTo(0, 12);
  expect(skyLoss(30)).toBeGreaterThan(skyLoss(60));
  expect(skyLoss(180)).toBe(0);
  expect(() => skyLoss(Number.NaN)).toThrow(RangeError);
});
