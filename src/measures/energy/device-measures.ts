import type { Run } from '../../engine/run.ts';
import type { Home } from '../../home/home.ts';
import type { DeviceMeasures, PlanMeasures } from '../plan-measures.ts';
import type { DeviceUse } from './device-use.ts';
import type { FuelUse } from './energy-use.ts';

/**
 * Electricity of appliances and devices together, gas of activities, and what each device did.
 *
 * @param stoveHours  by device, see StoveHours [h]
 */
export function devicesMeasures(
  home: Home,
  uses: readonly FuelUse[],
  use: (device: number) => DeviceUse,
  control: Run['control'],
  stoveHours: readonly (number | null)[],
): PlanMeasures['devices'] {
  const detail = byDevice(home, use, control, stoveHours);
  return {
    electricity_kwh: otherOf('electricity', uses),
    gas_kwh: otherOf('gas', uses),
    by_device: Object.fromEntries(
      Object.entries(detail).map(([name, own]) => [name, own.electricity_kwh]),
    ),
    detail,
  };
}

const otherOf = (fuel: FuelUse['fuel'], uses: readonly FuelUse[]): number =>
  uses.reduce((sum, use) => (use.fuel === fuel ? sum + use.otherKwh : sum), 0);

/** Figures of each device by name; starts and emptyings are what its controls counted. */
function byDevice(
  { devices }: Home,
  use: (device: number) => DeviceUse,
  control: Run['control'],
  stoveHours: readonly (number | null)[],
): Record<string, DeviceMeasures> {
  const counted = control?.devices ?? [];
  return Object.fromEntries(
    devices.map(({ name }, d) => {
      const own = use(d);
      const sum = (what: 'starts' | 'emptied'): number =>
        counted.reduce((total, c) => (c.device === d ? total + c[what] : total), 0);
      const figures: DeviceMeasures = {
        electricity_kwh: own.electricityKwh,
        electricity_money: own.electricityCost,
        fuel_kwh: own.fuelKwh,
        water_kg: own.waterKg,
        heat_kwh: own.heatKwh,
        hours: own.hours,
        starts: sum('starts'),
        emptied: sum('emptied'),
        hours_4_pa_below_outdoors: stoveHours[d] ?? null,
      };
      return [name, figures];
    }),
  );
}
