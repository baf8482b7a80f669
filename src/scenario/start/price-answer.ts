import { minutesOf } from '../clock-words.ts';
import { usualIn, worthOf } from '../presets/currencies.ts';
import { type Answers, said } from './question.ts';

/** What a kWh costs, as it was answered. */
export type AnsweredPrice =
  | { readonly price: number }
  | { readonly day: number; readonly night: number; readonly hours: string }
  | { readonly file: string };

/** A price of "0.27", or of "0.30 / 0.10 00:30-05:30", or the name of a CSV file; null for none. */
export function priceIn(line: string): AnsweredPrice | null {
  const text = line.trim();
  if (/\.csv$/i.test(text)) return { file: text };
  const flat = Number(text);
  if (text !== '' && flat >= 0 && flat < Number.POSITIVE_INFINITY) return { price: flat };
  const [, day, night, from, to] = TWO.exec(text) ?? [];
  if (day === undefined) return null;
  const prices = [Number(day), Number(night)];
  const times = [minutesOf(from!), minutesOf(to!)];
  if (times.some(Number.isNaN)) return null;
  return { day: prices[0]!, night: prices[1]!, hours: `${from}-${to}` };
}

/** How electricity is priced by the form of its price, where nobody says; null where that says nothing. */
export function tariffOf(answers: Answers): string | null {
  if (answers['tariff'] !== undefined) return null;
  const price = priceIn(said(answers, 'electricity'));
  if (price === null || 'price' in price) return null;
  return 'day' in price ? 'day and night' : 'file';
}

/** Why a line is no price of this kind, in words; null where it is one. */
export function priceTrouble(line: string, tariff: string, currency: string): string | null {
  const price = priceIn(line);
  const usual = usualIn(currency);
  if (tariff === 'file') {
    return price !== null && 'file' in price ? null : 'the name of a CSV file, such as prices.csv';
  }
  if (tariff === 'one price') {
    return price !== null && 'price' in price && price.price < usual(HIGHEST)
      ? null
      : `a price of a kWh, such as ${usual(0.27)}${notHundredths(currency)}`;
  }
  if (price !== null && 'day' in price && Math.max(price.day, price.night) < usual(HIGHEST)) {
    return null;
  }
  return `prices by day and by night, and the night hours, such as ${twoDigits(usual(0.3))} / ${twoDigits(usual(0.1))} 00:30-05:30${notHundredths(currency)}`;
}

/** "0.30", and "45" where there are whole ones. */
const twoDigits = (price: number): string => (price < 1 ? price.toFixed(2) : String(price));
const notHundredths = (currency: string): string =>
  worthOf(currency) === 1 ? ' (pounds or euros, not pence or cents)' : '';

/** Above it hundredths are meant. [pounds or euros a kWh] */
const HIGHEST = 5;
const TWO = /^(\d*\.?\d+)\s*\/\s*(\d*\.?\d+)\s+(\d{1,2}:\d\d)-(\d{1,2}:\d\d)$/;
