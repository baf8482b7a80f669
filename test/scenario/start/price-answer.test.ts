import { expect, test } from 'vitest';
import { priceIn, priceTrouble } from '../../../src/scenario/start/price-answer.ts';

test.each([
  ['0', { price: 0 }],
  [' 0.27 ', { price: 0.27 }],
  ['-0.1', null],
  ['', null],
  ['0.30 / 0.10 00:30-05:30', { day: 0.3, night: 0.1, hours: '00:30-05:30' }],
  ['0.30 / 0.10 25:00-05:30', null],
  ['prices.csv', { file: 'prices.csv' }],
])('%j says %j', (line, price) => expect(priceIn(line)).toEqual(price));

test.each([
  ['GBP', 'one price', '4.9', '5'],
  ['GBP', 'day and night', '0.30 / 4.9 00:30-05:30', '0.30 / 10 00:30-05:30'],
  ['GBP', 'day and night', '4.9 / 0.1 00:30-05:30', '30 / 0.1 00:30-05:30'],
  // A pound of some 150 yen: 750 of them are five pounds.
  ['JPY', 'one price', '31', '3100'],
  ['JPY', 'day and night', '41 / 15 00:30-05:30', '4100 / 15 00:30-05:30'],
])('in %s, %s: %s may be one, %s is in hundredths', (currency, tariff, may, isNot) => {
  expect(priceTrouble(may, tariff, currency)).toBeNull();
  expect(priceTrouble(isNot, tariff, currency)).toContain('price');
});
