import type { Prices } from '../../home/prices.ts';
import type { DeviceMeasures, PlanMeasures } from '../../measures/plan-measures.ts';
import { paidForKwh } from '../compare/plan-money.ts';

/** What a kWh cost, and how that is known. */
export interface MeanPrice {
  /** [currency/kWh] */
  readonly price: number;
  readonly how: string;
}

/** What a kWh of a fuel costs today. */
export interface FuelPrice {
  /** [currency/kWh] */
  readonly price: number;
  /** What is priced: "gas", or "electricity while it runs" at the hours of a device. */
  readonly what: string;
}

/** What a kWh that a device drew cost, at the hours in which it ran. */
export function devicePrice(
  { electricity_kwh: kwh, electricity_money: money }: DeviceMeasures,
  { fuels }: Prices,
): MeanPrice {
  const tariff = fuels.electricity?.tariff;
  if (tariff === undefined) return { price: 0, how: 'no price of electricity is known' };
  if (tariff.by === 'flat') return { price: tariff.price, how: FLAT };
  if (!(kwh > 0)) return { price: 0, how: 'it drew none' };
  return { price: (money ?? 0) / kwh, how: 'mean of the hours in which it ran' };
}

/**
 * What the kWh cost that one plan draws more than another for one use: the flat price, or by a tariff
 * with hours the difference in money over the difference in kWh.
 *
 * @param money  what it pays more [currency]
 * @param kwh    how many more; not 0
 */
export function priceOfDifference(
  fuel: string,
  money: number,
  kwh: number,
  { fuels }: Prices,
): MeanPrice {
  const tariff = fuels[fuel as keyof typeof fuels]?.tariff;
  if (tariff?.by === 'flat') return { price: tariff.price, how: FLAT };
  return { price: money / kwh, how: MEAN };
}

/**
 * What a kWh of each fuel costs today on the mean, of the fuels whose kWh a plan pays more or less for
 * than the baseline, be it none of them any more; electricity at the hours of a device where there is
 * one and prices have hours.
 */
export function fuelPrices(
  baseline: PlanMeasures,
  plan: PlanMeasures,
  device: string | null,
  prices: Prices,
): Record<string, FuelPrice> {
  const fuels = fuelsOf(baseline, plan).filter(
    (fuel) => paidForKwh(plan, fuel) !== paidForKwh(baseline, fuel),
  );
  const own = device === null ? undefined : plan.devices.detail[device];
  const priced = (fuel: string): FuelPrice => {
    if (fuel === 'electricity' && own !== undefined && own.electricity_kwh > 0) {
      const flat = prices.fuels.electricity?.tariff.by === 'flat';
      return { price: devicePrice(own, prices).price, what: flat ? fuel : `${fuel} while it runs` };
    }
    const mean = meanFuelPrice(plan, fuel, prices) ?? meanFuelPrice(baseline, fuel, prices);
    return { price: mean ?? 0, what: fuel };
  };
  return Object.fromEntries(fuels.map((fuel) => [fuel, priced(fuel)]));
}

/** Prices of a plan, and of fuels that the baseline alone has a use for. */
export const pricesOfBoth = (baseline: Prices, plan: Prices): Prices => ({
  ...plan,
  fuels: { ...baseline.fuels, ...plan.fuels },
});

/** Fuels that the one plan or the other can draw and pays for. */
export const fuelsOf = (...plans: readonly PlanMeasures[]): string[] => [
  ...new Set(plans.flatMap(({ money }) => Object.keys(money.by_fuel))),
];

/**
 * What a kWh of a fuel costs a plan, without standing charges: the one price, or the mean of what it
 * buys. [currency/kWh]
 *
 * @param prices  of any plan: a fuel that is not in them is priced by what the plan pays
 * @returns null where it has no price, or many and the plan buys none
 */
export function meanFuelPrice(plan: PlanMeasures, fuel: string, { fuels }: Prices): number | null {
  const { heating, cooling, devices } = plan;
  const tariff = fuels[fuel as keyof typeof fuels]?.tariff;
  if (tariff?.by === 'flat') return tariff.price;
  const used =
    fuel === 'gas' ? devices.gas_kwh : fuel === 'electricity' ? devices.electricity_kwh : 0;
  const kwh = (heating.delivered_kwh[fuel] ?? 0) + (cooling.delivered_kwh[fuel] ?? 0) + used;
  return kwh > 0 && plan.money.by_use[fuel] !== undefined ? paidForKwh(plan, fuel) / kwh : null;
}

const FLAT = 'the same at all hours';
/** How the price of kWh of many hours is known. */
export const MEAN = 'mean of their hours';
