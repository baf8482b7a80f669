/**
 * How many of a currency are worth about one of the pound, the euro or a dollar, in which prices that
 * nobody gave are written down. [-]
 *
 * Rounded exchange rates of about 2024, from memory: near enough for a price to begin with, and for
 * nothing else.
 *
 * @param currency  as the scenario writes it; case does not matter
 * @returns null for a currency that is not known
 */
export const worthOf = (currency: string): number | null =>
  WORTH.get(currency.toUpperCase()) ?? null;

/** A price in pounds or euros as it may be in another currency; as it is in one that is not known. */
export const usualIn = (currency: string): ((price: number) => number) => {
  const worth = worthOf(currency) ?? 1;
  return (price) => (worth === 1 ? price : Number((price * worth).toPrecision(2)));
};

const WORTH: ReadonlyMap<string, number> = new Map(
  Object.entries({
    ...{ MONEY: 1, GBP: 1, EUR: 1, USD: 1, CHF: 1, AUD: 1, CAD: 1, NZD: 1, SGD: 1 },
    ...{ '£': 1, '€': 1, $: 1, EURO: 1, EUROS: 1, POUNDS: 1, DOLLARS: 1 },
    ...{ BGN: 2, ILS: 4, PLN: 4, ZŁ: 4, RON: 5, BRL: 6, DKK: 7, CNY: 7, BOB: 7, HKD: 8 },
    ...{ NOK: 11, SEK: 11, KR: 11, ZAR: 19, MXN: 20, CZK: 25, KČ: 25, TRY: 35, TWD: 35 },
    ...{ THB: 37, UAH: 43, INR: 90, '₹': 90, RSD: 117, JPY: 150, ISK: 150, HUF: 400, FT: 400 },
    ...{ CLP: 1000, KRW: 1400, '₩': 1400 },
  }),
);
