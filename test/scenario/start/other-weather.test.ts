import { expect, test } from 'vitest';
import { otherWeather } from '../../../src/scenario/start/other-weather.ts';

const HOW =
  'For real weather: roombalance weather fetch, or roombalance weather import of a file in TMY3, PVGIS, ISD-Lite or any CSV, and its name behind "weather:".';
const invented = {
  title: 'Saltmere, invented typical year',
  latitude: 54.2,
  sun: 'invented',
} as const;
const at = (latitude: number) => ({ latitude, longitude: 0 });

test.each([
  [
    55.9,
    `The weather is not that of this home: it is that of an invented town 1.7° further south (Saltmere, invented typical year, latitude 54.2). ${HOW}`,
  ],
  [
    54.2,
    `The weather is not that of this home: it is that of an invented town as far north (Saltmere, invented typical year, latitude 54.2). ${HOW}`,
  ],
])('invented weather at latitude %f', (latitude, words) => {
  expect(otherWeather(at(latitude), invented)).toBe(words);
});

test('real weather is spoken of where it is of far away', () => {
  const real = { title: 'Harbour', latitude: 57, sun: 'measured' } as const;
  expect(otherWeather(at(55.1), real)).toBeNull();
  expect(otherWeather(at(54.9), real)).toContain('2.1° further north');
  expect(otherWeather(at(51.5), real)).toContain(
    'it is that of a place 5.5° further north (Harbour, latitude 57.0). For real',
  );
});
