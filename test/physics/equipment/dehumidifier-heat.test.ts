import { expect, test } from 'vitest';
import { latentHeat } from '../../../src/physics/moist-air/latent-heat.ts';
import { compare } from '../../reference/compare.ts';
import {
  dehumidifierHeat,
  dehumidifierHeatPerLitre,
} from '../../reference/physics/equipment/dehumidifier-heat.ts';

test.each([
  [1.3, 1.451],
  [1.57, 1.319],
  [1.8, 1.237],
  [2.8, 1.039],
  [3.3, 0.985],
])('at %s L/kWh every litre brings %s kWh', (efficiency, expected) => {
  compare({
    topic: 'Dehumidifiers',
    what: `heat to the room a litre, efficiency ${efficiency} L/kWh`,
    unit: 'kWh/L',
    source: 'efficiencies of the US rules of 2019, heat worked out by hand',
    mark: 'closed form',
    expected,
    got: dehumidifierHeatPerLitre(efficiency, 20),
    tolerance: { absolute: 0.001 },
    because: 'the last digit printed, from latent heat rounded to 0.682',
  });
});

test('heat is electricity and the latent heat of the water, exactly', () => {
  const [power, litresPerDay, t] = [250, 9, 20];
  const rate = litresPerDay / 86_400;
  expect(dehumidifierHeat(power, rate, t)).toBe(power + rate * latentHeat(t));
  const efficiency = litresPerDay / ((power * 24) / 1000);
  const perLitre = dehumidifierHeat(power, rate, t) / (rate * 3.6e6);
  expect(dehumidifierHeatPerLitre(efficiency, t)).toBeCloseTo(perLitre, 12);
});

test('a dry one is an electric heater', () => expect(dehumidifierHeat(250, 0, 20)).toBe(250));

test('refuses what is no number or no device', () => {
  for (const e of [0, -1, 25, Number.NaN]) {
    expect(() => dehumidifierHeatPerLitre(e, 20)).toThrow(RangeError);
  }
  expect(() => dehumidifierHeat(Number.NaN, 0, 20)).toThrow(RangeError);
  expect(() => dehumidifierHeat(250, -1e-4, 20)).toThrow(RangeError);
  expect(() => dehumidifierHeat(250, 1e-4, Number.NaN)).toThrow(RangeError);
  expect(() => dehumidifierHeatPerLitre(0.01, 20)).toThrow(
    'dehumidifierHeatPerLitre: efficiency must be between 0.05 and 20 L/kWh, got 0.01 L/kWh',
  );
});
