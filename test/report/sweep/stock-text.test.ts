import { expect, test } from 'vitest';
import { stockText } from '../../../src/report/sweep/stock-text.ts';

test('what plans come to over a stock of homes', () => {
  // Eleven homes: as they are 1000 to 1100 a year, 500 to 400 h; dry 20 more but in the last five 30
  // less, and 100 h less in the first two homes.
  const runs = Array.from({ length: 11 }, (_, k) => [
    { home: `h${k}`, plan: 'now', money: 1000 + 10 * k, hours: 500 - 10 * k },
    {
      ...{ home: `h${k}`, plan: 'dry', money: 1000 + 10 * k + (k < 6 ? 20 : -30) },
      hours: 500 - 10 * k + (k < 2 ? -100 : 5),
    },
  ]).flat();
  // Sorted, dry costs 1020, 1030, 1030, 1040, 1040, 1050, 1050, 1060, 1060, 1070, 1070 and has 390, 400,
  // 405, 415 ... 485 h: of eleven the second, sixth and tenth are printed.
  expect(
    stockText(runs, 'GBP', 80),
  ).toBe(`Over 11 homes: the middle one, and in brackets all but the lowest and highest
tenth.

             money a year  outside the bands  cheapest in  fewest hours in
plan                [GBP]           [room h]      [homes]          [homes]
now   1050 (1010 to 1090)   450 (410 to 490)            6                9
dry   1050 (1030 to 1070)   435 (400 to 475)            5                2`);
});
