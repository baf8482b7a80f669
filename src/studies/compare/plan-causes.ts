import { waterTaken } from '../../measures/energy/device-totals.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { figureText } from '../../units/figure-text.ts';
import { relativeChange } from '../../units/relative-change.ts';
import { sumText } from '../../units/sum-text.ts';
import { pct } from '../effects/percent.ts';
import { priceOfBoughtHeat } from '../effects/price-of-bought-heat.ts';

/** By what a plan moves its figures: one flow of heat, air, water or money that it changes. */
export interface Cause {
  readonly of:
    | 'temperature'
    | 'heat loss'
    | 'outdoor air'
    | 'open windows'
    | 'water taken out'
    | 'price of heat'
    | 'purchase';
  /** The plan's less the baseline's; below 0 is less. */
  readonly value: number;
  readonly unit: string;
  /** "rooms are 1.0 °C warmer" */
  readonly words: string;
}

/** What a plan changes of that, what moves most first; what would move nothing that people notice is left out. */
export function causesOf(baseline: PlanMeasures, plan: PlanMeasures): Cause[] {
  return [temperature, heatLoss, outdoorAir, openWindows, water, priceOfHeat, purchase]
    .map((cause) => cause(baseline, plan))
    .filter((cause) => cause !== null)
    .filter(({ weight }) => weight >= 1)
    .sort((a, b) => b.weight - a.weight)
    .map(({ weight, ...cause }) => cause);
}

/** @property weight  1 is the least that is worth a word */
type Weighed = Cause & { readonly weight: number };

function temperature(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const mean = ({ rooms }: PlanMeasures): number => {
    const all = Object.values(rooms);
    return all.reduce((sum, room) => sum + room.mean_temperature_c, 0) / Math.max(1, all.length);
  };
  const value = mean(plan) - mean(baseline);
  const words = `rooms are ${figureText(Math.abs(value), 1)} °C ${value > 0 ? 'warmer' : 'cooler'}`;
  return { of: 'temperature', value, unit: 'K', words, weight: Math.abs(value) / 0.2 };
}

function heatLoss(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const of = (each: PlanMeasures) => each.handbook_cross_check.heat_loss_coefficient_w_per_k;
  const value = of(plan) - of(baseline);
  const share = value / Math.max(1e-9, of(baseline));
  const words = `the building loses ${percent(share)} ${lessOrMore(share)} heat at the same warmth`;
  return { of: 'heat loss', value, unit: 'W/K', words, weight: Math.abs(share) / 0.02 };
}

function outdoorAir(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const value = plan.outdoor_air.l_per_s - baseline.outdoor_air.l_per_s;
  const share = value / Math.max(1e-9, baseline.outdoor_air.l_per_s);
  const words = `${percent(share)} ${lessOrMore(share)} outdoor air comes in`;
  return { of: 'outdoor air', value, unit: 'L/s', words, weight: Math.abs(share) / 0.05 };
}

function openWindows(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const out = ({ airing, period }: PlanMeasures) => airing.openings_kwh / yearsIn(period.hours);
  const value = out(plan) - out(baseline);
  const words = `open windows carry out ${figureText(Math.abs(value), 0)} kWh a year ${value > 0 ? 'more' : 'less'}`;
  const weight = (20 * Math.abs(value)) / Math.max(1, baseline.heating.useful_kwh);
  return { of: 'open windows', value, unit: 'kWh/year', words, weight };
}

function water(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const taken = (each: PlanMeasures) => waterTaken(each) / yearsIn(each.period.hours);
  const value = taken(plan) - taken(baseline);
  const litres = figureText(Math.abs(value), 0);
  const words = `devices take ${litres} L ${value > 0 ? 'more' : 'less'} water a year out of the air`;
  return { of: 'water taken out', value, unit: 'L/year', words, weight: Math.abs(value) / 25 };
}

/** What a kWh that is bought for heat costs at the hours in which it is bought. */
function priceOfHeat(baseline: PlanMeasures, plan: PlanMeasures): Weighed | null {
  const [was, is] = [priceOfBoughtHeat(baseline), priceOfBoughtHeat(plan)];
  if (!(was > 0) || !Number.isFinite(is)) return null;
  const unit = `${plan.money.currency}/kWh`;
  const words = `a kWh bought for heat costs ${figureText(is, 3)} ${plan.money.currency}, was ${figureText(was, 3)}`;
  return {
    of: 'price of heat',
    value: is - was,
    unit,
    words,
    weight: Math.abs(relativeChange(was, is)) / 0.02,
  };
}

function purchase(baseline: PlanMeasures, plan: PlanMeasures): Weighed {
  const value = plan.money.purchase_cost_per_year - baseline.money.purchase_cost_per_year;
  const { currency } = plan.money;
  const more = baseline.money.purchase_cost_per_year > 0 ? ' more' : '';
  const words = `what is bought costs ${sumText(value, 0)} ${currency} a year${more}`;
  const weight = (100 * value) / Math.max(1, baseline.money.total_per_year);
  return { of: 'purchase', value, unit: `${currency}/year`, words, weight };
}

const percent = (share: number): string => pct(100 * Math.abs(share));
const lessOrMore = (share: number): string => (share < 0 ? 'less' : 'more');
