import { expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { answerInWords } from '../../../src/studies/compare/answer-in-words.ts';
import { compareMeasures } from '../../../src/studies/compare/compare.ts';
import { somePlan } from '../some-plan.ts';

const answer = (...plans: PlanMeasures[]) => {
  const { sentences, trades } = answerInWords(compareMeasures(plans));
  const lists = trades.map((list) => `${list.opening}: ${list.trades.join('; ')}.`);
  return [...sentences, ...lists].join(' ');
};
const cold = (hours: number) => ({ occupied: { temperature_low: hours } });

test('the cheapest, the kindest, and what each gives up', () => {
  const nineteen = {
    energy: 812,
    den: { ...cold(300), outside: { humidity_high: 40 } },
    bath: cold(20),
  };
  expect(answer(somePlan('as-lived', { den: cold(10) }), somePlan('nineteen', nineteen))).toBe(
    'nineteen costs least: 812 GBP a year, 188 GBP less than as-lived. as-lived keeps the rooms ' +
      'in their bands longest (10 room-hours too cold, warm, damp or dry, against 360 with ' +
      'nineteen), for 188 GBP a year more. What nineteen gives up against as-lived: 310 more ' +
      'room-hours too cold with somebody there, 40 more room-hours too damp.',
  );
});

test('one plan that is both', () => {
  const better = somePlan('better', { energy: 900, den: cold(3) });
  expect(answer(somePlan('as-lived', { den: cold(10) }), better)).toBe(
    'better costs least: 900 GBP a year, 100 GBP less than as-lived. better also keeps the rooms ' +
      'in their bands longest (3 room-hours too cold, warm, damp or dry), so nothing is given up ' +
      'for the money.',
  );
});

test('the baseline may be the cheapest itself', () => {
  const airing = somePlan('airing', { energy: 1100 });
  expect(answer(somePlan('as-lived', { den: cold(10) }), airing)).toContain(
    'as-lived costs least: 1000 GBP a year. airing keeps the rooms in their bands longest',
  );
});

test('plans that print the same are equal', () => {
  const same = [somePlan('a', { energy: 1000.2, den: cold(5) }), somePlan('b', { den: cold(5) })];
  expect(answer(...same)).toBe(
    'All plans cost the same: 1000 GBP a year. a and b also keep the rooms in their bands ' +
      'longest (5 room-hours too cold, warm, damp or dry), so nothing is given up for the money.',
  );
});

test('damp counts in empty rooms, cold only where somebody is', () => {
  const empty = { outside: { temperature_low: 900, humidity_high: 50 } };
  expect(answer(somePlan('only', { den: empty }))).toBe(
    'Only only was run: it costs 1000 GBP a year and leaves its rooms outside their bands for ' +
      '50 room-hours (too cold, warm, damp or dry).',
  );
});

test('follows the figures: swapped figures give the swapped answer', () => {
  const [x, y] = [{ energy: 700, den: cold(400) }, { energy: 900 }];
  const one = answer(somePlan('x', x), somePlan('y', y));
  const other = answer(somePlan('x', y), somePlan('y', x));
  expect(one).toContain('x costs least: 700 GBP');
  expect(other).toContain('y costs least: 700 GBP');
});

test('a plan best on the whole still tells in what it is worse', () => {
  const warm = somePlan('as-lived', { den: { occupied: { temperature_high: 500 } } });
  const damp = somePlan('nineteen', { energy: 812, den: { outside: { humidity_high: 300 } } });
  expect(answer(warm, damp)).toContain(
    'nineteen also keeps the rooms in their bands longest (300 room-hours too cold, warm, damp or ' +
      'dry). What nineteen gives up against as-lived: 300 more room-hours too damp.',
  );
});

test.each([
  [3.85, 1.84, true],
  [0.9, 0, false],
  [1.9, 1.7, false],
  [1.9, 1.61, false],
  [1.9, 1.59, true],
  [1, 0.5, true],
])('mould index %d of the cheapest against %d: worth a sentence is %s', (peak, other, told) => {
  const mould = (index: number) => ({ den: { over: { mould_index_peak: index } } });
  const words = answer(
    somePlan('as-lived', mould(other)),
    somePlan('nineteen', { energy: 812, ...mould(peak) }),
  );
  const sentence =
    'Mould at cold spots is likelier with nineteen: index up to 3.9 of 6 (3 is seen by eye), ' +
    'against 1.8 with as-lived.';
  expect(
    words.endsWith(sentence.replace('3.9', peak.toFixed(1)).replace('1.8', other.toFixed(1))),
  ).toBe(told);
});

test('ends with what heating by presence gets and gives', () => {
  const home = { energy: 800, den: { ...cold(60), over: { cold_arrival_hours: 60 } } };
  expect(answer(somePlan('as-lived'), somePlan('when-home', home))).toMatch(
    / Warm mostly while somebody is in, against as-lived: when-home saves 200 GBP a year, with 60 /,
  );
});

test('each sentence and each trade is data of its own', () => {
  const home = { energy: 800, den: { ...cold(60), over: { cold_arrival_hours: 60 } } };
  const comparison = compareMeasures([somePlan('as-lived'), somePlan('when-home', home)]);
  const { sentences, trades } = answerInWords(comparison);
  expect(sentences[0]).toBe('when-home costs least: 800 GBP a year, 200 GBP less than as-lived.');
  expect(trades).toEqual([
    {
      opening: 'Warm mostly while somebody is in, against as-lived',
      trades: [
        'when-home saves 200 GBP a year, with 60 more room-hours too cold just after somebody came in',
      ],
    },
  ]);
});
