import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import type { PlanMeasures } from '../plan-measures.ts';
import type { FuelUse } from './energy-use.ts';

/** Heat that coolers removed, with the latent heat of the water on their coils. */
export interface CoolingUse {
  observe(trace: TraceView): void;
  /** Of one room, by all its coolers. [kWh] */
  removed(room: number): number;
}

export function createCoolingUse({ rooms, cooling = [] }: Home): CoolingUse {
  const heat = new Float64Array(rooms.length); // J

  function observe({ steps, dt, home: { coolers } }: TraceView): void {
    cooling.forEach(({ room }, c) => {
      const { removed } = coolers[c]!;
      let sum = heat[room]!;
      for (let s = 0; s < steps; s++) sum += removed[s]! * dt;
      heat[room] = sum;
    });
  }

  return { observe, removed: (room) => heat[room]! / JOULES_PER_KWH };
}

/**
 * Heat removed from rooms and what was bought for it; no fuel at all where nothing cools.
 *
 * @param removed  from each room [kWh]
 */
export function coolingMeasures(
  { cooling = [] }: Home,
  removed: readonly number[],
  uses: readonly FuelUse[],
): PlanMeasures['cooling'] {
  const bought = cooling.length === 0 ? [] : uses.filter(({ fuel }) => fuel === 'electricity');
  return {
    removed_kwh: removed.reduce((sum, kwh) => sum + kwh, 0),
    delivered_kwh: Object.fromEntries(bought.map(({ fuel, coolKwh }) => [fuel, coolKwh])),
  };
}

/** What was bought for cooling, of all fuels. [kWh] */
export const boughtForCooling = ({ cooling }: Pick<PlanMeasures, 'cooling'>): number =>
  Object.values(cooling.delivered_kwh).reduce((sum, kwh) => sum + kwh, 0);
