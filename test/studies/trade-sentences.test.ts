import { expect, test } from 'vitest';
import { compareMeasures } from '../../src/studies/compare.ts';
import { tradeSentences } from '../../src/studies/trade-sentences.ts';
import { somePlan } from './some-plan.ts';

const cold = (hours: number) => ({ over: { cold_arrival_hours: hours } });
const damp = (hours: number) => ({ outside: { humidity_high: hours } });
const words = (...plans: Parameters<typeof compareMeasures>[0][number][]) =>
  tradeSentences(compareMeasures(plans));

test('what presence saves, and what it costs those who come in and rooms that stand empty', () => {
  const lived = somePlan('as-lived', { den: { ...cold(2), ...damp(900) } });
  const gated = somePlan('when-home', {
    energy: 760,
    den: { ...cold(44.6), outside: { humidity_high: 1500 }, occupied: { humidity_high: 100 } },
  });
  const lead = somePlan('when-home-lead', { energy: 820, den: { ...cold(0.4), ...damp(900) } });
  expect(words(lived, gated, lead)).toEqual([
    'Against as-lived, when-home saves 240 GBP a year, with 43 more room-hours too cold just ' +
      'after somebody came in and 500 more room-hours too damp with nobody there; ' +
      'when-home-lead saves 180 GBP a year, with 2 fewer room-hours too cold just after ' +
      'somebody came in.',
  ]);
});

test('damp while somebody is there is no damp in an empty room', () => {
  const there = { outside: { humidity_high: 500 }, occupied: { humidity_high: 500 } };
  expect(words(somePlan('as-lived'), somePlan('other', { den: there }))).toEqual([]);
});

test.each([
  [1030, 'costs 30 GBP a year more'],
  [1000.3, 'costs the same'],
  [990, 'saves 10 GBP a year'],
])('a plan of %s a year against 1000 %s', (energy, told) => {
  const [sentence] = words(somePlan('as-lived'), somePlan('b', { energy, den: cold(3) }));
  expect(sentence).toContain(`b ${told}, with 3 more`);
});

test('a difference of less than an hour, and plans alike, say nothing', () => {
  expect(words(somePlan('as-lived'), somePlan('b', { energy: 900, den: cold(0.4) }))).toEqual([]);
  expect(words(somePlan('only', { den: cold(9) }))).toEqual([]);
});

const buying = (figures: Parameters<typeof somePlan>[1]) => {
  const there = (hours: number) => ({
    outside: { humidity_high: hours },
    occupied: { humidity_high: hours },
  });
  const nothing = { buys: [], discountRate: 0 };
  const dryer = { ...nothing, buys: [{ what: 'dryer', price: 180, lastsYears: 9 }] };
  const lived = somePlan('as-lived', { den: there(500) });
  return tradeSentences(
    compareMeasures(
      [lived, somePlan('dry', { owning: 20, den: there(500), ...figures })],
      [nothing, dryer],
    ),
  );
};

test('what is bought pays back', () => {
  expect(buying({ energy: 940 })).toEqual(['What dry buys pays back in 3.0 years.']);
});

test('or has its price by the damp hour', () => {
  const drier = { outside: { humidity_high: 100 }, occupied: { humidity_high: 100 } };
  expect(buying({ energy: 1060, den: drier })).toEqual([
    'dry pays 0.200 GBP for each room-hour less that is too damp.',
  ]);
});

test('or does neither', () => {
  expect(buying({ energy: 1060 })).toEqual([
    'What dry buys neither saves energy nor keeps a room from being too damp.',
  ]);
});
