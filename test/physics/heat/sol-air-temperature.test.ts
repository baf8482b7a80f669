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
  for (const { what, tilt, expected } of [
    { what: 'a level roof', tilt: 0, expected: 45.54 },
    { what: 'a wall', tilt: 90, expected: 22.77 },
  ]) {
    compare({
      topic: 'Heat through the fabric',
      what: `what ${what} loses to the sky`,
      unit: 'W/m2',
      source: 'ISO 13790:2008, 11.3.5: view factors 1 and 0.5, 4.14 W/(m2 K), 11 K',
      mark: 'from memory',
      expected,
      got: skyLoss(tilt),
      tolerance: { absolute: 0.005 },
      because: 'the product to two decimals',
    });
  }
});

test('neither sun nor sky leaves the air temperature; what faces down loses nothing to the sky', () => {
  expect(solAirTemperature(8, 0, 0.9, 0.04)).toBe(8);
  expect(skyLoss(30)).toBeGreaterThan(skyLoss(60));
  expect(skyLoss(180)).toBeCloseTo(0, 12);
  expect(() => skyLoss(Number.NaN)).toThrow(RangeError);
});
