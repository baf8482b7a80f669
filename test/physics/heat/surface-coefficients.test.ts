import { describe, expect, test } from 'vitest';
import { INNER_RADIATIVE, splitFilm } from '../../../src/physics/heat/surface-coefficients.ts';
import { compare } from '../../reference/compare.ts';

const ISO = { topic: 'Heat through the fabric', mark: 'from memory' } as const;

test('radiation between plain surfaces at 20 °C', () => {
  compare({
    ...ISO,
    what: 'radiative coefficient of inner surfaces, against 4 times 0.9 sigma T cubed at 20 °C',
    unit: 'W/(m2 K)',
    source: 'Stefan-Boltzmann law with its constant of 2019, emittance 0.9',
    mark: 'closed form',
    expected: 4 * 0.9 * 5.670374419e-8 * 293.15 ** 3,
    got: INNER_RADIATIVE,
    tolerance: { absolute: 0.02 },
    because: 'the standard rounds and leaves out that surfaces see each other only in part',
  });
});

describe('convection is what a conventional film leaves', () => {
  test.each([
    { resistance: 0.13, what: 'sideways', expected: 2.5 },
    { resistance: 0.1, what: 'upwards', expected: 5 },
    { resistance: 0.17, what: 'downwards', expected: 0.7 },
  ])('$what', ({ resistance, what, expected }) => {
    const { convective, radiative } = splitFilm(resistance);
    compare({
      ...ISO,
      what: `convective coefficient ${what}, from the film of ISO 6946`,
      unit: 'W/(m2 K)',
      source: 'ISO 52016-1:2017, conventional coefficients',
      expected,
      got: convective,
      tolerance: { absolute: 0.005 / resistance ** 2 },
      because: 'the film is rounded to 0.01 m2 K/W',
    });
    expect(radiative).toBe(5.13);
    expect(1 / (convective + radiative)).toBeCloseTo(resistance, 14);
  });
});

test('a film that conducts less than radiation alone carries radiation only', () => {
  expect(splitFilm(0.5)).toEqual({ convective: 0, radiative: 2 });
  expect(splitFilm(0.25, 0)).toEqual({ convective: 4, radiative: 0 });
});
