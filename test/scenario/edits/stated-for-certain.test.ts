import { expect, test } from 'vitest';
import { CAPACITIES, PLACES, U_VALUES } from '../../../src/scenario/edits/fit-places.ts';
import { statedForCertain } from '../../../src/scenario/edits/stated-for-certain.ts';

const words = (raw: unknown, doubts: Parameters<typeof statedForCertain>[1] = []) =>
  statedForCertain(raw, doubts).map((one) => one.words);

test('what a scenario states and does not doubt is told in words', () => {
  const raw = {
    title: 'A',
    weather: 'w.csv',
    site: { latitude: 54, longitude: -2 },
    home: {
      leakage: { ach50: 4 },
      build: { 'wall u-value': '1.5 W/m2K', 'window shading': 0.3 },
      rooms: { den: { 'floor area': 14 } },
    },
    household: { 'moisture factor': 1.2 },
  };
  expect(words(raw)).toEqual([
    ...['air leakage at 50 Pa (4.00/h)', 'moisture factor (1.20)', 'window shading (0.300)'],
    'wall U-value (1.50 W/m2K)',
  ]);
  expect(statedForCertain(raw, []).at(-1)).toMatchObject({ kind: 'U-value', name: 'wall U-value' });
  const doubts = [
    { path: '/home/leakage/ach50', low: 2, high: 8 },
    { path: '/household/moisture factor', low: 0.5, high: 2 },
  ];
  expect(words(raw, doubts)).toEqual([...['window shading (0.300)', 'wall U-value (1.50 W/m2K)']]);
});

test('so is all that a fit would move if it were assumed, room by room too', () => {
  const raw = {
    ...{ title: 'A', weather: 'w.csv', site: { latitude: 54, longitude: -2 } },
    home: {
      'deep moisture': 0,
      rooms: { den: { 'floor area': 14, 'steady moisture': 20, 'steady heat': '15 W' } },
    },
    household: { 'open when mild': 0.02 },
  };
  expect(words(raw)).toEqual([
    ...['windows left open when mild (0.0200)', 'deep moisture (0)'],
    ...['steady moisture (den) (20.0 g/h)', 'steady heat (den) (15.0 W)'],
  ]);
});

test('no two numbers that a fit may move have one name or one place', () => {
  const all = [...Object.values(PLACES), ...U_VALUES, ...CAPACITIES];
  expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  expect(new Set(all.map(({ steps }) => steps.join('/'))).size).toBe(all.length);
});
