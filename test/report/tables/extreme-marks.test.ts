import { expect, test } from 'vitest';
import { extremeMarks } from '../../../src/report/tables/extreme-marks.ts';
import { sumText } from '../../../src/units/sum-text.ts';

test('least and most of sums that are grouped', () => {
  const printed = [128_886, 9990, 27_000, -60_814].map((sum) => sumText(sum, 0));
  expect(extremeMarks(printed)).toEqual(['most', '', '', 'least']);
});
