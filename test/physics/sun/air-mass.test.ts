import { expect, test } from 'vitest';
import { relativeAirMass } from '../../../src/physics/sun/air-mass.ts';
import { compare } from '../../reference/compare.ts';

test('overhead one, towards the horizon some 38', () => {
  compare({
    topic: 'Sun',
    what: 'relative air mass of the sun 30° high',
    unit: '-',
    source: 'Kasten and Young 1989, worked out apart from the program',
    mark: 'closed form',
    expected: 1.99429,
    got: relativeAirMass(30),
    tolerance: { absolute: 5e-6 },
    because: 'given to five places',
  });
  // 1/(1 + 0.50572 · 96.07995^-1.6364), and 1/(0.50572 · 6.07995^-1.6364), by hand.
  expect(relativeAirMass(90)).toBeCloseTo(0.99971, 5);
  expect(relativeAirMass(0)).toBeCloseTo(37.92, 2);
  expect(relativeAirMass(-20)).toBe(relativeAirMass(0));
});

test('the lower the sun, the more air; near secant while it is high', () => {
  for (let h = 1; h <= 90; h++) expect(relativeAirMass(h)).toBeLessThan(relativeAirMass(h - 1));
  for (let h = 30; h <= 90; h += 10) {
    const secant = 1 / Math.sin((h * Math.PI) / 180);
    expect(Math.abs(relativeAirMass(h) / secant - 1)).toBeLessThan(0.003);
  }
});
