import { expect, test } from 'vitest';
import { devicesKwh, waterTaken } from '../../../src/measures/energy/device-totals.ts';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { somePlan } from '../../studies/some-plan.ts';

const detail = (water_kg: number) => ({ water_kg }) as PlanMeasures['devices']['detail'][string];
const plan: PlanMeasures = {
  ...somePlan('as-lived'),
  devices: {
    electricity_kwh: 1500,
    gas_kwh: 0,
    by_device: { dryer: 120, wet: 30, fan: 8 },
    detail: { dryer: detail(-250), wet: detail(40), fan: detail(0) },
  },
};

test('electricity of devices leaves out that of appliances', () => {
  expect(devicesKwh(plan)).toBe(158);
});

test('water taken out is not set against water that humidifiers give', () => {
  expect(waterTaken(plan)).toBe(250);
});
