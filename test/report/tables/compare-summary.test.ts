import { describe, expect, test } from 'vitest';
import { compareSummary } from '../../../src/report/tables/compare-summary.ts';
import type { ComparisonAnswers } from '../../../src/studies/answers/comparison-answers.ts';
import type { PlanFigures } from '../../../src/studies/effects/plan-figures.ts';

const figures = (plan: string, over: Partial<PlanFigures> = {}): PlanFigures => ({
  ...{
    plan,
    money: 1500,
    energy: 12_000,
    warm: 2,
    warmBy: 0,
    damp: 17,
    dry: 3,
    spots: 6.3,
    dampest: { value: 30, room: 'den' },
    wettest: { value: 12, room: 'den' },
    alerts: 0,
    part: null,
  },
  cold: { value: 0, room: '' },
  coldOf: {},
  mould: { value: 1.24, room: 'bath' },
  air: [
    {
      name: 'co2',
      label: 'CO2',
      unit: 'ppm',
      kind: 'worst night',
      value: 1234,
      over: 30,
      minded: false,
    },
    {
      name: 'pm25',
      label: 'PM2.5',
      unit: 'µg/m3',
      kind: 'mean',
      value: 8.21,
      over: 4,
      minded: false,
    },
  ],
  ...over,
});
const LONG =
  'a plan with a sentence that goes on and on about what is done in each of the rooms, at which hours and why';
const SHORT = { inShort: 'plan-1 saves.', first: '', plan: 'plan-1' };
const answers = (
  count: number,
  over: Partial<ComparisonAnswers> = {},
  name = (k: number) => `plan-${k}`,
): ComparisonAnswers => ({
  ...{ currency: 'GBP', caveat: '', ofWinter: true, failed: [], surprise: '' },
  questions: [
    { title: '19 °C or 21 °C?', ...SHORT, sentences: [`plan-1 saves 40 GBP a year, ${LONG}.`] },
    { title: 'Buy drier for 180 GBP?', ...SHORT, sentences: [`plan-2 costs more, ${LONG}.`] },
  ],
  plans: Array.from({ length: count }, (_, k) => ({
    figures: figures(name(k), k === 0 ? {} : { money: 1500 - 40 + k, energy: 11_000, damp: 36 }),
    description: LONG,
    verdict: k === 0 ? '' : 'cheaper, but damper',
    effects: [],
    causes: [],
  })),
  ...over,
});
const linesOf = (text: string) => text.split('\n');
const widest = (text: string) => Math.max(...linesOf(text).map((line) => [...line].length));

describe('a screen', () => {
  test.each([
    [2, 80, 52],
    [12, 80, 52],
    [12, 200, 40],
    [12, 60, 60],
  ])('%i plans at %i columns in %i lines', (count, width, most) => {
    const text = compareSummary(answers(count), width, most);
    expect(linesOf(text).length).toBeLessThanOrEqual(most);
    expect(widest(text)).toBeLessThanOrEqual(width);
    for (let k = 0; k < count; k++) expect(text).toMatch(new RegExp(`^plan-${k} `, 'm'));
  });

  test('has a column of dry air where that is often so and plans differ in it', () => {
    const of = (...shares: readonly number[]) => {
      const plans = answers(shares.length).plans.map((plan, k) => ({
        ...plan,
        figures: { ...plan.figures, dry: shares[k]! },
      }));
      return compareSummary({ ...answers(shares.length), plans }, 80, 60);
    };
    expect(of(63, 38)).toMatch(/ dry /);
    expect(of(63, 38)).toMatch(/^plan-1 .* 38 /m);
    expect(of(63, 38).replaceAll(/\s+/g, ' ')).toContain('dry: air too dry, of the time, mean');
    expect(of(15, 11)).toMatch(/ dry /);
    expect(of(63, 63)).not.toMatch(/ dry /);
    expect(of(63, 60)).not.toMatch(/ dry /);
    expect(of(14, 3)).not.toMatch(/ dry /);
  });

  test('sentences of plans are always whole; what they gain goes where there is no room', () => {
    const few = compareSummary(answers(2), 80, 60).replaceAll(/\n {2}/g, ' ');
    expect(few).toContain(`${LONG}: cheaper, but damper`);
    const many = compareSummary(answers(12), 80, 40);
    expect(many.replaceAll(/\n {2}/g, ' ').split(LONG)).toHaveLength(12 + 1 + 1); // and one question
    expect(many).not.toContain('…:');
  });

  test('on a wide screen a plan is one line, its sentence behind its figures', () => {
    const text = compareSummary(answers(3), 200, 60);
    expect(text).toMatch(
      /^plan-1 +-39 .* a plan with a sentence that goes on .*: cheaper, but damper$/m,
    );
  });

  test('second sentences go before questions do', () => {
    const two = answers(12).questions.map((question) => ({
      ...question,
      sentences: [...question.sentences, `And ${LONG}.`],
    }));
    const text = compareSummary(
      answers(12, { questions: two }),
      80,
      50,
    ) /* 12 plans of three lines */;
    expect(text).toContain('Buy drier');
    expect(text.match(/\bAnd\b/g) ?? []).toHaveLength(0);
    expect(compareSummary(answers(12, { questions: two }), 80, 60).match(/\bAnd\b/g)).toHaveLength(
      2,
    );
  });

  test('third sentences go before second ones do, those of the last question first', () => {
    const three = answers(12).questions.map((question, k) => ({
      ...question,
      sentences: [`Short ${k}.`, `Then ${k}: ${LONG}.`, `And ${k}: ${LONG}.`],
    }));
    const told = (most: number) =>
      compareSummary(answers(12, { questions: three }), 80, most).match(/(?:Then|And) \d/g) ?? [];
    const seen = new Set(
      Array.from({ length: 30 }, (_, k) =>
        told(70 - k)
          .sort()
          .join(', '),
      ),
    );
    expect([...seen]).toEqual([
      ...['And 0, And 1, Then 0, Then 1', 'And 0, Then 0, Then 1', 'Then 0, Then 1', 'Then 0', ''],
    ]);
  });

  test('where even that is too much, the last questions go and what surprises stays', () => {
    const text = compareSummary(answers(12, { surprise: 'plan-3 rings at night.' }), 80, 35);
    expect(text).toContain('19 °C or 21 °C?');
    expect(text).not.toContain('Buy drier');
    expect(text).toContain('\nSurprising: plan-3 rings at night.');
    expect(text).toContain('\n--all answers 1 more question.\n');
    expect(compareSummary(answers(12), 80, 60)).not.toContain('--all');
  });
});

test('the baseline has its figures, plans the difference in money and energy and figures of their own', () => {
  const row = (text: string, plan: string) =>
    linesOf(text)
      .find((line) => line.startsWith(plan))!
      .split(/ +/)
      .join(' ');
  const text = compareSummary(answers(2), 80, 60);
  expect(row(text, 'plan-0')).toBe('plan-0 1500 12000 0 17 6 1.2 1234 8.2');
  expect(row(text, 'plan-1')).toBe('plan-1 -39 -1000 0 36 6 1.2 1234 8.2');
  expect(text).toMatch(
    /money energy +cold damp wet mould +CO2 PM2\.5\n +GBP +kWh h\/day +% +% +0-6 +ppm µg\/m3/,
  );
  expect(text).toContain('(bath under every plan)');
});

test('a column says where mould is likeliest once plans differ in it, and rings where any does', () => {
  const two = answers(2).plans;
  const other = {
    ...two[1]!,
    figures: figures('b', { mould: { value: 3, room: 'a very long bedroom' }, alerts: 12.6 }),
  };
  const text = compareSummary(answers(2, { plans: [two[0]!, other] }), 80, 60);
  expect(text).toMatch(/^b .* 3\.0 a very l… +13 /m);
  expect(text).toContain('rings: alerts a week.');
  expect(text).not.toContain('under every plan');
});

test('a part of a year, no winter, and a plan that failed are said', () => {
  const plans = answers(2).plans.map((plan, k) => ({
    ...plan,
    figures: {
      ...plan.figures,
      part: { length: '31\u00a0days', money: 130 - 30 * k, energy: 1000 - 200 * k },
    },
  }));
  const text = compareSummary(
    answers(2, {
      ...{ ofWinter: false, failed: ['oven'], currency: 'JPY', plans },
      caveat: 'Only 31 days were run.',
    }),
    80,
    60,
  ).replaceAll('\n', ' ');
  expect(text).toMatch(/^Only 31 days were run\. 19 °C or 21 °C\?/);
  expect(text).toMatch(/ plan-1 +-30 +-200 /);
  expect(text).toContain(
    'Money (without purchases and hot water) and energy in these 31 days: the difference',
  );
  expect(text).not.toContain('energy a year');
  expect(text).toContain('Not run to the end: oven.');
  expect(text).toContain('too cold with somebody in, over the period');
  expect(text).toContain('JPY');
});

test('long and hostile names keep to their column', () => {
  const nasty = (k: number) => `${k}-\u001b[2J-${'x'.repeat(40)}`;
  const text = compareSummary(answers(3, {}, nasty), 80, 60);
  expect(widest(text)).toBeLessThanOrEqual(80);
  expect(text).not.toContain('\u001b');
});
