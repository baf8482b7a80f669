import { expect, test } from 'vitest';
import {
  createLedgerAccumulator,
  finishLedger,
} from '../../../src/engine/ledger/ledger-accumulator.ts';

const none = (): Float64Array => new Float64Array(1);
const stores = (species: number) => ({
  energy: none(),
  water: none(),
  species: [Float64Array.of(species)],
});

/** The residual of a species of which one term was booked and the store changed by so much. */
function speciesResidual(booked: number, before: number, after: number): number {
  const ledger = createLedgerAccumulator(1, 0, 1, [0]);
  ledger.species[0] = booked;
  const air = { net: none(), through: none(), density: 1.2 };
  return finishLedger(ledger, stores(before), stores(after), air, [0]).residual.species[0]!;
}

test('a residual is what was booked and is not found, over all that passed', () => {
  expect(speciesResidual(10, 0, 9)).toBeCloseTo(0.1, 12);
  expect(speciesResidual(10, 0, 10)).toBe(0);
});

test('numbers too small to have digits left count as nothing', () => {
  expect(speciesResidual(5e-324, 0, 1e-323)).toBeLessThan(1e-30);
  expect(speciesResidual(0, 0, 0)).toBe(0);
});
