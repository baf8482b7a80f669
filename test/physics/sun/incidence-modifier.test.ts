import { expect, test } from 'vitest';
import {
  DIFFUSE_INCIDENCE_MODIFIER,
  incidenceModifier,
} from '../../../src/physics/sun/incidence-modifier.ts';
import { compareBand } from '../../reference/compare.ts';

test('clear double glazing at 60° and in even light', () => {
  const row = { topic: 'Sun', unit: '-', mark: 'common practice' } as const;
  compareBand({
    ...row,
    what: 'share of head-on gain at 60°, double glazing',
    source: 'tables of angular solar gain of clear double glazing',
    low: 0.84,
    high: 0.9,
    got: incidenceModifier(0.5),
    because: 'glass of different thickness and coating',
  });
  compareBand({
    ...row,
    what: 'share of head-on gain in even light, double glazing',
    source: 'the factor 0.9 of quasi-steady methods for light at all angles (ISO 13790)',
    low: 0.84,
    high: 0.92,
    got: DIFFUSE_INCIDENCE_MODIFIER,
    because: 'the convention is rounded to a tenth',
  });
});

test('two sheets at 60° by the laws of Fresnel and Snell', () => {
  // Index 1.526: reflectances 0.18548 and 0.00145 at 60° and 0.04336 head-on; (1 - r) / (1 + 3 r) of
  // each passes two sheets, and absorption leaves 0.92521 and 0.93801. To five places.
  expect(Math.abs(incidenceModifier(0.5) - 0.70203 / 0.79404)).toBeLessThan(2e-5);
});

test('even light is the mean over the sky, weighed by the cosine', () => {
  const n = 20_000;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const angle = ((k + 0.5) / n) * (Math.PI / 2);
    sum += incidenceModifier(Math.cos(angle)) * Math.sin(2 * angle);
  }
  // Steps of 1/400 in the square of the cosine, from which the modifier rises steeply at grazing.
  expect(Math.abs(DIFFUSE_INCIDENCE_MODIFIER - (sum * Math.PI) / 2 / n)).toBeLessThan(2e-4);
});

test('all head-on, nothing at grazing, falling between', () => {
  expect(incidenceModifier(1)).toBe(1);
  expect(incidenceModifier(0)).toBe(0);
  expect(incidenceModifier(-0.3)).toBe(0);
  expect(incidenceModifier(1e-6)).toBeLessThan(1e-4);
  for (let c = 0.05; c < 1; c += 0.05) {
    expect(incidenceModifier(c)).toBeLessThanOrEqual(incidenceModifier(c + 0.05));
  }
});
