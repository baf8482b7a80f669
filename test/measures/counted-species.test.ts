import { expect, test } from 'vitest';
import { countedSpecies } from '../../src/measures/counted-species.ts';

test('what scenarios name themselves stands once behind what is known, as a pollutant', () => {
  const facts = { unit: 'Bq/m3', mean_outdoors: 10 };
  const radon = { radon: { ...facts, label: 'Radon' } };
  const co2 = { co2: { unit: 'ppm', mean_outdoors: 420, label: 'CO2' } };
  const known = countedSpecies([]);
  expect(known.map(({ name }) => name)).toContain('co2');
  expect(countedSpecies([{ species: co2 }])).toEqual(known);
  const own = { name: 'radon', symbol: 'Radon', role: 'pollutant', counted: 'any time' };
  expect(countedSpecies([{ species: { ...co2, ...radon } }, { species: radon }])).toEqual([
    ...known,
    own,
  ]);
});
