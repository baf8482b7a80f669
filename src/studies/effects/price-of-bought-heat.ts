import type { PlanMeasures } from '../../measures/plan-measures.ts';

/**
 * What a kWh that is bought for emitters costs, mean over the fuels and the hours in which it is bought;
 * NaN where nothing is bought or has a price. [currency/kWh]
 */
export function priceOfBoughtHeat({ heating, money }: PlanMeasures): number {
  const fuels = Object.keys(money.by_use);
  const sum = (of: (fuel: string) => number): number =>
    fuels.reduce((all, fuel) => all + of(fuel), 0);
  return sum((f) => money.by_use[f]!.heating) / sum((f) => heating.delivered_kwh[f] ?? 0);
}
