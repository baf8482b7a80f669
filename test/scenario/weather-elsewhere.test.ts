import { expect, test } from 'vitest';
import { weatherElsewhere } from '../../src/scenario/weather-elsewhere.ts';

const HOME = { latitude: 48, elevation: 100 };
const told = (latitude: number, elevation: number) =>
  weatherElsewhere(HOME, { latitude, elevation }).map(({ text }) => text);

test('weather of another climate is told with how far off it is', () => {
  expect(told(54.2, 100)).toEqual([
    'The weather is of a place 6.2° further north than the home: heat, damp, sun and money are those of the climate there.',
  ]);
  expect(told(45.9, 100)[0]).toContain('a place 2.1° further south than the home');
  // 0.0065 K a metre: 6.5 K in a kilometre.
  expect(told(48, 1100)).toEqual([
    'The weather is of a place 1000 m higher than the home: heat, damp, sun and money are those of the climate there, which by its height alone is some 7 K colder.',
  ]);
  expect(told(54.2, -300)[0]).toContain('6.2° further north and 400 m lower than the home');
  expect(told(54.2, -300)[0]).toContain('some 3 K warmer');
});

test('weather from next door is no matter', () => {
  expect(told(49.9, 100)).toEqual([]);
  expect(told(48, 390)).toEqual([]);
});
