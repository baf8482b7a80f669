import type { Fuel } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import type { Prices } from '../../home/prices.ts';
import { figureText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { toLocal } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { FuelUse } from './energy-use.ts';
import type { Winter } from './winter.ts';

/** What a period's energy costs and emits, with standing charges. */
export interface EnergyBill {
  /** [currency] */
  readonly total: number;
  /** Part of `total` that falls into the winter half of the year. [currency] */
  readonly winter: number;
  readonly byFuel: Readonly<Record<string, number>>;
  /** [kg CO2e] */
  readonly carbon: number;
  /** What the sums leave out. */
  readonly notices: readonly Notice[];
}

/**
 * Standing charges are due for every day of the wall clock and every priced fuel that the home can
 * draw, used or not: whoever keeps a boiler keeps its meter.
 *
 * @param period  first instant [s UTC] and length [h]
 */
export function energyBill(
  uses: readonly FuelUse[],
  prices: Prices,
  clock: LocalClock,
  period: { readonly start: number; readonly hours: number },
  winter: Winter,
): EnergyBill {
  const days = localDays(clock, period);
  const winterDays = winter.days(period.start, period.hours);
  const byFuel: Record<string, number> = {};
  const notices: Notice[] = [];
  let total = 0;
  let inWinter = 0;
  let carbon = 0;
  for (const { fuel, heatKwh, coolKwh, otherKwh, cost, winterCost } of uses) {
    const price = prices.fuels[fuel];
    const kwh = heatKwh + coolKwh + otherKwh;
    if (price === undefined || cost === null || winterCost === null) {
      if (kwh > 0) notices.push(noPrice(fuel, kwh));
      continue;
    }
    byFuel[fuel] = cost + price.standing * days;
    total += byFuel[fuel];
    inWinter += winterCost + price.standing * winterDays;
    carbon += kwh * price.carbon;
  }
  return { total, winter: inWinter, byFuel, carbon, notices };
}

/** Days by the wall clock: a day of 23 or 25 hours is one day. */
function localDays(clock: LocalClock, { start, hours }: { start: number; hours: number }): number {
  return (toLocal(clock, start + hours * 3600) - toLocal(clock, start)) / SECONDS_PER_DAY;
}

const noPrice = (fuel: Fuel, kwh: number): Notice => ({
  id: `no-price-${fuel.replaceAll(' ', '-')}`,
  text:
    `No price is known for ${fuel}: money and carbon leave out the ` +
    `${figureText(kwh, 0)} kWh of it that this plan draws.`,
});
