import { expect, test } from 'vitest';
import { compareMeasures } from '../../../src/studies/compare/compare.ts';
import { tradesOf } from '../../../src/studies/compare/trade-sentences.ts';
import { type RoomFigures, somePlan } from '../some-plan.ts';

/** Cold hours of a room: for those who just came in, and for anybody in it. */
const cold = (arriving: number, inAll = arriving): RoomFigures => ({
  occupied: { temperature_low: inAll },
  over: { cold_arrival_hours: arriving },
});
const sentences = (comparison: ReturnType<typeof compareMeasures>) =>
  tradesOf(comparison).map(({ opening, trades }) => `${opening}: ${trades.join('; ')}.`);
const words = (...plans: Parameters<typeof compareMeasures>[0][number][]) =>
  sentences(compareMeasures(plans));

test('what presence saves, and what it costs those who come in and rooms that stand empty', () => {
  const lived = somePlan('as-lived', { den: { ...cold(2), outside: { humidity_high: 900 } } });
  const gated = somePlan('when-home', {
    energy: 760,
    den: {
      over: { cold_arrival_hours: 144.6 },
      outside: { humidity_high: 1500 },
      occupied: { humidity_high: 100, temperature_low: 150 },
    },
  });
  const lead = somePlan('when-home-lead', {
    energy: 820,
    den: { ...cold(30), outside: { humidity_high: 880 } },
  });
  expect(words(lived, gated, lead)).toEqual([
    'Warm mostly while somebody is in, against as-lived: when-home saves 240 GBP a year, with ' +
      '143 more room-hours too cold just after somebody came in and 500 more room-hours too damp ' +
      'with nobody there; when-home-lead saves 180 GBP a year, with 28 more room-hours too cold ' +
      'just after somebody came in.',
  ]);
});

test.each([
  ['a lower setting is cold at all hours', { energy: 800, den: cold(100, 900) }],
  ['a plan that costs more saves nothing by presence', { energy: 1100, den: cold(100) }],
  ['less than a day is not worth a word', { energy: 800, den: cold(23.4) }],
])('%s', (_, figures) => {
  expect(words(somePlan('as-lived'), somePlan('other', figures))).toEqual([]);
});

test('one plan alone trades nothing', () => {
  expect(words(somePlan('only', { den: cold(900) }))).toEqual([]);
});

const buying = (figures: Parameters<typeof somePlan>[1]) => {
  const nothing = { purchases: [], discountRate: 0 };
  const thing = { ...nothing, purchases: [{ what: 'thing', price: 180, lastsYears: 9 }] };
  const lived = somePlan('as-lived', { den: { outside: { humidity_high: 500, pm25_high: 70 } } });
  const bought = somePlan('dry', { purchaseCost: 20, ...figures });
  return sentences(compareMeasures([lived, bought], [nothing, thing]));
};
const AGAINST = 'With what is bought for them, against as-lived: ';

test('a bought thing has its price by the damp hour, and may be earned back', () => {
  const den = { outside: { humidity_high: 100, pm25_high: 70 } };
  expect(buying({ energy: 1060, den })).toEqual([
    `${AGAINST}dry costs 80 GBP a year more, with 400 fewer room-hours too damp (0.200 GBP for ` +
      'each room-hour no longer too damp).',
  ]);
  expect(buying({ energy: 940, den })).toEqual([
    `${AGAINST}dry saves 40 GBP a year, with 400 fewer room-hours too damp (earned back in 3.0 ` +
      'years).',
  ]);
});

test.each([
  [23, 'changes little'],
  [24, 'with 24 fewer room-hours too damp (3.33 GBP for each room-hour no longer too damp).'],
])('%d room-hours: a day of them is worth a word', (fewer, words) => {
  const den = { outside: { humidity_high: 500 - fewer, pm25_high: 70 } };
  const [said] = buying({ energy: 1060, den });
  expect(said).toContain(words);
});

test('what cleans the air is not priced by a few damp hours', () => {
  const den = { outside: { humidity_high: 498, pm25_high: 10 } };
  expect(buying({ energy: 1010, den })).toEqual([
    `${AGAINST}dry costs 30 GBP a year more, with 60 fewer room-hours high in PM2.5.`,
  ]);
});

test('what does nothing is said to', () => {
  const den = { outside: { humidity_high: 500, pm25_high: 70 } };
  expect(buying({ energy: 980, den })).toEqual([
    `${AGAINST}dry costs the same and changes little (earned back in 9.0 years).`,
  ]);
});

test('what cools is told by its hours too warm, where it cools', () => {
  const figures = { den: { outside: { humidity_high: 500, pm25_high: 70 } } };
  const warm = { ...figures.den, occupied: { temperature_high: 260 } };
  const nothing = { purchases: [], discountRate: 0 };
  const unit = { ...nothing, purchases: [{ what: 'unit', price: 900, lastsYears: 9 }] };
  const cooling = { removed_kwh: 120, delivered_kwh: { electricity: 30 } };
  const told = (plan: ReturnType<typeof somePlan>) =>
    sentences(compareMeasures([somePlan('as-lived', { den: warm }), plan], [nothing, unit]));
  const cooled = somePlan('cooled', { energy: 1010, purchaseCost: 120, ...figures });
  expect(told({ ...cooled, cooling })).toEqual([
    `${AGAINST}cooled costs 130 GBP a year more, with 260 fewer room-hours too warm with somebody there.`,
  ]);
  expect(told(cooled)).toEqual([`${AGAINST}cooled costs 130 GBP a year more and changes little.`]);
});
