import { expect, test } from 'vitest';
import { areSeveral, thingWords } from '../../../src/studies/purchase/thing-words.ts';

const things = (...names: string[]) => names.map((what) => ({ what }));

test.each([
  ...['dehumidifier', 'fan', 'extract fan, fitted', 'Luftreiniger', 'a set of screens'],
  ...['glass', 'gas boiler', 'a lens', 'filter for two rooms', 'heater with valves'],
  ...[
    'heat pump (and tank)',
    'draught-proofing',
    'one of the valves',
    'a heater and fan',
    'bus',
    'chassis',
    '',
  ],
])('%j is one thing', (name) => {
  expect(areSeveral(things(name))).toBe(false);
});

test.each([
  ...['purifiers', 'seven smart valves', 'air conditioners', 'Screens', 'heaters for one room'],
  ...['insulation and draught-proofing', 'two Luftreiniger', '3 × fan', '2x filter', 'CO2 sensors'],
  ...['stove & pipe', 'radios', 'valves (smart)'],
])('%j are several', (name) => {
  expect(areSeveral(things(name))).toBe(true);
});

test('nothing is not several, two purchases are, alike or not', () => {
  expect(areSeveral([])).toBe(false);
  expect(areSeveral(things('purifier', 'purifier'))).toBe(true);
  expect(areSeveral(things('purifier', 'filter'))).toBe(true);
});

test('things alike are counted where they are named', () => {
  expect(thingWords(things('purifier'))).toBe('purifier');
  expect(thingWords(things('purifier', 'filter', 'purifier'))).toBe('2 × purifier and filter');
});
