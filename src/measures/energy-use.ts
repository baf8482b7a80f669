import type { TraceStretch } from '../engine/trace.ts';
import type { Fuel, Home } from '../home/home.ts';
import type { Prices } from '../home/prices.ts';
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
  const fuelOf = Int32Array.from(home.sources, (s) => fuels.indexOf(s.fuel));
  const electricity = fuels.indexOf('electricity');
  const priceOf = fuels.map((f) => meanPriceOf(prices.fuels[f]?.tariff ?? FREE));
  const heat = new Float64Array(fuels.length); // W s
  const other = new Float64Array(fuels.length); // W s
  const cost = new Float64Array(fuels.length); // currency/kWh W s
  const power = new Float64Array(fuels.length); // W, in one step

  function observe({ steps, dt, start, home: trace }: TraceStretch): void {
    for (let s = 0; s < steps; s++) {
      power.fill(0);
      for (let k = 0; k < fuelOf.length; k++) {
        const f = fuelOf[k]!;
        const drawn = trace.sourceFuel[k]![s]!;
        power[f] = power[f]! + drawn;
        heat[f] = heat[f]! + drawn * dt;
      }
      power[electricity] = power[electricity]! + trace.electricity[s]!;
      other[electricity] = other[electricity]! + trace.electricity[s]! * dt;
      const utc = start + s * dt;
      for (let f = 0; f < fuels.length; f++) {
        if (power[f] !== 0) cost[f] = cost[f]! + power[f]! * dt * priceOf[f]!(utc, dt);
      }
    }
  }

  const result = (): FuelUse[] =>
    fuels.map((fuel, f) => ({
      fuel,
      heatKwh: heat[f]! / JOULES_PER_KWH,
      otherKwh: other[f]! / JOULES_PER_KWH,
      cost: prices.fuels[fuel] === undefined ? null : cost[f]! / JOULES_PER_KWH,
    }));

  return { observe, result };
}

const FREE = { by: 'flat', price: 0 } as const;
const JOULES_PER_KWH = 3.6e6;
