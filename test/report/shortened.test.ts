import { expect, test } from 'vitest';
import { shortened, shortenedApart } from '../../src/report/shortened.ts';

test('a long name gives up its end', () => {
  expect(shortened('dry-bedroom', 20)).toBe('dry-bedroom');
  expect(shortened('dry-bedroom', 6)).toBe('dry-b…');
  expect(shortened('🏠🏠🏠🏠', 3)).toBe('🏠🏠…');
});

test('names that begin alike are told apart by their ends', () => {
  const names = [
    'Schlafzimmer immer auf 18 °C',
    'Schlafzimmer immer auf 19 °C',
    'as it is, with laundry',
  ];
  expect(shortenedApart(names, 16)).toEqual([
    'Schlafzi…f 18 °C',
    'Schlafzi…f 19 °C',
    'as it is, with …',
  ]);
  expect(shortenedApart(['a', 'b'], 16)).toEqual(['a', 'b']);
});
