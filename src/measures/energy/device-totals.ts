import type { PlanMeasures } from '../plan-measures.ts';

/** Electricity of all devices. [kWh] */
export const devicesKwh = ({ devices }: PlanMeasures): number =>
  Object.values(devices.by_device).reduce((sum, kwh) => sum + kwh, 0);

/** Water that devices took out of the air. [kg] */
export const waterTaken = ({ devices }: PlanMeasures): number =>
  Object.values(devices.detail).reduce((sum, { water_kg }) => sum + Math.max(0, -water_kg), 0);
