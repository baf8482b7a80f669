import { expect, test } from 'vitest';
import { carnotEer } from '../../../src/physics/cooling/carnot-eer.ts';
import { compare } from '../../reference/compare.ts';
import { testRanges } from '../test-ranges.ts';

// Worked by hand: 0.35 x 283.15 K over the lift.
test.each([
  [25, 3.964],
  [30, 3.303],
  [35, 2.831],
  [40, 2.478],
])('a unit at 35 %% of the ideal removes heat at %s °C outdoors', (outdoor, expected) => {
  compare({
    topic: 'Cooling',
    what: `EER of a room unit, ${outdoor} °C outdoors`,
    unit: '-',
    source: 'second law, 35 % of the ideal, coil 10 °C, condenser 10 K over outdoors',
    mark: 'closed form',
    expected,
    got: carnotEer(0.35, 10, outdoor + 10),
    tolerance: { absolute: 0.0005 },
    because: 'last digit worked out',
  });
});

test('the ideal machine and one of half its quality differ by that half', () => {
  expect(carnotEer(0.5, 10, 45) / carnotEer(1, 10, 45)).toBeCloseTo(0.5, 12);
  expect(carnotEer(1, 10, 45)).toBeCloseTo(283.15 / 35, 12);
});

testRanges([
  ['carnotEer: share of the ideal', [0.05, 1], '', (x) => carnotEer(x, 10, 45)],
  ['carnotEer: evaporator', [-20, 30], '°C', (x) => carnotEer(0.35, x, 90)],
  ['carnotEer: condenser', [15, 90], '°C', (x) => carnotEer(0.35, 10, x)],
]);
