import { expect, test } from 'vitest';
import { eerLine } from '../../src/home/eer-line.ts';
import { compare } from '../reference/compare.ts';

const { outdoor, value } = eerLine(0.35, 10);

test.each([
  { at: 25, expected: 3.964 },
  { at: 30, expected: 3.303 },
  { at: 35, expected: 2.831 },
  { at: 40, expected: 2.478 },
])('at $at °C outdoors a machine of 35 % of the ideal removes $expected for 1', (c) => {
  compare({
    topic: 'Cooling',
    what: `EER at ${c.at} °C outdoors, evaporator 10 °C, condenser 10 K over outdoors, 35 % of the ideal`,
    unit: '-',
    source: 'Carnot: 0.35 times 283.15 K over the lift',
    mark: 'closed form',
    expected: c.expected,
    got: value[outdoor.indexOf(c.at)]!,
    tolerance: { absolute: 5e-4 },
    because: 'worked out to 0.001',
  });
});

test('a line falls as outdoors gets hotter', () => {
  expect([...value].sort((a, b) => b - a)).toEqual(value);
});
