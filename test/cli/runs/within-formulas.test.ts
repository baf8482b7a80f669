import { expect, test } from 'vitest';
import { withinFormulas } from '../../../src/cli/runs/within-formulas.ts';
import { requireWithin } from '../../../src/units/require-within.ts';
import { problemsOf } from '../../scenario/problems-of.ts';

test('a formula out of its range is a problem of the home, in words', () => {
  const hot = () => requireWithin(120.0129415, [-60, 120], 'doorFlow: mean temperature', '°C');
  expect(problemsOf(() => withinFormulas('h.yaml', hot))).toEqual([
    'h.yaml: expected a home that stays within the range of every formula, got mean temperature of 120.01 °C, ' +
      'outside -60 to 120 °C (a room grows far too hot, cold or wet: look for large panes, heaters, heat pumps ' +
      'or water in a small room, and for a room that loses nothing)',
  ]);
});

test('any other error stays what it is, and a result passes', () => {
  const broken = () => {
    throw new RangeError('Invalid array length');
  };
  expect(() => withinFormulas('h.yaml', broken)).toThrow(/^Invalid array length$/);
  expect(withinFormulas('h.yaml', () => 7)).toBe(7);
});
