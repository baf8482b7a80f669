import { expect, test } from 'vitest';
import { weatherElsewhere } from '../../../src/scenario/notices/weather-elsewhere.ts';

const HOME = { latitude: 48, longitude: 11, elevation: 100 };
const told = (latitude: number, elevation: number, longitude = 11) =>
  weatherElsewhere(HOME, { latitude, longitude, elevation }).map(({ text }) => text);

test('weather of another climate is told with how far off it is', () => {
  expect(told(54.2, 100)).toEqual([
    'The weather is of a place 6.2° further north than the home: heat, damp, sun and money are those of the climate there.',
  ]);
  expect(told(45.9, 100)[0]).toContain('a place 2.1° further south than the home');
  // 0.0065 K a metre: 6.5 K in a kilometre.
  expect(told(48, 1100)).toEqual([
    'The weather is of a place 1000 m higher than the home: heat, damp, sun and money are those of the climate there, which by its height alone is some 7 °C colder.',
  ]);
  expect(told(54.2, -300)[0]).toContain('6.2° further north and 400 m lower than the home');
  expect(told(54.2, -300)[0]).toContain('some 3 °C warmer');
});

test('longitude counts the shorter way round', () => {
  expect(told(48, 100, -1)[0]).toContain('of a place 12° further west than the home');
  expect(told(54, 500, -171)[0]).toContain(
    '6.0° further north, 178° further east and 400 m higher',
  );
  expect(told(48, 100, 20)).toEqual([]);
});

test('weather from next door is no matter', () => {
  expect(told(49.9, 100)).toEqual([]);
  expect(told(48, 390)).toEqual([]);
});
