import { expect, test } from 'vitest';
import type { FuelUse } from '../../../src/measures/energy/energy-use.ts';
import { priceOfHeat } from '../../../src/measures/energy/heating-measures.ts';

const use = (sourceCost: number | null): FuelUse => ({
  fuel: 'gas',
  heats: true,
  heatKwh: 100,
  coolKwh: 0,
  otherKwh: 0,
  cost: sourceCost,
  winterCost: sourceCost,
  sourceCost,
  costByUse: null,
});

test('a kilowatt-hour of heat costs what all fuels for it cost over what came out', () => {
  expect(priceOfHeat([use(12), use(0), use(3)], 100)).toBeCloseTo(0.15, 12);
});

test('heat that was not given, or whose price nobody knows, has none', () => {
  expect(priceOfHeat([use(12)], 0)).toBeNull();
  expect(priceOfHeat([use(12), use(null)], 100)).toBeNull();
});
