import { expect, test } from 'vitest';
import { CARRIED_TERMS, ENERGY_TERMS, WATER_TERMS } from '../../src/engine/ledger/ledger.ts';
import { ENERGY_WORDS, WATER_WORDS } from '../../src/report/ledger-words.ts';

test('air carries heat and water by the same ways, told in the same words', () => {
  const words = [
    'leakage',
    'open windows',
    'extract fans',
    'stove draught',
    'supply air',
    'doorways',
  ];
  expect(CARRIED_TERMS.map((term) => ENERGY_WORDS[term])).toEqual(words);
  expect(CARRIED_TERMS.map((term) => WATER_WORDS[term])).toEqual(words);
});

test('every way has words of its own', () => {
  expect(new Set(Object.values(ENERGY_WORDS)).size).toBe(ENERGY_TERMS.length);
  expect(new Set(Object.values(WATER_WORDS)).size).toBe(WATER_TERMS.length);
});
