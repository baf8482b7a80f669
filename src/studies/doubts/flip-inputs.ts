import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { raiseSetpoints, wholeHomeSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import { scaleElectricityPrice } from '../../scenario/edits/scale-electricity-price.ts';
import { householdWater } from '../../scenario/edits/scale-household-water.ts';
import { newPurchases } from '../compare/new-purchases.ts';
import { atFuelPrice, atPurchasePrice } from '../compare/other-prices.ts';
import { priceOf } from '../compare/plan-money.ts';
import type { Option } from '../options.ts';
import { type RunVariant, withEdit, withSettings } from '../plan-variant.ts';
import type { FuelPrice } from '../purchase/mean-prices.ts';
import type { Flip } from './flip.ts';

/** An input that can be set to other values. */
export interface FlipInput
  extends Pick<Flip, 'path' | 'input' | 'unit' | 'today' | 'low' | 'high' | 'relative'> {
  readonly resolution: number;
  /** Whether figures at another value need no run. */
  readonly priced: boolean;
  readonly note: string;
  /** Range in which the input may well lie. */
  readonly usual: readonly [low: number, high: number];
  /** Figures of an option at a value of the input. */
  readonly at: (option: Option, value: number) => PlanMeasures | Promise<PlanMeasures>;
}

export interface FlipInputSetup {
  readonly baseline: Option;
  readonly plan: Option;
  readonly rivals: readonly Option[];
  /** What a kWh of each fuel costs on the mean. */
  readonly fuelPrices: Readonly<Record<string, FuelPrice>>;
  readonly run: RunVariant;
}

/** Prices of fuels, water that the household gives off, the thermostats, price of what is bought. */
export function flipInputs(setup: FlipInputSetup): FlipInput[] {
  const fuels = Object.entries(setup.fuelPrices).map(([fuel, price]) =>
    fuelPrice(setup, fuel, price),
  );
  return [...fuels, water(setup), thermostats(setup), purchase(setup)].filter(
    (input) => input !== null,
  );
}

/**
 * The price of a fuel. Runs are the same at any price, and are only priced again, unless something in
 * the home goes by the price of electricity.
 */
function fuelPrice(
  { baseline, plan, rivals, run }: FlipInputSetup,
  fuel: string,
  { price: today, what }: FuelPrice,
): FlipInput | null {
  if (!(today > 0)) return null;
  const goesBy = [baseline, plan, ...rivals].some(
    ({ prepared }) => prepared.automation.electricityTariff !== undefined,
  );
  const runsAgain =
    fuel === 'electricity' && goesBy && scaleElectricityPrice(plan.raw, plan.prepared, 1) !== null;
  return {
    ...{ path: null, input: `the price of ${what}`, unit: `${plan.measures.money.currency}/kWh` },
    ...{ today, relative: false, low: today / 4, high: today * 4 },
    usual: [0.6 * today, 1.6 * today],
    ...(runsAgain
      ? { priced: false, resolution: today / 50 }
      : { priced: true, resolution: today / 1000 }),
    note: runsAgain
      ? 'by running again, because something goes by the price; all hours dearer alike'
      : 'the kWh of the runs priced again, all hours dearer alike',
    at: (option, value) => {
      const times = value / today;
      const set = runsAgain ? scaleElectricityPrice(option.raw, option.prepared, times) : null;
      return set === null
        ? atFuelPrice(option.measures, fuel, times)
        : run(withSettings(option.variant, set));
    },
  };
}

function water({ baseline, run }: FlipInputSetup): FlipInput | null {
  const today = householdWater(baseline.raw)?.litres_a_day;
  if (today === undefined) return null;
  return {
    path: null,
    input: 'water from washing, cooking, laundry and plants',
    unit: 'L/day',
    today,
    relative: false,
    low: today / 4,
    high: today * 3,
    usual: [0.6 * today, 1.6 * today],
    ...{ priced: false, resolution: today / 20 },
    note: 'by running again; every activity more or less alike',
    at: (option, value) => {
      const own = householdWater(option.raw);
      return run(withSettings(option.variant, own === null ? [] : own.times(value / today)));
    },
  };
}

function thermostats({ baseline, run }: FlipInputSetup): FlipInput | null {
  if (raiseSetpoints(baseline.raw, 0) === null) return null;
  const setpoint = wholeHomeSetpoint(baseline.raw);
  const today = setpoint ?? 0;
  return {
    path: null,
    input: setpoint === null ? 'all thermostats' : 'the thermostat',
    unit: setpoint === null ? 'K' : '°C',
    today,
    relative: setpoint === null,
    low: today - 4,
    high: today + 4,
    usual: [today - 1, today + 1],
    ...{ priced: false, resolution: 0.25 },
    note: 'by running again; all rooms, setbacks and nights along with it',
    at: (option, value) =>
      run(withEdit(option.variant, raiseSetpoints(option.raw, value - today) ?? {})),
  };
}

function purchase({ plan, baseline }: FlipInputSetup): FlipInput | null {
  const bought = newPurchases(baseline.prepared.purchases, plan.prepared.purchases);
  const today = priceOf(bought);
  if (today <= 0) return null;
  return {
    path: null,
    input: 'the price of what is bought',
    unit: plan.measures.money.currency,
    today,
    relative: false,
    low: 0,
    high: 5 * today,
    usual: [0.6 * today, 1.6 * today],
    ...{ priced: true, resolution: today / 1000 },
    note: 'purchase cost worked out again; rooms and bills are the same',
    at: (option, value) =>
      option === plan
        ? atPurchasePrice(plan.measures, bought, value / today, plan.prepared.discountRate)
        : option.measures,
  };
}
