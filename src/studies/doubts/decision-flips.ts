import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { raiseSetpoints, wholeHomeSetpoint } from '../../scenario/edits/raise-setpoints.ts';
import { scaleElectricityPrice } from '../../scenario/edits/scale-electricity-price.ts';
import { householdWater } from '../../scenario/edits/scale-household-water.ts';
import { settingsFromPatch } from '../../scenario/yaml/settings-from-patch.ts';
import { InputProblems } from '../../units/problem.ts';
import { atFuelPrice, atPurchasePrice, extraPerYear } from '../compare/other-prices.ts';
import type { Option } from '../options.ts';
import type { RunVariant } from '../plan-variant.ts';
import { newPurchases } from '../purchase/new-purchases.ts';
import { weighPurchase } from '../purchase/weigh-purchase.ts';
import { breakEven } from './break-even.ts';

/** The value of one input at which a decision turns round. */
export interface Flip {
  readonly input: string;
  readonly unit: string;
  readonly today: number;
  /** Null where the decision is the same today, at `low` and at `high`, or where it could not be tried. */
  readonly value: number | null;
  readonly low: number;
  readonly high: number;
  /** Whether the value lies where the input may well be, here or before long. */
  readonly likely: boolean;
  /** Whether other values could be run at all. */
  readonly tried: boolean;
  /** Whether `today` and `value` are differences from today. */
  readonly relative: boolean;
  /** How it was found, or why not. */
  readonly note: string;
}

export interface FlipsSetup {
  readonly baseline: Option;
  readonly plan: Option;
  /** What the plan buys stands there. */
  readonly room: string;
  /** Few rivals, because each is run again at every value tried. */
  readonly rivals: readonly Option[];
  /** Extra money a year with doubtful inputs low and high; kept as wide at other values. */
  readonly range: { readonly low: number; readonly high: number };
  /** What a kWh of the device costs on the mean. [currency/kWh] */
  readonly electricityPrice: number;
  readonly run: RunVariant;
}

/**
 * Where the decision would turn round: price of electricity, water the household gives off, the
 * thermostats, price of what is bought. Baseline, plan and rivals are run again at every value and
 * weighed again; only the price of what is bought, which no room feels, is put into the figures of
 * the runs there are.
 */
export async function decisionFlips(setup: FlipsSetup): Promise<Flip[]> {
  const inputs = [electricity(setup), water(setup), thermostats(setup), purchase(setup)];
  return Promise.all(inputs.filter((input) => input !== null).map((input) => flipOf(setup, input)));
}

/** An input that can be set to other values. */
interface FlipInput extends Pick<Flip, 'input' | 'unit' | 'today' | 'low' | 'high' | 'relative'> {
  readonly resolution: number;
  readonly note: string;
  /** Range in which the input may well lie. */
  readonly usual: readonly [low: number, high: number];
  /** Figures of an option at a value of the input. */
  readonly at: (option: Option, value: number) => PlanMeasures | Promise<PlanMeasures>;
}

async function flipOf(setup: FlipsSetup, input: FlipInput): Promise<Flip> {
  const { input: name, unit, today, low, high, relative, note } = input;
  const flip = { input: name, unit, today, low, high, relative, tried: true, likely: false };
  const extra = setup.range.high - setup.range.low;
  const below = extraPerYear(setup.baseline.measures, setup.plan.measures) - setup.range.low;
  const decide = async (value: number): Promise<number> => {
    const at = (option: Option) => (value === today ? option.measures : input.at(option, value));
    // All are waited for, so that a failure of one leaves no other behind.
    const all = [setup.baseline, setup.plan, ...setup.rivals];
    const done = await Promise.allSettled(all.map(async (option) => at(option)));
    const [baseline, plan, ...rivals] = done.map((one) => {
      if (one.status === 'rejected') throw one.reason;
      return one.value;
    });
    const moved = extraPerYear(baseline!, plan!);
    const range = { low: moved - below, high: moved - below + extra };
    const { room } = setup;
    return weighPurchase({ baseline: baseline!, plan: plan!, room, rivals, range }).standing;
  };
  const { resolution, usual } = input;
  const reach = { today, decision: decide, resolution, mostRuns: 7 };
  try {
    const low = await reachable(decide, today, input.low);
    const high = await reachable(decide, today, input.high);
    if (low === high) await decide(input.high); // which says why there is no home but today's
    const { value } = await breakEven({ ...reach, low, high });
    const likely = value !== null && value >= usual[0] && value <= usual[1];
    return { ...flip, low, high, value, likely, note };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return { ...flip, value: null, tried: false, note: `not tried: ${whyNot(error)}` };
  }
}

/** The first problem in words; one of no place in the scenario is what comes of the home itself. */
function whyNot({ problems: [problem] }: InputProblems): string {
  const { where = '', got = '' } = problem ?? {};
  return where === '' ? `it would lead to ${got}` : `${where} would be ${got}`;
}

/** An end of a range, or the first on halving the way to today at which there is a home to run. */
async function reachable(
  decide: (value: number) => Promise<number>,
  today: number,
  end: number,
): Promise<number> {
  for (let k = 0; k < 3; k++) {
    const tried = today + (end - today) / 2 ** k;
    try {
      await decide(tried);
      return tried;
    } catch (error) {
      if (!(error instanceof InputProblems)) throw error;
    }
  }
  return today;
}

function electricity({ electricityPrice, plan, run }: FlipsSetup): FlipInput | null {
  if (!(electricityPrice > 0)) return null;
  const settable = scaleElectricityPrice(plan.raw, plan.prepared, 1) !== null;
  return {
    input: 'the price of electricity',
    unit: `${plan.measures.money.currency}/kWh`,
    today: electricityPrice,
    relative: false,
    low: electricityPrice / 4,
    high: electricityPrice * 4,
    usual: [0.6 * electricityPrice, 1.6 * electricityPrice],
    resolution: electricityPrice / 50,
    note: settable
      ? 'by running again; the mean by the hours of the device, all hours dearer alike'
      : 'the kWh of the runs priced again: prices come from a file',
    at: (option, value) => {
      const times = value / electricityPrice;
      const set = scaleElectricityPrice(option.raw, option.prepared, times);
      return set === null
        ? atFuelPrice(option.measures, 'electricity', times)
        : again(run, option, set);
    },
  };
}

function water({ baseline, run }: FlipsSetup): FlipInput | null {
  const today = householdWater(baseline.raw)?.litres_a_day;
  if (today === undefined) return null;
  return {
    input: 'water from washing, cooking, laundry and plants',
    unit: 'L/day',
    today,
    relative: false,
    low: today / 4,
    high: today * 3,
    usual: [0.6 * today, 1.6 * today],
    resolution: today / 20,
    note: 'by running again; every activity more or less alike',
    at: (option, value) => {
      const own = householdWater(option.raw);
      return again(run, option, own === null ? [] : own.times(value / today));
    },
  };
}

function thermostats({ baseline, run }: FlipsSetup): FlipInput | null {
  if (raiseSetpoints(baseline.raw, 0) === null) return null;
  const setpoint = wholeHomeSetpoint(baseline.raw);
  const today = setpoint ?? 0;
  return {
    input: setpoint === null ? 'all thermostats' : 'the thermostat',
    unit: setpoint === null ? 'K' : '°C',
    today,
    relative: setpoint === null,
    low: today - 4,
    high: today + 4,
    usual: [today - 1, today + 1],
    resolution: 0.25,
    note: 'by running again; all rooms, setbacks and nights along with it',
    at: (option, value) =>
      again(run, option, settingsFromPatch(raiseSetpoints(option.raw, value - today) ?? {})),
  };
}

function purchase({ plan, baseline }: FlipsSetup): FlipInput | null {
  const bought = newPurchases(baseline.prepared.purchases, plan.prepared.purchases);
  const today = bought.reduce((sum, { price }) => sum + price, 0);
  if (today <= 0) return null;
  return {
    input: 'the price of what is bought',
    unit: plan.measures.money.currency,
    today,
    relative: false,
    low: 0,
    high: 5 * today,
    usual: [0.6 * today, 1.6 * today],
    resolution: today / 100,
    note: 'purchase cost worked out again; rooms and bills are the same',
    at: (option, value) =>
      option === plan
        ? atPurchasePrice(plan.measures, bought, value / today, plan.prepared.discountRate)
        : option.measures,
  };
}

const again = (run: RunVariant, { variant }: Option, set: readonly string[]) =>
  run({ ...variant, set: [...variant.set, ...set] });
