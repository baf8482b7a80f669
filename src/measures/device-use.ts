import type { TraceStretch } from '../engine/trace.ts';
import { JOULES_PER_KWH } from '../units/joules-per-kwh.ts';

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
  observe(stretch: TraceStretch): void;
  result(device: number): DeviceUse;
} {
  const electricity = new Float64Array(devices); // J
  const fuel = new Float64Array(devices); // J
  const water = new Float64Array(devices); // kg
  const heat = new Float64Array(devices); // J
  const ran = new Float64Array(devices); // s

  function observe({ steps, dt, home }: TraceStretch): void {
    for (let d = 0; d < devices; d++) {
      const own = home.devices[d]!;
      addUp(electricity, d, own.electricity, steps, dt);
      addUp(fuel, d, own.fuel, steps, dt);
      addUp(water, d, own.water, steps, dt);
      addUp(heat, d, own.heat, steps, dt);
      addUp(ran, d, own.share, steps, dt);
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

function addUp(
  sums: Float64Array,
  k: number,
  rates: Float64Array,
  steps: number,
  dt: number,
): void {
  let sum = sums[k]!;
  for (let s = 0; s < steps; s++) sum += rates[s]! * dt;
  sums[k] = sum;
}
