import type { TraceStretch } from '../engine/trace.ts';
import type { Fuel, Home } from '../home/home.ts';
import type { Prices } from '../home/prices.ts';
import { JOULES_PER_KWH } from '../units/joules-per-kwh.ts';
import { meanPriceOf } from './mean-price.ts';

/** Energy bought, fuel by fuel, and what it costs by the meter. */
export interface EnergyUse {
  observe(stretch: TraceStretch): void;
  /** One row per fuel that the home can draw; standing charges are not in `cost`. */
  result(): readonly FuelUse[];
}

export interface FuelUse {
  readonly fuel: Fuel;
  /** Drawn by heat sources. [kWh] */
  readonly heatKwh: number;
  /** Drawn by appliances and devices; electricity only. [kWh] */
  readonly otherKwh: number;
  /** At the tariff of each moment [currency]; null where the fuel has no price. */
  readonly cost: number | null;
}

/** Watches a run's fuel and electricity. Electricity is always listed: every home has it. */
export function createEnergyUse(home: Home, prices: Prices): EnergyUse {
  const fuels = [...new Set<Fuel>([...home.sources.map((s) => s.fuel), 'electricity'])];
  const priceOf = fuels.map((f) => meanPriceOf(prices.fuels[f]?.tariff ?? FREE));
  // One draw for each heat source, and the last for appliances and devices.
  const draws = [...home.sources.map((s) => s.fuel), 'electricity' as const];
  const fuelOf = Int32Array.from(draws, (fuel) => fuels.indexOf(fuel));
  const energy = new Float64Array(draws.length); // W s
  const cost = new Float64Array(draws.length); // currency/kWh W s

  function observe({ steps, dt, start, home: trace }: TraceStretch): void {
    for (let k = 0; k < draws.length; k++) {
      const power = k < trace.sourceFuel.length ? trace.sourceFuel[k]! : trace.electricity;
      const price = priceOf[fuelOf[k]!]!;
      let used = energy[k]!;
      let paid = cost[k]!;
      for (let s = 0; s < steps; s++) {
        const drawn = power[s]! * dt;
        used += drawn;
        if (drawn !== 0) paid += drawn * price(start + s * dt, dt);
      }
      energy[k] = used;
      cost[k] = paid;
    }
  }

  function result(): FuelUse[] {
    const sum = (values: Float64Array, use: (k: number) => boolean): number =>
      values.reduce((total, value, k) => (use(k) ? total + value : total), 0) / JOULES_PER_KWH;
    const appliances = draws.length - 1;
    return fuels.map((fuel, f) => ({
      fuel,
      heatKwh: sum(energy, (k) => fuelOf[k] === f && k !== appliances),
      otherKwh: sum(energy, (k) => fuelOf[k] === f && k === appliances),
      cost: prices.fuels[fuel] === undefined ? null : sum(cost, (k) => fuelOf[k] === f),
    }));
  }

  return { observe, result };
}

const FREE = { by: 'flat', price: 0 } as const;
