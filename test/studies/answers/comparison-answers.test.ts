import { expect, test } from 'vitest';
import { comparisonAnswers } from '../../../src/studies/answers/comparison-answers.ts';
import { somePlan } from '../some-plan.ts';
import { preparedPlans } from './asked.ts';

const PLANS = `  a: { change: {}, description: as we live }
  b: { change: { heating: { setpoint: 23 } } }
  c: { change: { heating: { setpoint: 19 } } }
  d: { change: { heating: { setpoint: 20 } } }
`;
type Figures = Parameters<typeof somePlan>[1];
const answers = (figures: readonly Figures[]) =>
  comparisonAnswers(
    preparedPlans(PLANS)
      .slice(0, figures.length)
      .map((prepared, k) => ({ prepared, measures: somePlan(prepared.plan, figures[k]) })),
    ['broken'],
  );

test('the baseline first and the others by their money, each with what it gains beside it', () => {
  const { plans, currency, failed, questions } = answers([
    { energy: 1000 },
    { energy: 1200 },
    { energy: 800, den: { outside: { humidity_high: 3504 } } },
    { energy: 900 },
  ]);
  expect(plans.map(({ figures, verdict }) => [figures.plan, verdict])).toEqual([
    ['a', ''],
    ['c', 'cheaper, but damper'],
    ['d', 'cheaper'],
    ['b', 'dearer'],
  ]);
  expect(plans[0]).toMatchObject({ description: 'as we live', effects: [], causes: [] });
  expect(plans[1]!.effects.map(({ word }) => word)).toEqual(['damper']);
  expect([currency, failed, questions.length > 0]).toEqual(['GBP', ['broken'], true]);
});

test('a part of a year is told as one, and cold as that of winter where a room has some', () => {
  expect(answers([{}, {}])).toMatchObject({ caveat: '', ofWinter: true });
  const summer = { over: { winter_cold_hours_per_day: null } };
  const weeks = answers([{ hours: 336, den: summer, bath: summer }]);
  expect(weeks.ofWinter).toBe(false);
  expect(weeks.caveat).toContain('14 days');
  expect(answers([{ den: summer }]).ofWinter).toBe(true);
});

test('weather of elsewhere is told before any answer', () => {
  const text = 'The weather is of a place 24.4° further north than the home.';
  const runs = preparedPlans(PLANS).map((prepared) => ({
    prepared,
    measures: {
      ...somePlan(prepared.plan, { hours: 336 }),
      cautions: [{ id: 'weather-elsewhere', text }],
    },
  }));
  expect(comparisonAnswers(runs).caveat).toMatch(
    /^The weather is of a place 24\.4° further north than the home\. 14 days were run/,
  );
});

test.each(['all-prices-assumed', 'price-unknown'])('%s is told before any answer', (id) => {
  const runs = preparedPlans(PLANS).map((prepared) => ({
    prepared,
    measures: { ...somePlan(prepared.plan, {}), cautions: [{ id, text: 'Sums rest on nothing.' }] },
  }));
  expect(comparisonAnswers(runs).caveat).toBe('Sums rest on nothing.');
});

test('no plan has no answer', () => {
  expect(() => comparisonAnswers([])).toThrow('comparisonAnswers: needs at least one plan');
});
