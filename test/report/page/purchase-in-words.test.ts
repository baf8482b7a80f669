import { expect, test } from 'vitest';
import { purchaseInWords } from '../../../src/report/page/purchase-in-words.ts';
import type { Option } from '../../../src/studies/options.ts';
import type { PurchaseStudy } from '../../../src/studies/purchase-study.ts';
import { type RoomFigures, somePlan } from '../../studies/some-plan.ts';

const option = (name: string, den: RoomFigures): Option =>
  ({ name, measures: somePlan(name, { den }) }) as Option;
const air = (pm25_high: number, tvoc_high: number) =>
  option('air', { outside: { pm25_high, tvoc_high } });

/** What is said of a purifier that costs so much a year beside a baseline. */
const words = (net: number, after: Option, before: Option): string[] =>
  purchaseInWords({ about: { option: after }, sum: { net } } as PurchaseStudy, before);

test('a day of room-hours is worth a word, an hour less is not', () => {
  const before = air(100, 100);
  expect(words(60, air(76, 124), before)).toEqual([
    'air costs 60.00 GBP a year, purchase cost included.',
    'Against air there are 24 fewer room-hours high in PM2.5; 24 more room-hours high in TVOC, in 365 days.',
    expect.stringContaining('the program weighs purchases against damp only'),
  ]);
  expect(words(-60, air(77, 123), before).slice(0, 2)).toEqual([
    'air saves 60.00 GBP a year, purchase cost included.',
    'It changes no kind of hours by 24 room-hours or more.',
  ]);
});
