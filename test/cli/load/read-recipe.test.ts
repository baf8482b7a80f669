import { expect, test } from 'vitest';
import { readRecipe } from '../../../src/cli/load/read-recipe.ts';

const twelve = (n: number) => JSON.stringify(Array(12).fill(n));
const RECIPE = `title: Nowhere
latitude: 54
longitude: -2
elevation: 30
temperature:
  mean: ${twelve(9)}
  daily range: ${twelve(6)}
  day to day: ${twelve(2)}
  persistence: 0.7
relative humidity: ${twelve(82)}
wind: { mean: ${twelve(4)}, persistence: 0.5, prevailing: 240 }
sun: { clearness: ${twelve(0.4)}, persistence: 0.3 }
`;

/** What is said about a recipe. */
function said(yaml: string): string[] {
  try {
    readRecipe(yaml, 'r.yaml');
    return [];
  } catch (error) {
    return (error as Error).message.split('\n');
  }
}

test('a right recipe is read', () => {
  const recipe = readRecipe(RECIPE, 'r.yaml');
  expect(recipe.temperature.dailyRange).toHaveLength(12);
  expect(recipe.sun).toEqual({ clearness: Array(12).fill(0.4), persistence: 0.3 });
});

test('what nobody knows of a place is taken as usual, and told', () => {
  const few = `title: Nowhere
latitude: 54
longitude: -2
elevation: 30
temperature: { mean: ${twelve(9)} }
relative humidity: ${twelve(82)}
wind: { mean: ${twelve(4)} }
sun: { global: ${twelve(0.7)} }
`;
  const { temperature, wind, sun, usual } = readRecipe(few, 'r.yaml');
  expect(temperature).toMatchObject({ dailyRange: Array(12).fill(7), dayToDay: Array(12).fill(3) });
  expect([temperature.persistence, wind.persistence, sun.persistence]).toEqual([0.75, 0.5, 0.45]);
  expect(wind.prevailing).toBe(240);
  expect(usual).toEqual([
    ...['daily range 7 K', 'day to day 3 K', 'persistence of temperature 0.75'],
    ...['persistence of wind 0.5', 'wind from 240°', 'persistence of sun 0.45'],
  ]);
  expect(readRecipe(RECIPE, 'r.yaml').usual).toEqual([]);
});

test('unknown keys and wrong kinds are all told, with the nearest name', () => {
  const wrong = RECIPE.replace('daily range', 'dayly range').replace(
    'prevailing: 240',
    'prevailing: west',
  );
  expect(said(wrong)).toEqual([
    expect.stringMatching(
      /^r\.yaml:7:3: temperature\.dayly range: .* got "dayly range", which is not known \(did you mean "daily range"\?\)$/,
    ),
    expect.stringMatching(/^r\.yaml:11:\d+: wind\.prevailing: expected a number, got "west"$/),
  ]);
});

test('numbers that no year can have stand at their place, in the words of the file', () => {
  const wrong = RECIPE.replace(twelve(6), '[6,6,66,6,6,6,6,6,6,6,6,6]').replace(
    'elevation: 30',
    'elevation: 30000',
  );
  expect(said(wrong)).toEqual([
    'r.yaml:4:12: elevation: expected -450 to 6000 m, got 30000',
    'r.yaml:7:16: temperature.daily range, March: expected 0.5 to 30 K, got 66',
  ]);
});

test('eleven months are told', () => {
  expect(said(RECIPE.replace(twelve(82), '[82]'))[0]).toMatch(
    /^r\.yaml:10:20: relative humidity: expected twelve numbers, each 5 to 98 %, got a list of 1$/,
  );
});
