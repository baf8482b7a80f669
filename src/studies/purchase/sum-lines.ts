import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { rounded } from '../rounded.ts';
import { type DryingFigures, dryingFigures } from './drying-figures.ts';
import { cents, type UseDifference } from './extra-bill.ts';
import { devicePrice } from './mean-prices.ts';
import type { PurchaseSumSetup, SumLine } from './purchase-sum-setup.ts';
import { printedFactor } from './purchase-worth.ts';

/** Lines of a sum as they are written, one below the other. */
export interface SumSheet {
  readonly currency: string;
  readonly lines: readonly SumLine[];
  /** Writes a figure that is not added up, and hands it back. */
  say(text: string, value: number, unit: string): number;
  /** Writes money a year that is. @param hundredths  of the currency */
  add(text: string, hundredths: number): void;
}

export function sumSheet(currency: string): SumSheet {
  const lines: SumLine[] = [];
  return {
    currency,
    lines,
    say: (text, value, unit) => {
      lines.push({ text, value, unit, adds: false });
      return value;
    },
    add: (text, hundredths) => {
      lines.push({ text, value: hundredths / 100, unit: `${currency} a year`, adds: true });
    },
  };
}

/**
 * @param purchases  what is not bought has a price below 0
 * @returns purchase cost of all [hundredths/year]
 */
export function purchaseLines(
  sheet: SumSheet,
  purchases: readonly Purchase[],
  discountRate: number,
): number {
  let all = 0;
  for (const { what: thing, price, lastsYears } of purchases) {
    const what = price < 0 ? `${thing}, not bought` : thing;
    sheet.say(`price: ${what}`, Math.abs(price), sheet.currency);
    sheet.say('lasts', lastsYears, 'years');
    const factor = sheet.say(
      `years to divide it by, at ${rounded(100 * discountRate, 2)} % interest`,
      printedFactor(discountRate, lastsYears),
      'years',
    );
    const own = cents(price / factor);
    sheet.add(`purchase cost: ${what}`, own);
    all += own;
  }
  return all;
}

/** What a device draws, and what that costs in the hours in which it runs. */
interface Running {
  readonly drying: DryingFigures;
  readonly kwh: number;
  readonly price: number;
  readonly cents: number;
}

export function runningLines(sheet: SumSheet, setup: PurchaseSumSetup, device: string): Running {
  const { plan, prices, label } = setup;
  const own = plan.devices.detail[device];
  if (own === undefined) {
    const known = Object.keys(plan.devices.detail).join(', ') || 'none';
    throw new RangeError(`purchaseSum: ${plan.plan} has no device "${device}", only ${known}`);
  }
  const drying = dryingFigures(own, plan.period.hours, label);
  sheet.say('runs', rounded(drying.run_hours_per_year, 0), 'h a year');
  if (drying.litres_a_day_running !== null && drying.litres_per_year > 0) {
    sheet.say('takes', rounded(drying.litres_per_year, 1), 'L a year');
    sheet.say('takes while running', rounded(drying.litres_a_day_running, 1), 'L/day');
    if (label !== null) sheet.say('would by its label', rounded(label, 1), 'L/day');
  }
  const kwh = rounded(drying.kwh_per_year, 1);
  if (kwh === 0) return { drying, kwh, price: 0, cents: 0 };
  sheet.say('electricity of the device', kwh, 'kWh a year');
  const { price, how } = devicePrice(own, prices);
  const each = sheet.say(`price of it, ${how}`, rounded(price, 5), `${sheet.currency}/kWh`);
  const running = cents(kwh * each);
  if (running !== 0) sheet.add('running', running);
  return { drying, kwh, price: each, cents: running };
}

/** kWh and their price, of a difference or of both plans, and the money. */
export function differenceLines(sheet: SumSheet, difference: UseDifference): void {
  const { use, fuel, products, cents: sum } = difference;
  const [first, second] = products;
  const less = first.kwh < 0;
  const told = second === undefined ? [less ? 'less' : 'more'] : ['before', 'with the plan'];
  products.forEach(({ kwh, price, how }, k) => {
    sheet.say(`${fuel} for ${use}, ${told[k]}`, Math.abs(kwh), 'kWh a year');
    sheet.say(`price of that, ${how}`, price, `${sheet.currency}/kWh`);
  });
  if (sum === 0) return;
  const credit = less && use === 'heating' ? ' (the heat credit)' : '';
  const how = second === undefined ? credit : ', the second less the first';
  sheet.add(`${use} by ${fuel}${how}`, sum);
}
