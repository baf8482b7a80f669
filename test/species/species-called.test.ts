import { expect, test } from 'vitest';
import { speciesCalled } from '../../src/species/species-lists.ts';

test.each([
  ['Carbon Dioxide', 'co2'],
  [' carbon_dioxide ', 'co2'],
  ['PM2.5', 'pm25'],
  ['dust', 'pm25'],
  ['NOx', 'no2'],
  ['nitrogen-dioxide', 'no2'],
  ['VOCs', 'tvoc'],
  ['grass pollen', 'pollen'],
  ['radon', null],
])('what people call %j is %j', (typed, name) => {
  expect(speciesCalled(typed)).toBe(name);
});
