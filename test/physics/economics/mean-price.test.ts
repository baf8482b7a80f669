import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meanPriceOf } from '../../../src/physics/economics/mean-price.ts';
import type { Tariff } from '../../../src/physics/economics/tariff.ts';
import { AHEAD, AUTUMN, SPRING } from '../../units/summer-time.ts';

const START = Date.UTC(2023, 0, 2) / 1000;

test('one price is that price whenever it is asked', () => {
  const price = meanPriceOf({ by: 'flat', price: 0.3 });
  expect([price(0, 600), price(SPRING - 300, 600), price(AUTUMN, 3600)]).toEqual([0.3, 0.3, 0.3]);
});

test('blocks of some days: nights that start on weekdays, and whole weekends', () => {
  const price = meanPriceOf({
    by: 'blocks',
    price: 4,
    blocks: [
      { from: 23 * 60, to: 7 * 60, days: 0b0011111, price: 1 },
      { from: 0, to: 1440, days: 0b1100000, price: 2 },
    ],
    clock: { from: [0], offset: [3600] },
  });
  const monday = Date.UTC(2024, 0, 1) / 1000 - 3600; // on the meter's clock
  const at = (day: number, hour: number) => price(monday + (day * 24 + hour) * 3600, 600);
  // The night of Friday runs into Saturday, where the later block wins; Sunday's starts none.
  expect([at(0, 0), at(0, 6), at(0, 12), at(0, 23), at(1, 3), at(4, 23.5)]).toEqual([
    4, 4, 4, 1, 1, 1,
  ]);
  expect([at(5, 0), at(5, 3), at(6, 23.5), at(7, 0), at(-1, 12)]).toEqual([2, 2, 2, 4, 2]);
  expect(price(monday + 23 * 3600 - 300, 600)).toBeCloseTo((4 + 1) / 2, 12);
  expect(price(monday + 7 * 86_400 - 150, 600)).toBeCloseTo((2 + 4 * 3) / 4, 12);
  expect(price(monday + 86_400 - 150, 600)).toBe(1);
});

test('blocks of some months, by the month in which they start', () => {
  const NOV_TO_FEB = 0b1100_0000_0011;
  const price = meanPriceOf({
    by: 'blocks',
    price: 4,
    blocks: [
      { from: 1320, to: 360, months: NOV_TO_FEB, price: 1 },
      { from: 300, to: 420, months: 0b100, price: 2 }, // March
    ],
    clock: { from: [0], offset: [3600] },
  });
  // On the meter's clock, an hour ahead.
  const at = (month: number, day: number, hour: number) =>
    price(Date.UTC(2024, month - 1, day, hour - 1) / 1000, 3600);
  expect([at(10, 31, 23), at(11, 1, 5), at(11, 1, 21), at(11, 1, 22), at(1, 1, 3)]).toEqual([
    4, 4, 4, 1, 1,
  ]);
  // The night of the last of February runs into March, until what starts in March takes over.
  expect([2, 4, 5, 6, 7, 22].map((hour) => at(3, 1, hour))).toEqual([1, 1, 2, 2, 4, 4]);
  expect(at(3, 2, 4)).toBe(4);
  // Half an hour on either side of the midnight at which March begins, and of its first five o'clock.
  const edge = (hour: number) => price(Date.UTC(2024, 2, 1, hour - 1) / 1000 - 1800, 3600);
  expect([edge(0), edge(5), edge(7)]).toEqual([1, (1 + 2) / 2, (2 + 4) / 2]);
});

test('a minute beyond a midnight at which the month and its price change', () => {
  const price = meanPriceOf({
    by: 'blocks',
    price: 4,
    blocks: [{ from: 0, to: 1440, months: 0b100, price: 1 }], // March
    clock: { from: [0], offset: [0] },
  });
  expect(price(Date.UTC(2024, 2, 1) / 1000 - 60, 120)).toBe((4 + 1) / 2);
  expect(price(Date.UTC(2024, 3, 1) / 1000 - 540, 600)).toBeCloseTo((9 * 1 + 4) / 10, 12);
});

test('a block that ends when it begins is a whole day', () => {
  const price = meanPriceOf({
    by: 'blocks',
    price: 3,
    blocks: [{ from: 420, to: 420, days: 0b0000001, price: 1 }], // from Monday 7:00
    clock: { from: [0], offset: [0] },
  });
  const at = (hour: number) => price(Date.UTC(2024, 0, 1, hour) / 1000, 600);
  expect([at(6), at(7), at(12), at(30), at(31)]).toEqual([3, 1, 1, 1, 3]);
});

test('of blocks that overlap the later wins', () => {
  const price = meanPriceOf({
    by: 'blocks',
    price: 3,
    blocks: [
      { from: 0, to: 600, price: 1 },
      { from: 300, to: 360, price: 2 },
    ],
    clock: { from: [0], offset: [0] },
  });
  const at = (minute: number) => price(START + minute * 60, 600);
  expect([at(0), at(290), at(300), at(350), at(360), at(590), at(600)]).toEqual([
    1, 1, 2, 2, 1, 1, 3,
  ]);
});

test('the meter changes to summer time and back within a block', () => {
  const price = meanPriceOf({
    by: 'blocks',
    price: 3,
    blocks: [{ from: 0, to: 180, price: 1 }],
    clock: AHEAD,
  });
  const around = (jump: number) =>
    [-1.5, -1, -0.5, 0, 0.5, 1].map((h) => price(jump + h * 3600, 600));
  // Two o'clock becomes three; seven months later three becomes two, and that hour is cheap twice.
  expect(around(SPRING)).toEqual([1, 1, 1, 3, 3, 3]);
  expect(around(AUTUMN)).toEqual([1, 1, 1, 1, 1, 3]);
  expect([price(SPRING - 2.25 * 3600, 1800), price(AUTUMN + 0.75 * 3600, 1800)]).toEqual([2, 2]);
});

test('what was asked before does not change a price', () => {
  const tariff: Tariff = {
    by: 'blocks',
    price: 0.27,
    blocks: [
      { from: 23 * 60 + 30, to: 6 * 60 + 15, price: 0.12 },
      { from: 17 * 60, to: 19 * 60 + 5, price: 0.4 },
    ],
    clock: AHEAD,
  };
  const used = meanPriceOf(tariff);
  const hours = fc.integer({ min: -30, max: 30 });
  const parts = fc.constantFrom(0, 600, 1200, 1800, 2400, 3000);
  const near = fc.constantFrom(SPRING, AUTUMN, START);
  fc.assert(
    fc.property(near, hours, parts, fc.constantFrom(60, 300, 600), (jump, hour, part, seconds) => {
      const utc = jump + hour * 3600 + part;
      expect(used(utc, seconds)).toBe(meanPriceOf(tariff)(utc, seconds));
    }),
  );
});

test('a step that spans several prices pays each for its part, also before the first', () => {
  const prices = Float64Array.of(1, 2, 3);
  const price = meanPriceOf({ by: 'series', start: START + 600, step: 1800, prices });
  expect(price(START, 3600)).toBeCloseTo((3 * 600 + 1 * 1800 + 2 * 1200) / 3600, 12);
});

test('a short series repeats for ever, a year before it as well', () => {
  const prices = Float64Array.of(1, 2, 3, 4, 5, 6, 7);
  const price = meanPriceOf({ by: 'series', start: START, step: 1800, prices });
  const rounds = 2600; // of three and a half hours, more than a year
  const at = (slot: number) => price(START + slot * 1800, 1800);
  expect([-1, 0, 7, 7 * rounds, -7 * rounds, 7 * rounds + 3].map(at)).toEqual([7, 1, 1, 1, 1, 4]);
});

test('a series needs a price', () => {
  const none = { by: 'series', start: 0, step: 1800, prices: new Float64Array() } as const;
  expect(() => meanPriceOf(none)).toThrow('meanPriceOf: a series of prices needs at least 1');
});

test('what has no tariff costs nothing', () => {
  expect(meanPriceOf(undefined)(START, 3600)).toBe(0);
});
