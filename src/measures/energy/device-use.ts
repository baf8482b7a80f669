import type { TraceView } from '../../engine/trace.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';

/** What one device drew and did over the period. */
export interface DeviceUse {
  readonly electricityKwh: number;
  /** Wood burned. */
  readonly fuelKwh: number;
  /** Added to rooms, negative where taken out. */
  readonly waterKg: number;
  readonly heatKwh: number;
  /** Hours of running; half an hour at full output and an hour at half are the same. */
  readonly hours: number;
}

/** Adds up each device's trace. */
export function createDeviceUse(devices: number): {
  observe(trace: TraceView): void;
  result(device: number): DeviceUse;
} {
  const electricity = new Float64Array(devices); // J
  const fuel = new Float64Array(devices); // J
  const water = new Float64Array(devices); // kg
  const heat = new Float64Array(devices); // J
  const ran = new Float64Array(devices); // s

  function observe({ steps, dt, home }: TraceView): void {
    for (let d = 0; d < devices; d++) {
      const own = home.devices[d]!;
      let drawn = electricity[d]!;
      let burned = fuel[d]!;
      let wetted = water[d]!;
      let warmed = heat[d]!;
      let time = ran[d]!;
      for (let s = 0; s < steps; s++) {
        drawn += own.electricity[s]! * dt;
        burned += own.fuel[s]! * dt;
        wetted += own.water[s]! * dt;
        warmed += own.heat[s]! * dt;
        time += own.share[s]! * dt;
      }
      electricity[d] = drawn;
      fuel[d] = burned;
      water[d] = wetted;
      heat[d] = warmed;
      ran[d] = time;
    }
  }

  const result = (d: number): DeviceUse => ({
    electricityKwh: electricity[d]! / JOULES_PER_KWH,
    fuelKwh: fuel[d]! / JOULES_PER_KWH,
    waterKg: water[d]!,
    heatKwh: heat[d]! / JOULES_PER_KWH,
    hours: ran[d]! / 3600,
  });

  return { observe, result };
}
