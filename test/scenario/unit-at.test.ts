import { expect, test } from 'vitest';
import { unitAt } from '../../src/scenario/unit-at.ts';
import { modelOf } from '../../src/scenario/validate.ts';

const model = modelOf({});

test.each([
  ['/heating/power', 'W'],
  ['/home/rooms/den/openings/0/height', 'm'], // of a room by name, of an opening by number
  ['/household/airing/0/lasts', 'min'], // beside a word that stands for habits
  ['/household/bodies/awake/co2', 'm3/h'],
  ['/air/outdoors/pm25', 'µg/m3'],
  ['/home/rooms/den/faces', '°'],
  ['/heating/season/mean below', '°C'], // of a key that may be a word
])('the unit of %s is %s', (pointer, unit) => {
  expect(unitAt(model, pointer)).toBe(unit);
});

test.each([
  '/home/cold spot factor', // a number without a unit
  '/home/nothing/here',
  '/heating',
  'not a pointer',
])('%s has none', (pointer) => {
  expect(unitAt(model, pointer)).toBe('');
});
