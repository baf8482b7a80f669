import { expect, test } from 'vitest';
import { namesInWords } from '../../../src/report/tables/fit-kinds.ts';
import { PLACES } from '../../../src/scenario/edits/fit-places.ts';

test('a name of several rooms is explained once, what is plain by itself not at all', () => {
  const kinds = ['thermostat', 'thermostat of cooling', 'thermostat', 'windows left open'] as const;
  expect(namesInWords(kinds)).toEqual([expect.stringMatching(/^thermostat error: .* cooler /)]);
  expect(namesInWords([])).toEqual([]);
});

test('what is explained stands under the name that it has', () => {
  for (const { kind, name } of Object.values(PLACES)) {
    for (const line of namesInWords([kind])) expect(name).toContain(line.split(':')[0]);
  }
});

test('whatever a fit moves has words, but for those that say it themselves', () => {
  const { openWhenMild, airChanges, leakageArea, ...others } = PLACES;
  for (const { kind } of Object.values(others)) expect(namesInWords([kind]), kind).toHaveLength(1);
  for (const { kind } of [openWhenMild, airChanges, leakageArea]) {
    expect(namesInWords([kind])).toEqual([]);
  }
  expect(namesInWords(['steady heat', 'steady moisture', 'heat loss'])).toHaveLength(3);
});
