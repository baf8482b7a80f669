import type { TraceView } from '../../engine/record/trace.ts';
import type { Fuel, Home } from '../../home/home.ts';
import type { Prices } from '../../home/prices.ts';
import { meanPriceOf } from '../../physics/economics/mean-price.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import type { MoneyByUse } from '../plan-measures.ts';
import type { Winter } from './winter.ts';

/** Energy bought, fuel by fuel, and what it costs by the meter. */
export interface EnergyUse {
  observe(trace: TraceView): void;
  /** One row per fuel that the home can draw; standing charges are not in `cost`. */
  result(): readonly FuelUse[];
}

export interface FuelUse {
  readonly fuel: Fuel;
  /** Whether something of the home burns or draws it for heat, be it never. */
  readonly heats: boolean;
  /** Drawn by heat sources, their backup heaters and stoves. [kWh] */
  readonly heatKwh: number;
  /** Drawn by coolers; electricity only. [kWh] */
  readonly coolKwh: number;
  /** Drawn by appliances and devices, and gas burnt by activities. [kWh] */
  readonly otherKwh: number;
  /** Cost at the tariff of each moment [currency]; null where the fuel has no price. */
  readonly cost: number | null;
  /** Part of `cost` that falls into the winter half of the year. [currency] */
  readonly winterCost: number | null;
  /** Part of `cost` for heat sources and their backup, whose heat comes by emitters. [currency] */
  readonly sourceCost: number | null;
  /** Parts of `cost` for what `heatKwh`, `coolKwh` and `otherKwh` are; null where the fuel has no price. */
  readonly costByUse: MoneyByUse | null;
}

/**
 * Watches a run's fuel and electricity. Electricity is always listed: every home has it.
 *
 * @param burnsGas  whether activities burn gas
 */
export function createEnergyUse(
  home: Home,
  prices: Prices,
  winter: Winter,
  burnsGas: boolean,
): EnergyUse {
  const meters = [...metersOf(home), ...(burnsGas ? [HOB] : [])];
  const fuels = [...new Set<Fuel>(meters.map(({ fuel }) => fuel))];
  const priceOf = meters.map(({ fuel }) => meanPriceOf(prices.fuels[fuel]?.tariff));
  const energy = new Float64Array(meters.length); // W s
  const cost = new Float64Array(meters.length); // currency/kWh W s
  const winterCost = new Float64Array(meters.length); // the same unit
  let power = new Float64Array(0); // of one meter, step by step [W]
  let cold = new Float64Array(0); // share of each step that lies in winter [-]

  function observe({ steps, dt, start, home: trace }: TraceView): void {
    if (power.length < steps) {
      power = new Float64Array(steps);
      cold = new Float64Array(steps);
    }
    for (let s = 0; s < steps; s++) cold[s] = winter.share(start + s * dt, dt);
    for (let k = 0; k < meters.length; k++) {
      addUp(power, meters[k]!.draws(trace), steps);
      const price = priceOf[k]!;
      let used = energy[k]!;
      let paid = cost[k]!;
      let paidInWinter = winterCost[k]!;
      for (let s = 0; s < steps; s++) {
        const drawn = power[s]! * dt;
        used += drawn;
        if (drawn === 0) continue;
        const sum = drawn * price(start + s * dt, dt);
        paid += sum;
        paidInWinter += sum * cold[s]!;
      }
      energy[k] = used;
      cost[k] = paid;
      winterCost[k] = paidInWinter;
    }
  }

  function result(): FuelUse[] {
    return fuels.map((fuel) => {
      const sum = (values: Float64Array, ...uses: readonly Meter['use'][]): number =>
        meters.reduce(
          (total, meter, k) =>
            meter.fuel === fuel && uses.includes(meter.use) ? total + values[k]! : total,
          0,
        ) / JOULES_PER_KWH;
      const known = prices.fuels[fuel] !== undefined;
      const unused = sum(energy, 'source') === 0;
      return {
        fuel,
        heats: meters.some((meter) => meter.fuel === fuel && HEATS.has(meter.use)),
        heatKwh: sum(energy, 'source', 'stove'),
        coolKwh: sum(energy, 'cooling'),
        otherKwh: sum(energy, 'other'),
        cost: known ? sum(cost, ...ALL_USES) : null,
        winterCost: known ? sum(winterCost, ...ALL_USES) : null,
        sourceCost: known || unused ? sum(cost, 'source') : null,
        costByUse: known
          ? {
              heating: sum(cost, 'source', 'stove'),
              cooling: sum(cost, 'cooling'),
              other: sum(cost, 'other'),
            }
          : null,
      };
    });
  }

  return { observe, result };
}

/** Things that draw the same fuel for the same use. */
interface Meter {
  readonly fuel: Fuel;
  readonly use: Use;
  readonly draws: (trace: TraceView['home']) => readonly Float64Array[];
}

type Use = (typeof ALL_USES)[number];

const HOB: Meter = { fuel: 'gas', use: 'other', draws: (trace) => [trace.gas] };

function metersOf({ sources, devices, cooling = [] }: Home): Meter[] {
  const meters: Meter[] = sources.map(({ fuel }, k) => ({
    fuel,
    use: 'source',
    draws: (trace) => [trace.sourceFuel[k]!],
  }));
  if (devices.some(({ does }) => does.kind === 'stove')) {
    const draws: Meter['draws'] = (trace) => trace.devices.map(({ fuel }) => fuel);
    meters.push({ fuel: 'wood', use: 'stove', draws });
  }
  if (sources.some(({ backup = 0 }) => backup > 0)) {
    meters.push({ fuel: 'electricity', use: 'source', draws: (trace) => trace.sourceBackup });
  }
  if (cooling.length > 0) {
    const draws: Meter['draws'] = (trace) => trace.coolers.map(({ electricity }) => electricity);
    meters.push({ fuel: 'electricity', use: 'cooling', draws });
  }
  const bought: Meter['draws'] = (trace) => [
    trace.electricity,
    ...trace.devices.map(({ electricity }) => electricity),
  ];
  return [...meters, { fuel: 'electricity', use: 'other', draws: bought }];
}

/** Fill `sums` with the sums of several series. */
function addUp(sums: Float64Array, series: readonly Float64Array[], steps: number): void {
  sums.fill(0, 0, steps);
  for (let k = 0; k < series.length; k++) {
    const values = series[k]!;
    for (let s = 0; s < steps; s++) sums[s] = sums[s]! + values[s]!;
  }
}

const ALL_USES = ['source', 'stove', 'cooling', 'other'] as const;
const HEATS: ReadonlySet<Use> = new Set(['source', 'stove']);
