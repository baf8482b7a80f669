import type { Notice } from '../../home/notices.ts';
import type { Prices, Tariff } from '../../home/prices.ts';
import { isoDay } from '../../units/iso-time.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import type { Weather } from '../../weather/weather.ts';

/** One line on each file of prices that is of another time than the period, and how it is used there. */
export function tariffDates(
  { fuels }: Prices,
  { periodic }: Pick<Weather, 'periodic'>,
  period: { readonly start: number; readonly hours: number },
): Notice[] {
  const year = new Date((period.start + period.hours * 1800) * 1000).getUTCFullYear();
  const weather = periodic ? 'a typical year' : String(year);
  return Object.entries(fuels).flatMap(([fuel, { tariff }]): Notice[] => {
    if (tariff.by !== 'series' || !isElsewhere(tariff, period)) return [];
    const hours = Math.round((tariff.prices.length * tariff.step) / 3600);
    const days = Math.round(hours / 24);
    const from = isoDay(tariff.start);
    if (days < 365) {
      const text = `Prices of ${fuel} cover ${hours < 48 ? `${hours} h` : `${days} days`} from ${from} and repeat through the period, whatever its dates.`;
      return [{ id: 'tariff-repeats', text }];
    }
    const to = isoDay(tariff.start + tariff.prices.length * tariff.step - 1);
    const text = `Prices of ${fuel} are of ${from} to ${to}, the weather is of ${weather}: each hour takes the price of its date and time of day, whatever the weekday.`;
    return [{ id: 'tariff-year', text }];
  });
}

/** Whether more than the odd hours at its ends lie outside the prices. */
function isElsewhere(
  { start, step, prices }: Extract<Tariff, { by: 'series' }>,
  period: { readonly start: number; readonly hours: number },
): boolean {
  const before = Math.max(0, start - period.start);
  const after = Math.max(0, period.start + period.hours * 3600 - start - prices.length * step);
  return before + after > 2 * SECONDS_PER_DAY;
}
