import { expect, test } from 'vitest';
import { moistureEffusivity } from '../../../src/physics/moisture/moisture-effusivity.ts';
import { compare } from '../../reference/compare.ts';
import { materialEffusivity } from '../../reference/physics/moisture/material-effusivity.ts';
import {
  moistureDiffusivity,
  penetrationDepth,
} from '../../reference/physics/moisture/penetration-depth.ts';

const DAY = 86_400;

test('the factor of the buffer value follows from the square wave', () => {
  let sum = 0;
  for (let n = 1; n <= 2_000_000; n++) sum += Math.sin((n * Math.PI) / 3) ** 2 / n ** 1.5;
  const h = (2 / Math.PI) * sum;
  compare({
    topic: 'Moisture buffering',
    what: 'uptake in 8 of 24 h, as a share of effusivity times square root of time',
    unit: 'per %RH',
    source: 'Fourier series of the square wave in a half-space: h/(100 sqrt(pi)), h(1/3) = 1.006',
    mark: 'closed form',
    expected: h / (100 * Math.sqrt(Math.PI)),
    got: 0.001 / (2809 * moistureEffusivity(1, 2809) * Math.sqrt(DAY)),
    tolerance: { relative: 0.005 },
    because: 'the published factor has three figures',
  });
});

test('the effusivity goes with the buffer value', () => {
  expect(moistureEffusivity(1.4, 2809)).toBe(2 * moistureEffusivity(0.7, 2809));
  expect(moistureEffusivity(0, 2809)).toBe(0);
});

test('a material reaches as deep as its effusivity and capacity say', () => {
  const permeability = 2e-11;
  const capacity = 30;
  const depth = penetrationDepth(moistureDiffusivity(permeability, capacity, 2339), DAY);
  const effusivity = materialEffusivity(permeability, capacity, 2339);
  // what one penetration depth holds per pascal is sqrt(2) b / sqrt(w)
  const held = (depth * capacity) / 2339;
  expect(held / (Math.SQRT2 * effusivity * Math.sqrt(DAY / (2 * Math.PI)))).toBeCloseTo(1, 12);
  expect(penetrationDepth(1e-9, 4 * DAY)).toBeCloseTo(2 * penetrationDepth(1e-9, DAY), 15);
});

test('out of range is refused in words', () => {
  expect(() => moistureEffusivity(-1, 2809)).toThrow(
    'moistureEffusivity: moisture buffer value must be between 0 and 100 g/(m2 %RH), got -1 g/(m2 %RH)',
  );
  expect(() => penetrationDepth(0, DAY)).toThrow(RangeError);
  expect(() => moistureDiffusivity(Number.NaN, 30, 2339)).toThrow(RangeError);
});
