import type { Prices } from '../../home/prices.ts';
import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { rounded } from '../rounded.ts';
import { dampness } from './dampness.ts';
import { type DryingFigures, dryingFigures } from './drying-figures.ts';
import { cents, extraBill, extraForHeating, heatingLess } from './extra-bill.ts';
import { meanElectricityPrice } from './mean-electricity-price.ts';
import { printedFactor, purchaseWorth } from './purchase-worth.ts';

/** What buying a device costs a year, as a sum that can be redone by hand. */
export interface PurchaseSum {
  readonly device: string;
  readonly drying: DryingFigures;
  /** All that is bought, paid once. [currency] */
  readonly price: number;
  /** Money a year; above 0 is paid, below 0 is saved. Whole hundredths, and they add up to `net`. */
  readonly purchase_cost: number;
  readonly running: number;
  /** Less paid for heating is below 0. */
  readonly heat_credit: number;
  /** What else the plan changes on the bill. */
  readonly other: number;
  readonly net: number;
  /** Only where the bill falls by more than running costs; null otherwise. */
  readonly payback_years: number | null;
  readonly npv: number | null;
  /** Years that a yearly saving is multiplied by for that, and what is spent in today's money. */
  readonly npv_years: number | null;
  readonly npv_spent: number | null;
  /** Only where nothing is saved in cash: net over the room-hours above the humidity band avoided. */
  readonly money_per_damp_hour_avoided: number | null;
  readonly damp_hours_avoided_per_year: number;
  readonly lines: readonly SumLine[];
}

/** One line of a sum. Values are as they are to be printed: what is computed of them is too. */
export interface SumLine {
  readonly text: string;
  readonly value: number;
  readonly unit: string;
  /** True for the lines that are added up; the last line is their total. */
  readonly adds: boolean;
}

export interface PurchaseSumSetup {
  readonly baseline: PlanMeasures;
  readonly plan: PlanMeasures;
  /** Name of a device of the plan. */
  readonly device: string;
  /** What the plan buys and the baseline does not. */
  readonly purchases: readonly Purchase[];
  /** [1/year] */
  readonly discountRate: number;
  readonly prices: Prices;
  /** Water by its label, null for none. [L/day] */
  readonly label: number | null;
}

/**
 * The purchase of a device as a sum: purchase cost, running, and what it takes off the heating bill.
 *
 * The heat credit is the difference between what heating costs in the two runs and nothing else.
 * Both runs are of the whole home, so heat that laundry or walls took from the room when their
 * water evaporated is in both, and no latent heat is credited a second time.
 *
 * Every value is rounded as printed before it is used, money to hundredths, kWh to tenths, so that
 * the lines give the total to the last digit. Where heat is made of electricity, the bill does not
 * tell the two apart: running is then kWh times price, and the heat credit all the rest.
 *
 * @throws RangeError for a device that is not in the plan's figures
 */
export function purchaseSum(setup: PurchaseSumSetup): PurchaseSum {
  const { baseline, plan, device, purchases, discountRate, prices, label } = setup;
  const own = plan.devices.detail[device];
  if (own === undefined) {
    const known = Object.keys(plan.devices.detail).join(', ') || 'none';
    throw new RangeError(`purchaseSum: ${plan.plan} has no device "${device}", only ${known}`);
  }
  const { currency } = plan.money;
  const lines: SumLine[] = [];
  const say = (text: string, value: number, unit: string, adds = false): number => {
    lines.push({ text, value, unit, adds });
    return value;
  };
  const aYear = `${currency} a year`;

  let purchaseCost = 0;
  for (const { what, price, lastsYears } of purchases) {
    say(`price: ${what}`, price, currency);
    say('lasts', lastsYears, 'years');
    const factor = say(
      `years to divide it by, at ${rounded(100 * discountRate, 2)} % interest`,
      printedFactor(discountRate, lastsYears),
      'years',
    );
    purchaseCost += cents(say(`purchase cost: ${what}`, rounded(price / factor, 2), aYear, true));
  }

  const drying = dryingFigures(own, plan.period.hours, label);
  say('runs', rounded(drying.run_hours_per_year, 0), 'h a year');
  if (drying.litres_a_day_running !== null && drying.litres_per_year > 0) {
    say('takes', rounded(drying.litres_per_year, 1), 'L a year');
    say('takes while running', rounded(drying.litres_a_day_running, 1), 'L/day');
    if (label !== null) say('would by its label', rounded(label, 1), 'L/day');
  }
  const kwh = say('electricity of the device', rounded(drying.kwh_per_year, 1), 'kWh a year');
  const { price, how } = meanElectricityPrice(baseline, plan, own.electricity_kwh, prices);
  const each = say(`price of it, ${how}`, rounded(price, 5), `${currency}/kWh`);
  const running = cents(say('running', rounded(kwh * each, 2), aYear, true));

  const bill = extraBill(baseline, plan);
  for (const [fuel, less] of heatingLess(baseline, plan)) {
    say(`${fuel} for heating, less`, less, 'kWh a year');
  }
  const heat = extraForHeating(baseline, plan) ?? bill - running;
  say('heating, paid more (below 0 is the heat credit)', heat / 100, aYear, true);
  const other = bill - running - heat;
  if (other !== 0) {
    // Half of a tenth of a kWh at its price, and half a cent each of running, heat and bill.
    const byRounding = Math.abs(other) <= 5 * each + 1.5;
    const text = byRounding ? 'rounding' : 'what else changes on the bill';
    say(text, other / 100, aYear, true);
  }
  const net = purchaseCost + bill;
  say('net', net / 100, aYear);

  const spent = purchases.reduce((sum, buy) => sum + buy.price, 0);
  const avoided = dampness(baseline).dampHours - dampness(plan).dampHours;
  return {
    ...{ device, drying, price: spent, purchase_cost: purchaseCost / 100, running: running / 100 },
    ...{ heat_credit: heat / 100, other: other / 100, net: net / 100 },
    ...purchaseWorth(purchases, -bill / 100, discountRate),
    money_per_damp_hour_avoided: bill >= 0 && net > 0 && avoided > 0 ? net / 100 / avoided : null,
    damp_hours_avoided_per_year: avoided,
    lines,
  };
}
