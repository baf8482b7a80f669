import { expect, test } from 'vitest';
import { inputInWords } from '../../../src/report/page/input-in-words.ts';
import { fittedTable } from '../../../src/report/tables/fitted-table.ts';

const value = (path: string, number: number, more = {}) => ({
  ...{ path, value: number, low: 0.8 * number, high: 1.25 * number, from: 2 * number },
  ...{ unit: 'W/m2K', by: null as string | null, told: true, log: 'log.csv, March' },
  ...more,
});
const FITTED = [
  value('/home/build/wall u-value', 1, { by: 'heat loss factor' }),
  value('/home/build/window u-value', 2, { by: 'heat loss factor' }),
  value('/home/leakage/ach50', 8, { unit: '1/h' }),
  value('/household/open when mild', 0.02, { unit: '', from: null }),
  value('/heating/emitters/power per area', 90, { unit: 'W/m2', told: false }),
];

test('what was found comes first with its unit, then factors, then what was moved along', () => {
  const told = fittedTable(FITTED, (pointer) => inputInWords(pointer, {}).name, 80);
  expect(told).toBe(`log.csv, March
                                      value unit    low   high before
draughts, by a blower door             8.00 1/h    6.40   10.0   16.0
share of windows left open when mild 0.0200      0.0160 0.0250      -
heat loss factor 0.50 (0.40 to 0.63): one factor, found for all of these
together, none of them by itself: U-value of the outer walls 1.00 W/m2K (before
2.00); U-value of the windows 2.00 W/m2K (before 4.00)
Not told by the log, moved along with the rest and as uncertain as before:
heaters, by floor area 90.0 W/m2.`);
  for (const line of told.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
});

test('nothing is said of a home that nothing was fitted of', () => {
  expect(fittedTable([], String, 80)).toBe('');
});
