import { expect, test } from 'vitest';
import { statedForCertain } from '../../../src/scenario/edits/adjustables.ts';

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
  expect(statedForCertain(raw, [])).toEqual([
    ...['air leakage at 50 Pa (4.00/h)', 'moisture factor (1.20)', 'wall U-value (1.50 W/m2K)'],
    'window shading (0.300)',
  ]);
  const doubts = [
    { path: '/home/leakage/ach50', low: 2, high: 8 },
    { path: '/household/moisture factor', low: 0.5, high: 2 },
  ];
  expect(statedForCertain(raw, doubts)).toEqual([
    ...['wall U-value (1.50 W/m2K)', 'window shading (0.300)'],
  ]);
});
