import type { Problem } from '../../units/problem.ts';
import { throwProblems } from '../throw-problems.ts';
import { TYPICAL_YEAR } from '../typical-year.ts';
import { tooSunny } from './make-sun.ts';
import type { WeatherRecipe } from './recipe.ts';

/**
 * Refuse a recipe that no year can be made from. Problems name the keys of the recipe file.
 *
 * @param file  its name, for messages
 * @throws InputProblems with everything that is wrong
 */
export function checkRecipe(recipe: WeatherRecipe, file = 'recipe'): void {
  const problems: Problem[] = [];
  const complain = (key: string, expected: string, got: string, month = '') => {
    const where = month === '' ? key : `${key}, ${month}`;
    const place = { file, line: 0, column: 0, where, path: key.split('.') };
    problems.push({ ...place, expected, got, hint: '' });
  };
  for (const [where, [low, high], unit, kind] of FIELDS) {
    const value = valueAt(recipe, where);
    if (value === undefined && OPTIONAL.includes(where)) continue;
    const range = `${low} to ${high}${unit}`;
    if (kind === 'one') {
      if (!isWithin(value, low, high)) complain(where, range, words(value));
    } else if (!Array.isArray(value) || value.length !== 12) {
      complain(where, `twelve numbers, each ${range}`, words(value));
    } else {
      value.forEach((number, k) => {
        if (!isWithin(number, low, high)) complain(where, range, words(number), MONTHS[k]);
      });
    }
  }
  if (typeof valueAt(recipe, 'title') !== 'string') {
    complain('title', 'a text', words(valueAt(recipe, 'title')));
  }
  const suns = ['sun.global', 'sun.clearness'].filter((key) => valueAt(recipe, key) !== undefined);
  if (suns.length !== 1) {
    complain('sun', 'either global or clearness', suns.length === 0 ? 'neither' : 'both');
  }
  throwProblems(problems);
  const kWh = (value: number): string => `${value.toFixed(2)} kWh/m2 a day`;
  // Rounded down, so that what is told would be taken; in a winter of the north a rounding is the rest.
  const down = (value: number): number => Math.floor(value * 100) / 100;
  const key = recipe.sun.global === undefined ? 'sun.clearness' : 'sun.global';
  for (const { month, most, asked } of tooSunny(recipe, START)) {
    complain(key, `at most ${kWh(down(most))}, nearly always clear sky`, kWh(asked), MONTHS[month]);
  }
  throwProblems(problems);
}

/** What stands at a dotted path of file keys. */
function valueAt(recipe: unknown, path: string): unknown {
  let here = recipe;
  for (const key of path.replaceAll(/ (.)/g, (_, c: string) => c.toUpperCase()).split('.')) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string, unknown>)[key];
  }
  return here ?? undefined;
}

function isWithin(value: unknown, low: number, high: number): boolean {
  return typeof value === 'number' && value >= low && value <= high;
}

function words(got: unknown): string {
  if (got === undefined || got === null) return 'nothing';
  if (Array.isArray(got)) return `a list of ${got.length}`;
  return typeof got === 'object' ? 'a group of keys' : `${JSON.stringify(got) ?? got}`;
}

type Field = readonly [
  path: string,
  range: readonly [number, number],
  unit: string,
  kind: 'one' | 'twelve',
];

const FIELDS: readonly Field[] = [
  ['latitude', [-66, 66], ' degrees north', 'one'], // the sun must rise every day
  ['longitude', [-180, 180], ' degrees east', 'one'],
  ['elevation', [-450, 6000], ' m', 'one'],
  ['temperature.mean', [-50, 45], ' °C', 'twelve'],
  ['temperature.daily range', [0.5, 30], ' K', 'twelve'],
  ['temperature.day to day', [0, 15], ' K', 'twelve'],
  ['temperature.persistence', [0, 0.95], '', 'one'],
  ['relative humidity', [5, 98], ' %', 'twelve'],
  ['wind.mean', [0, 25], ' m/s', 'twelve'],
  ['wind.persistence', [0, 0.95], '', 'one'],
  ['wind.prevailing', [0, 360], ' degrees', 'one'],
  ['sun.global', [0.02, 10], ' kWh/m2 a day', 'twelve'],
  ['sun.clearness', [0.05, 0.75], '', 'twelve'],
  ['sun.persistence', [0, 0.95], '', 'one'],
];
const START = Date.UTC(TYPICAL_YEAR, 0) / 1000;
const OPTIONAL: readonly string[] = ['sun.global', 'sun.clearness'];
const MONTHS: readonly string[] = [
  ...['January', 'February', 'March', 'April', 'May', 'June'],
  ...['July', 'August', 'September', 'October', 'November', 'December'],
];
