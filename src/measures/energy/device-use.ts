import type { TraceView } from '../../engine/record/trace.ts';
import type { Prices } from '../../home/prices.ts';
import { meanPriceOf } from '../../physics/economics/mean-price.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';

/** What one device drew and did over the period. */
export interface DeviceUse {
  readonly electricityKwh: number;
  /** Cost of that at the tariff of each moment [currency]; null where electricity has no price. */
  readonly electricityCost: number | null;
  /** Wood burned. */
  readonly fuelKwh: number;
  /** Added to rooms, negative where taken out. */
  readonly waterKg: number;
  readonly heatKwh: number;
  /** Hours of running; half an hour at full output and an hour at half are the same. */
  readonly hours: number;
}

/** Adds up each device's trace. */
export function createDeviceUse(
  devices: number,
  { fuels }: Prices,
): {
  observe(trace: TraceView): void;
  result(device: number): DeviceUse;
} {
  const electricity = new Float64Array(devices); // J
  const cost = new Float64Array(devices); // currency/kWh J
  const tariff = fuels.electricity?.tariff;
  const price = meanPriceOf(tariff);
  const fuel = new Float64Array(devices); // J
  const water = new Float64Array(devices); // kg
  const heat = new Float64Array(devices); // J
  const ran = new Float64Array(devices); // s

  function observe({ steps, dt, start, home }: TraceView): void {
    for (let d = 0; d < devices; d++) {
      const own = home.devices[d]!;
      let drawn = electricity[d]!;
      let paid = cost[d]!;
      let burned = fuel[d]!;
      let wetted = water[d]!;
      let warmed = heat[d]!;
      let time = ran[d]!;
      for (let s = 0; s < steps; s++) {
        const used = own.electricity[s]! * dt;
        drawn += used;
        if (used !== 0) paid += used * price(start + s * dt, dt);
        burned += own.fuel[s]! * dt;
        wetted += own.water[s]! * dt;
        warmed += own.heat[s]! * dt;
        time += own.share[s]! * dt;
      }
      electricity[d] = drawn;
      cost[d] = paid;
      fuel[d] = burned;
      water[d] = wetted;
      heat[d] = warmed;
      ran[d] = time;
    }
  }

  const result = (d: number): DeviceUse => ({
    electricityKwh: electricity[d]! / JOULES_PER_KWH,
    electricityCost: tariff === undefined ? null : cost[d]! / JOULES_PER_KWH,
    fuelKwh: fuel[d]! / JOULES_PER_KWH,
    waterKg: water[d]!,
    heatKwh: heat[d]! / JOULES_PER_KWH,
    hours: ran[d]! / 3600,
  });

  return { observe, result };
}
