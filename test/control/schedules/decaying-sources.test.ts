import { expect, test } from 'vitest';
import { createDayInputs } from '../../../src/control/day-inputs.ts';
import { fillDayInputs } from '../../../src/control/fill-day-inputs.ts';
import { bareHome, bareRoom, quietHousehold } from '../../engine/homes.ts';

// Invented paint, from the 10th of March on, in room 1.
const DAY = 86_400;
const PAINT = { name: 'paint', room: 1, from: 310, species: [0, 500], timeConstant: 5 * DAY };
const HOME = bareHome([bareRoom('a', 30), bareRoom('b', 30)]);

function emissionOn(start: number): number[] {
  const household = quietHousehold(HOME, { decaying: [PAINT] });
  const day = createDayInputs(household, 2, 2, 24);
  fillDayInputs(day, household, start, 3600, 24);
  return [...day.applianceSpecies].filter((_, k) => k % 4 === 3);
}

test('begins on its date at the stated rate and falls to 1/e in its time', () => {
  const first = emissionOn(Date.UTC(2023, 2, 10) / 1000);
  expect(first[0]).toBeGreaterThan(495);
  expect(first[0]).toBeLessThan(500);
  const later = emissionOn(Date.UTC(2023, 2, 15) / 1000);
  expect(later[0]! / first[0]!).toBeCloseTo(Math.exp(-1), 9);
});

test('gives off, hour by hour, no more and no less than the curve holds', () => {
  const day = emissionOn(Date.UTC(2023, 2, 10) / 1000).reduce((sum, x) => sum + x * 3600, 0);
  expect(day).toBeCloseTo(500 * 5 * DAY * (1 - Math.exp(-1 / 5)), 3);
});

test('before its date last year’s paint is what still smells', () => {
  const before = emissionOn(Date.UTC(2023, 2, 9) / 1000);
  expect(before[0]).toBeGreaterThan(0);
  expect(before[0]).toBeLessThan(1e-20);
});
