import { expect, test } from 'vitest';
import { usualIn, worthOf } from '../../../src/scenario/presets/currencies.ts';

// A euro in 2024, by the yearly means of its central bank's reference rates, from memory.
test.each([
  ...([
    ['GBP', 0.85],
    ['USD', 1.08],
    ['CHF', 0.95],
    ['AUD', 1.64],
    ['CAD', 1.48],
  ] as const),
  ...([
    ['NZD', 1.79],
    ['SGD', 1.45],
    ['BGN', 1.96],
    ['ILS', 4],
    ['PLN', 4.31],
  ] as const),
  ...([
    ['RON', 4.97],
    ['BRL', 5.83],
    ['DKK', 7.46],
    ['CNY', 7.79],
    ['HKD', 8.44],
  ] as const),
  ...([
    ['NOK', 11.6],
    ['SEK', 11.4],
    ['ZAR', 19.8],
    ['MXN', 19.8],
    ['CZK', 25.1],
  ] as const),
  ...([
    ['TRY', 35.6],
    ['THB', 38.2],
    ['INR', 90.6],
    ['JPY', 164],
    ['ISK', 149],
  ] as const),
  ...([
    ['HUF', 395],
    ['KRW', 1475],
  ] as const),
])('%s: a price to begin with is of the size of what %d of it buy', (currency, aEuro) => {
  const ratio = worthOf(currency)! / aEuro;
  expect(ratio).toBeGreaterThan(0.5);
  expect(ratio).toBeLessThan(2);
});

test('a price in pounds or euros stays as it is, in others it has two digits', () => {
  expect(usualIn('gbp')(1234.5)).toBe(1234.5);
  expect(usualIn('CZK')(0.0725)).toBe(1.8);
  expect(usualIn('Taler')(0.0725)).toBe(0.0725);
});
