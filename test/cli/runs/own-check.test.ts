import { expect, test } from 'vitest';
import { ownCheck } from '../../../src/cli/runs/own-check.ts';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';

function plan(name: string, energy: number, pollutant = 0): PlanMeasures {
  const balance = {
    energy_residual: energy,
    water_residual: 0,
    air_residual: 0,
    pollutant_residual: pollutant,
  };
  return { plan: name, balance } as unknown as PlanMeasures;
}

test('balances that close to a millionth pass', () => {
  expect(() => ownCheck([plan('a', 1e-6), plan('b', -1e-6, 1e-13)])).not.toThrow();
});

test('every balance that does not close is named, NaN among them', () => {
  expect(() => ownCheck([plan('as lived', 0), plan('nineteen', -2e-6, Number.NaN)])).toThrow(
    'A balance of the simulation does not close to 0.000001, so do not trust these figures:\n' +
      '  nineteen: energy residual -2.0e-6\n' +
      '  nineteen: pollutant residual NaN\n' +
      'This is a fault of roombalance, not of your files.',
  );
});
