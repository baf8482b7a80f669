import { expect, test } from 'vitest';
import { namesInWords } from '../../../src/report/tables/name-words.ts';
import { PLACES, steadyHeat, steadyMoisture } from '../../../src/scenario/edits/fit-places.ts';

test('a name of several rooms is explained once, what is plain by itself not at all', () => {
  const names = [
    'thermostat error (den)',
    'thermostat error (hall)',
    'windows left open when mild',
  ];
  expect(namesInWords(names)).toEqual([expect.stringMatching(/^thermostat error: .* cooler /)]);
  expect(namesInWords([])).toEqual([]);
});

test('whatever a fit moves has words, but for those that say it themselves', () => {
  const { openWhenMild, airChanges, leakageArea, ...others } = PLACES;
  for (const { name } of [...Object.values(others), steadyHeat('den'), steadyMoisture('den')]) {
    expect(namesInWords([name]), name).toHaveLength(1);
  }
  for (const { name } of [openWhenMild, airChanges, leakageArea]) {
    expect(namesInWords([name])).toEqual([]);
  }
});
