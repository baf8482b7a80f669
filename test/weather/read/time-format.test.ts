import { describe, expect, test } from 'vitest';
import { clockSeconds } from '../../../src/units/clock-seconds.ts';
import { timeReader } from '../../../src/weather/read/time-format.ts';

const at = (...parts: [number, number, number, number, number]) =>
  Date.UTC(parts[0], parts[1] - 1, parts[2], parts[3], parts[4]) / 1000;

describe('timeReader', () => {
  test.each([
    ['iso', '2023-02-03T04:05Z', at(2023, 2, 3, 4, 5), 0],
    ['iso', '2023-02-03 04:05:30.5+01:30', at(2023, 2, 3, 4, 5) + 30, 5400],
    ['iso', '2023-02-03T04:05-05', at(2023, 2, 3, 4, 5), -18_000],
    ['iso', '2023-02-03T24:00', at(2023, 2, 4, 0, 0), null],
    ['epoch s', '1675397100', 1_675_397_100, 0],
    ['epoch ms', '1675397100000', 1_675_397_100, 0],
    ['DD.MM.YYYY hh:mm', '3.2.2023 4:05', at(2023, 2, 3, 4, 5), null],
    ['MM/DD/YYYY hh:mm A', '02/03/2023 12:05 am', at(2023, 2, 3, 0, 5), null],
    ['MM/DD/YYYY hh:mm A', '02/03/2023 12:05 PM', at(2023, 2, 3, 12, 5), null],
    ['YYYYMMDDhh', '2023020304', at(2023, 2, 3, 4, 0), null],
  ] as const)('%s: %s', (format, text, clock, ahead) => {
    expect(timeReader(format)!.read(text)).toEqual({ clock, ahead });
  });

  test.each([
    ['iso', '2023-02-29T00:00Z'],
    ['iso', '2023-02-03T24:30Z'],
    ['iso', '2023-02-03'],
    ['iso', 'yesterday'],
    ['epoch s', ''],
    ['epoch s', 'NaN'],
    ['epoch s', '1e300'],
    ['epoch ms', '-1e17'],
    ['YYYY-MM-DD hh', '0023-01-01 05'],
    ['DD.MM.YYYY hh:mm', '31.02.2023 00:00'],
    ['DD.MM.YYYY hh:mm', '01.13.2023 00:00'],
    ['DD.MM.YYYY hh:mm', '01-12-2023 00:00'],
    ['MM/DD/YYYY hh:mm A', '02/03/2023 13:05 PM'],
  ])('%s refuses %j', (format, text) => {
    expect(timeReader(format)!.read(text)).toBe(null);
  });

  test('a pattern needs a whole date', () => {
    expect(timeReader('DD.MM. hh:mm')).toBe(null);
    expect(timeReader('')).toBe(null);
  });
});

test('clockSeconds refuses what no clock shows', () => {
  expect(clockSeconds(2023, 1, 1, 25, 0)).toBe(null);
  expect(clockSeconds(2023, 1, 1, 0, 60)).toBe(null);
  expect(clockSeconds(Number.NaN, 1, 1, 0, 0)).toBe(null);
  expect(clockSeconds(2024, 2, 29, 0, 0)).toBe(at(2024, 2, 29, 0, 0));
});
