import { purchaseCostPerYear } from '../../src/measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { items, mapping, readTolerantly } from '../../src/scenario/checks/tolerant-readers.ts';
import { householdWater } from '../../src/scenario/edits/scale-household-water.ts';
import type { Scenario } from '../../src/scenario/read-scenario.ts';
import { memoizedRuns } from '../../src/studies/memoized-runs.ts';
import type { Option } from '../../src/studies/options.ts';
import {
  type PlanVariant,
  prepareVariant,
  variantScenario,
} from '../../src/studies/plan-variant.ts';
import { readOnce } from '../scenario/read-once.ts';
import { asUsed, somePlan } from './some-plan.ts';

/*
 * A home whose year is a few straight lines, so that every answer about it can be worked out by
 * hand. Its figures are made from the checked scenario; what cannot be prepared is refused.
 *
 * Cold spots of the den: 300 h at 18 °C in the den and 2 L/day of water; 100 h less a kelvin, 300 h
 * more a litre (below 0 too, to stay straight); none with a dehumidifier or with daily airing; 50 h
 * less with a fan; a hundredth of them is the mould index. Money: 1000 a year, 60 a kelvin of all thermostats, 40 a kelvin of the den's
 * alone, 300 kWh of a dehumidifier, 127.5 for airing, 20 for a fan, and purchase cost without interest.
 */

/** 22.5 a year of purchase cost, 90 a year of electricity at 0.3. */
export const DRIER = '{ what: drier, price: 180, lasts: 8 }';
export const DRY = `dry: { change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 } } }, purchases: [${DRIER}] }`;
export const AIRED =
  'aired: { change: { household: { airing: [{ rooms: all, at: ["07:00", "19:00"], lasts: 10, open share: 100 % }] } } }';

/** Today's values; words of YAML. */
export interface Today {
  setpoint?: number | string;
  water?: number;
  electricity?: number | string;
  plans?: readonly string[];
  more?: string;
}

export function linearScenario({
  setpoint = 18,
  water = 2,
  electricity = 0.3,
  plans = ['as-lived: { change: {} }', DRY],
  more = '',
}: Today = {}): Scenario {
  const text = `title: Straight lines
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
home: { rooms: { den: { floor area: 16 }, bath: { floor area: 6 } } }
household: { activities: [{ what: other, at: "08:00", water: ${water} }] }
heating: { setpoint: ${setpoint} }
money: { electricity: ${electricity}, discount rate: 0 }
${more}
plans:
${plans.map((plan) => `  ${plan}`).join('\n')}
`;
  return readOnce(text, 'lines.yaml');
}

/** The home's runs, and which were asked for, each once. */
export function linearWorld(scenario: Scenario, files: ReadonlyMap<string, string> = new Map()) {
  const asked: PlanVariant[] = [];
  const figures = (variant: PlanVariant): PlanMeasures => linearFigures(scenario, files, variant);
  const run = memoizedRuns((variant) => {
    asked.push(variant);
    return figures(variant);
  });
  const option = (variant: PlanVariant, origin: Option['origin'] = 'plan'): Option => {
    const prepared = prepareVariant(scenario, files, variant);
    return {
      ...{
        name: prepared.plan,
        description: prepared.description,
        origin,
        variant,
        prepared,
        assumedPurchases: [],
      },
      raw: variantScenario(scenario, variant),
      measures: figures(variant),
    };
  };
  const named = (plan: string): Option => option({ plan, set: [] });
  return { scenario, files, asked, run, option, named };
}

function linearFigures(
  scenario: Scenario,
  files: ReadonlyMap<string, string>,
  variant: PlanVariant,
): PlanMeasures {
  const {
    plan,
    home,
    prices,
    purchases: buys,
    discountRate,
  } = prepareVariant(scenario, files, variant);
  const raw = variantScenario(scenario, variant);
  const heating = mapping(mapping(raw)['heating']);
  const all = degrees(heating['setpoint']);
  const own = mapping(mapping(heating['rooms'])['den'])['setpoint'];
  const den = own === undefined ? all : degrees(own);
  const tariff = prices.fuels.electricity!.tariff;
  const price = tariff.by === 'series' ? 0.3 : tariff.price;
  const litres = householdWater(raw)?.litres_a_day ?? 2;
  const drier = home.devices.find(({ does }) => does.kind === 'dehumidifier');
  const fan = home.devices.some(({ does }) => does.kind === 'extract fan');
  const { airing = [] } = mapping(mapping(raw)['household']);
  const aired = items(airing).some((habit) => habit !== 'usual');
  const spots = 300 - 100 * (den - 18) + 300 * (litres - 2) - (fan ? 50 : 0);
  const wet = drier !== undefined || aired ? 0 : spots;
  const gas = 600 + 60 * (all - 18) + 40 * (den - all) + (aired ? 127.5 : 0) + (fan ? 20 : 0);
  const electricity = 400 + (drier === undefined ? 0 : 300 * price);
  const purchaseCost = purchaseCostPerYear(buys, discountRate);
  const made = somePlan(plan, {
    ...{ energy: gas + electricity, purchaseCost },
    den: { over: { cold_spot_hours_above_80_pct: wet, mould_index_peak: wet / 100 } },
  });
  const ran = {
    electricity_kwh: 300,
    electricity_money: 300 * price,
    fuel_kwh: 0,
    water_kg: -450,
    heat_kwh: 0,
  };
  const detail = {
    ...ran,
    hours: 1500,
    starts: 100,
    emptied: 225,
    hours_4_pa_below_outdoors: null,
  };
  return {
    ...made,
    devices: {
      ...made.devices,
      detail: Object.fromEntries(home.devices.map(({ name }) => [name, detail])),
    },
    money: { ...made.money, by_fuel: { gas, electricity }, by_use: asUsed({ gas, electricity }) },
  };
}

/** A setpoint, or the first spell of a list of them. [°C] */
const degrees = (setpoint: unknown): number =>
  readTolerantly(Array.isArray(setpoint) ? mapping(setpoint[0])['setpoint'] : setpoint, '°C');
