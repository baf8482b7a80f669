import { expect, test } from 'vitest';
import { tryStrip } from '../../../src/report/page/try-strip.ts';
import { sumText } from '../../../src/units/sum-text.ts';

function drawn(before: number, after: number): string {
  const printed = { before: sumText(before, 0), after: sumText(after, 0) };
  const figure = { name: 'money', unit: 'JPY a year', change: '', look: 'worse' as const };
  return tryStrip({ ...figure, ...printed }).markup;
}

test('sums of six digits are drawn as a hundredth of them would be', () => {
  expect(drawn(128_800, 160_000)).toBe(drawn(1288, 1600));
  expect(drawn(128_800, 160_000)).not.toBe(drawn(Number.NaN, Number.NaN));
});
