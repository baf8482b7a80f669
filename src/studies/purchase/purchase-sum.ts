import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import { annuityFactor } from '../../physics/economics/annuity-factor.ts';
import { priceOf } from '../compare/plan-money.ts';
import { dampness } from './dampness.ts';
import type { DryingFigures } from './drying-figures.ts';
import { extraBill, standingDifferences, useDifferences } from './extra-bill.ts';
import type { PurchaseSumSetup, SumLine } from './purchase-sum-setup.ts';
import { purchaseWorth } from './purchase-worth.ts';
import { differenceLines, purchaseLines, runningLines, sumSheet } from './sum-lines.ts';

/** What a plan with a purchase or a new device costs a year, as a sum that can be redone by hand. */
export interface PurchaseSum {
  /** Null where nothing of it is a device. */
  readonly device: string | null;
  readonly drying: DryingFigures | null;
  /** All that is bought, paid once, less what is not bought then. [currency] */
  readonly price: number;
  /** Money a year; above 0 is paid, below 0 is saved. Whole hundredths, and they add up to `net`. */
  readonly purchase_cost: number;
  readonly running: number;
  /** Less paid for heating is below 0. */
  readonly heat_credit: number;
  readonly cooling: number;
  /** What else the plan changes on the bill, standing charges among it. */
  readonly other: number;
  readonly net: number;
  /** Only where the bill falls by more than running costs; null otherwise. */
  readonly payback_years: number | null;
  readonly npv: number | null;
  /** Years that a yearly saving is multiplied by for that, and what is spent in today's money. */
  readonly npv_years: number | null;
  readonly npv_spent: number | null;
  /** What is bought again before the longest life ends, for pictures of the money year by year. */
  readonly again: readonly BoughtAgain[];
  /** Only where nothing is saved in cash: net over the room-hours above the humidity band avoided. */
  readonly money_per_damp_hour_avoided: number | null;
  readonly damp_hours_avoided_per_year: number;
  readonly lines: readonly SumLine[];
}

/**
 * A purchase as a sum: purchase cost, running, and what it takes off the bills for heating and cooling
 * or adds to them.
 *
 * The heat credit is the difference between what heating costs in the two runs and nothing else.
 * Both runs are of the whole home, so heat that laundry or walls took from the room when their
 * water evaporated is in both, and no latent heat is credited a second time.
 *
 * Every kWh is paid at the price of its own hours. Every value is rounded as printed before it is used,
 * money to hundredths, kWh to tenths, prices to five digits behind the point, so that each line that
 * is added can be worked out from the lines above it, and they give the total to the last digit. What
 * comes to 0 is left out.
 *
 * @throws RangeError for a device that is not in the plan's figures
 */
export function purchaseSum(setup: PurchaseSumSetup): PurchaseSum {
  const { baseline, plan, device, discountRate, prices } = setup;
  const spared = (setup.spared ?? []).map((buy) => ({ ...buy, price: -buy.price }));
  const purchases = [...setup.purchases, ...spared];
  const { currency } = plan.money;
  const sheet = sumSheet(currency);
  const purchaseCost = purchaseLines(sheet, purchases, discountRate);
  const run = device === null ? null : runningLines(sheet, setup, device);
  const running = run?.cents ?? 0;
  const differences = useDifferences(baseline, plan, prices);
  for (const difference of differences) differenceLines(sheet, difference);
  const [heat, cooling] = (['heating', 'cooling'] as const).map((of) =>
    differences.reduce((sum, { use, cents: part }) => (use === of ? sum + part : sum), 0),
  ) as [number, number];

  const standings = standingDifferences(baseline, plan);
  for (const { fuel, cents } of standings) {
    sheet.add(`standing charge of ${fuel}, ${cents < 0 ? 'less' : 'more'}`, cents);
  }

  const bill = extraBill(baseline, plan);
  const other = bill - running - heat - cooling;
  const rest = standings.reduce((sum, { cents }) => sum - cents, other);
  if (rest !== 0) {
    const products = [...differences.flatMap((one) => [...one.products]), ...(run ? [run] : [])];
    const isRounding = Math.abs(rest) <= mostRounding(products, standings.length);
    sheet.add(isRounding ? 'rounding' : 'what else changes on the bill', rest);
  }
  const net = purchaseCost + bill;
  sheet.say('net', net / 100, `${currency} a year`);

  const spent = priceOf(purchases);
  const avoided = dampness(baseline).dampHours - dampness(plan).dampHours;
  return {
    ...{ device, drying: run?.drying ?? null, price: spent, purchase_cost: purchaseCost / 100 },
    ...{ running: running / 100, heat_credit: heat / 100, cooling: cooling / 100 },
    ...{ other: other / 100, net: net / 100 },
    ...purchaseWorth(purchases, -bill / 100, discountRate),
    again: boughtAgain(purchases, discountRate),
    money_per_damp_hour_avoided: bill >= 0 && net > 0 && avoided > 0 ? net / 100 / avoided : null,
    damp_hours_avoided_per_year: avoided,
    lines: sheet.lines,
  };
}

/**
 * How far lines as printed may lie from the bill: half of a tenth of a kWh at its price and half of the last
 * digit of the price times its kWh, for each product, and half a hundredth for it, for each standing charge
 * and for the bill. [hundredths/year]
 */
const mostRounding = (
  products: readonly { readonly kwh: number; readonly price: number }[],
  standings: number,
): number =>
  products.reduce(
    (sum, { kwh, price }) => sum + 5 * Math.abs(price) + 0.0005 * Math.abs(kwh) + 0.5,
    0.5 + 0.5 * standings,
  );

/** Something that wears out before the longest life bought ends, and is bought again. */
interface BoughtAgain {
  /** Below 0 for what is not bought then. [currency] */
  readonly price: number;
  readonly afterYears: number;
  /** Share of the price that falls to the years that are left, as counted, and with interest. [-] */
  readonly share: { readonly counted: number; readonly today: number };
}

/**
 * What is bought again within the whole years of the longest life bought. Of what outlasts them its
 * purchase cost of the years that are left counts, as in the present value.
 *
 * @param purchases  what is not bought then has a price below 0
 * @param rate  [1/year]
 */
function boughtAgain(purchases: readonly Purchase[], rate: number): BoughtAgain[] {
  const bought = purchases.filter(({ price }) => price > 0);
  const years = Math.max(0, ...bought.map(({ lastsYears }) => Math.floor(lastsYears)));
  return purchases.flatMap(({ price, lastsYears }) => {
    const times = Math.max(0, Math.ceil(years / lastsYears) - 1);
    return Array.from({ length: times }, (_, k): BoughtAgain => {
      const afterYears = (k + 1) * lastsYears;
      const used = Math.min(lastsYears, years - afterYears);
      const today = annuityFactor(rate, used) / annuityFactor(rate, lastsYears);
      return { price, afterYears, share: { counted: used / lastsYears, today } };
    });
  });
}
