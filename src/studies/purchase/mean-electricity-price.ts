import type { Prices } from '../../home/prices.ts';
import { boughtForCooling } from '../../measures/energy/cooling-measures.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';

/** What a kWh of a device cost, and how that is known. */
export interface ElectricityPrice {
  /** [currency/kWh] */
  readonly price: number;
  readonly how: string;
}

/**
 * What a kWh that a device drew cost on the mean: the flat price; by a tariff with hours, the extra
 * electricity money of the plan over its extra kWh where electricity neither heats nor cools and the
 * device alone draws more; else the mean price of all electricity of the plan, without standing
 * charges.
 *
 * @param deviceKwh  what the device drew over the period [kWh]
 */
export function meanElectricityPrice(
  baseline: PlanMeasures,
  plan: PlanMeasures,
  deviceKwh: number,
  { fuels }: Prices,
): ElectricityPrice {
  const { electricity } = fuels;
  if (electricity === undefined) return { price: 0, how: 'no price of electricity is known' };
  const { tariff, standing } = electricity;
  if (tariff.by === 'flat') return { price: tariff.price, how: 'the same at all hours' };
  const extra = plan.devices.electricity_kwh - baseline.devices.electricity_kwh;
  const alone = deviceKwh > 0 && Math.abs(extra - deviceKwh) <= 0.001 * deviceKwh;
  if (alone && ![baseline, plan].some(tempersByElectricity)) {
    const price = (moneyOf(plan) - moneyOf(baseline)) / extra;
    return { price, how: 'by the hours at which the device ran' };
  }
  const heating = plan.heating.delivered_kwh['electricity'] ?? 0;
  const kwh = plan.devices.electricity_kwh + heating + boughtForCooling(plan);
  if (kwh <= 0) return { price: 0, how: 'no electricity was drawn' };
  const price = (moneyOf(plan) - (standing * plan.period.hours) / 24) / kwh;
  return { price, how: 'mean of all electricity of the plan' };
}

/** True where electricity is among the fuels that heat was bought as. */
export const heatsByElectricity = ({ heating }: PlanMeasures): boolean =>
  (heating.delivered_kwh['electricity'] ?? 0) > 0;

const tempersByElectricity = (plan: PlanMeasures): boolean =>
  heatsByElectricity(plan) || boughtForCooling(plan) > 0;

const moneyOf = ({ money }: PlanMeasures): number => money.by_fuel['electricity'] ?? 0;
