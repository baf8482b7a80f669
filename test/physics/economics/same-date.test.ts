import { expect, test } from 'vitest';
import { meanPriceOf } from '../../../src/physics/economics/mean-price.ts';

const utc = (text: string): number => Date.parse(`${text}Z`) / 1000;

/** Hourly prices that say when they are of: month and day as 100 m + d, and hundredths of the hour. */
function dated(start: string, days: number) {
  const from = utc(start);
  const prices = Float64Array.from({ length: days * 24 }, (_, k) => {
    const at = new Date((from + k * 3600) * 1000);
    return 100 * (at.getUTCMonth() + 1) + at.getUTCDate() + at.getUTCHours() / 100;
  });
  return meanPriceOf({ by: 'series', start: from, step: 3600, prices });
}

test('prices of a year hold by date and hour in any other', () => {
  const price = dated('2024-01-01T00:00', 366);
  const at = (text: string) => price(utc(text), 600);
  expect(at('2023-01-01T00:00')).toBe(101);
  expect(at('2021-12-31T23:00')).toBe(1231.23);
  expect(at('2019-03-01T12:30')).toBe(301.12);
  expect(at('2030-07-15T05:00')).toBe(715.05);
  expect(at('2024-02-29T05:00')).toBe(229.05);
  expect(at('2020-02-29T05:00')).toBe(229.05);
});

test('prices of more than a year hold in other years from their first day on', () => {
  const prices = Float64Array.from({ length: 400 * 24 }, (_, k) => k);
  const price = meanPriceOf({ by: 'series', start: utc('2023-01-01T00:00'), step: 3600, prices });
  expect(price(utc('2022-01-01T05:00'), 600)).toBe(5);
  expect(price(utc('2022-01-02T05:00'), 600)).toBe(29);
  // Its own second January is as it was; what follows its last day is of the first year again.
  expect(price(utc('2024-01-10T00:00'), 600)).toBe(374 * 24);
  expect(price(utc('2024-02-05T00:00'), 600)).toBe(35 * 24);
});

test('a leap day that they lack is the day before', () => {
  const price = dated('2023-01-01T00:00', 365);
  expect(price(utc('2024-02-29T05:00'), 600)).toBe(228.05);
  expect(price(utc('2024-03-01T05:00'), 600)).toBe(301.05);
  expect(price(utc('2024-12-31T05:00'), 600)).toBe(1231.05);
});

test('prices that begin within a year go on into the next', () => {
  const price = dated('2023-04-01T00:00', 366);
  expect(price(utc('2021-02-10T01:00'), 600)).toBe(210.01);
  expect(price(utc('2021-04-01T00:00'), 600)).toBe(401);
  // By the clock an hour east: the first hour of the year is the last of the one before.
  const east = dated('2022-12-31T23:00', 365);
  expect(east(utc('2021-12-31T22:00'), 600)).toBe(1231.22);
  expect(east(utc('2021-12-31T23:00'), 600)).toBe(1231.23);
});
