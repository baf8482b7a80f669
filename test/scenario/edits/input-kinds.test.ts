import { expect, test } from 'vitest';
import { canMatter, inputRank, movesSummerHeat } from '../../../src/scenario/edits/input-kinds.ts';

// The ranks are common practice of this project, said in the doc of `inputRank`; what is held here
// is which places count as one kind, and that longer and shorter paths are not taken for it.

test.each([
  ['/home/leakage/ach50', '/home/leakage/area'],
  ['/household/activities/0/water', '/household/activities/12/water'],
  ['/home/cold spot factor', '/home/rooms/a~1b/cold spot factor'],
  ['/devices/dryer/label', '/devices/fan/flow'],
  ['/home/build/roof u-value', '/home/build/floor u-value'],
])('%s and %s are of one kind', (one, other) => {
  expect(inputRank(one)).not.toBeNull();
  expect(inputRank(other)).toBe(inputRank(one));
});

test('leakage comes before water, water before the price of a fuel', () => {
  const places = ['/home/leakage/ach50', '/household/activities/0/water', '/money/gas/price'];
  const ranks = places.map((place) => inputRank(place)!);
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
  expect(new Set(ranks).size).toBe(3);
});

test('cooling moves less than heating, its setpoint most', () => {
  const places = ['/heating/setpoint', '/cooling/setpoint', '/cooling/power', '/cooling/eer'];
  const ranks = places.map((place) => inputRank(place)!);
  expect(ranks).toEqual([...new Set(ranks)].toSorted((a, b) => a - b));
});

test.each([
  '/home/leakage',
  '/home/build/leakage/ach50',
  '/household/activities/0/water/cold',
  '/household/activities/water',
  '/devices/power',
  '',
])('"%s" is of no kind', (place) => {
  expect(inputRank(place)).toBeNull();
});

test('carbon, particles and directions cannot matter, wherever they stand', () => {
  expect(canMatter('/money/gas/carbon')).toBe(false);
  expect(canMatter('/home/rooms/den/paint/age')).toBe(false);
  expect(canMatter('/home/rooms/den/faces')).toBe(false);
  expect(canMatter('/money/gas/price')).toBe(true);
});

test('a room or a device may bear such a name', () => {
  expect(canMatter('/home/rooms/paint/cold spot factor')).toBe(true);
  expect(canMatter('/devices/carbon/power')).toBe(true);
});

test('sun, shell and open windows move how warm a home gets, boilers and prices do not', () => {
  const moves = ['/home/build/window shading', '/home/build/loft', '/home/leakage/ach50'];
  const more = ['/household/usual airing', '/home/rooms/den/panes/0/area'];
  for (const place of [...moves, ...more]) expect(movesSummerHeat(place), place).toBe(true);
  const others = ['/heating/efficiency', '/money/gas/price', '/home/rooms/loft/floor area'];
  for (const place of others) expect(movesSummerHeat(place), place).toBe(false);
});
