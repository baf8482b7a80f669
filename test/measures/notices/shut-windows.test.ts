import { expect, test } from 'vitest';
import { shutWindows } from '../../../src/measures/notices/shut-windows.ts';

const home = { openings: [{ name: 'window', room: 0, area: 1, height: 1, azimuth: 0 }] };

test('a year in which no window opens is told, with the place where airing is said', () => {
  expect(shutWindows(home, [0, 0], 8760)).toEqual([
    {
      id: 'windows-shut-all-year',
      text: 'No window is opened in the whole year. People open windows on warm days and most bedrooms on winter mornings: say so under household, airing, or summers come out too hot and rooms too damp.',
    },
  ]);
});

test.each([
  ['a quarter of an hour of one window', home, [0, 0.25], 8760],
  ['a month', home, [0, 0], 720],
  ['a home without windows that open', { openings: [] }, [0, 0], 8760],
] as const)('%s is not', (_what, of, hoursOpen, hours) => {
  expect(shutWindows(of, hoursOpen, hours)).toEqual([]);
});
