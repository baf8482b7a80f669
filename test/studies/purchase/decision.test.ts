import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { type DecisionSetup, decision } from '../../../src/studies/purchase/decision.ts';
import { somePlan } from '../some-plan.ts';

interface Figures {
  spots: number;
  damp?: number;
  cold?: number;
  energy?: number;
  purchaseCost?: number;
  hours?: number;
  mould?: number;
}
const plan = (
  name: string,
  { spots, damp = 0, cold = 0, mould = 2, ...money }: Figures,
): PlanMeasures =>
  somePlan(name, {
    ...money,
    den: {
      outside: { humidity_high: damp },
      occupied: { temperature_low: cold },
      over: { cold_spot_hours_above_80_pct: spots, mould_index_peak: mould },
    },
  });

const BASE = plan('as-lived', { spots: 800, damp: 1500, energy: 1000 });
const DRY = plan('dry', { spots: 50, damp: 200, energy: 1040, purchaseCost: 25 });
const decide = (more: Partial<DecisionSetup> = {}) =>
  decision({
    ...{ baseline: BASE, plan: DRY, room: 'den', rivals: [], flips: [] },
    range: { low: 40, high: 90 },
    ...more,
  });

describe('buy', () => {
  test('where it takes damp away and nothing else does for less', () => {
    expect(decide()).toEqual({
      verdict: 'buy',
      sure: true,
      instead: null,
      sentences: [
        'Buy it if 65 GBP a year are worth it to you: nothing else that was tried brings the mould risk of the den as low as dry.',
        'Cold spots above 80 % go from 800 to 50 room-hours a year, rooms too damp from 1500 to 200.',
        'It costs 65 GBP a year, purchase cost included; between 40 and 90 with doubtful inputs low and high, below 0 being saved.',
      ],
    });
  });

  test('where it saves money whatever is doubtful, damp or not', () => {
    const saves = plan('dry', { spots: 800, damp: 1500, energy: 900, purchaseCost: 25 });
    const found = decide({ plan: saves, range: { low: -90, high: -60 } });
    expect(found).toMatchObject({ verdict: 'buy', sure: true });
    expect(found.sentences[0]).toBe('Buy it: dry saves money whatever the doubtful inputs are.');
    expect(found.sentences[1]).toBe(
      'Cold spots are above 80 % for 800 room-hours a year with it or without.',
    );
    expect(found.sentences[2]).toContain('It saves 75 GBP a year');
  });

  test('only for the dryness where mould would not get going anyway', () => {
    const calm = plan('as-lived', { spots: 800, damp: 1500, energy: 1000, mould: 0.9 });
    const lead = (more: Partial<DecisionSetup> = {}) =>
      decide({ baseline: calm, ...more }).sentences[0];
    expect(lead()).toBe(
      'Buy it only for the dryness: mould would not get going in the den even without dry; nothing else that was tried makes it as dry.',
    );
    expect(lead({ rivals: [plan('warmer', { spots: 60, energy: 1080 })] })).toMatch(
      /makes it as dry for less\.$/,
    );
  });

  test('names the nearest other way, and is not sure where doubt is larger than the gap', () => {
    const warmer = plan('warmer', { spots: 60, energy: 1080 });
    const near = decide({ rivals: [warmer] });
    expect(near).toMatchObject({ verdict: 'buy', sure: false });
    expect(near.sentences[0]).toBe(
      'Buy it: nothing else that was tried brings the mould risk of the den as low for less than dry.',
    );
    expect(near.sentences.slice(3)).toEqual([
      'The cheapest other way to as low a mould risk, warmer, costs 15 GBP a year more.',
      'This is not sure: doubtful inputs move the money by 25 GBP a year, and only 15 lie between it and the next.',
    ]);
    const far = plan('warmer', { spots: 60, energy: 1200 });
    expect(decide({ rivals: [far] })).toMatchObject({ verdict: 'buy', sure: true });
  });
});

test.each([
  ['dearer', { low: 64, high: 90 }, 25],
  ['cheaper', { low: 40, high: 66 }, 25],
  ['a little of both', { low: 51, high: 79 }, null],
])('doubt that makes it %s counts by its farther side', (_, range, moved) => {
  // 65 GBP a year, and 15 more for the only other way.
  const found = decide({ rivals: [plan('warmer', { spots: 60, energy: 1080 })], range });
  expect(found.sure).toBe(moved === null);
  expect(found.sentences.some((words) => words.startsWith('This is not sure'))).toBe(
    moved !== null,
  );
  if (moved !== null) expect(found.sentences.at(-1)).toContain(`by ${moved} GBP a year`);
});

describe('fix something else first', () => {
  const aired = plan('aired', { spots: 60, energy: 1010 });

  test('where something as safe costs less: the cheapest of it', () => {
    const fan = plan('fan', { spots: 70, energy: 1020, purchaseCost: 20 });
    const found = decide({ rivals: [fan, aired] });
    expect(found).toMatchObject({
      verdict: 'fix something else first',
      instead: 'aired',
      sure: true,
    });
    expect(found.sentences[0]).toBe(
      'Fix something else first: aired keeps the mould risk of the den as low and costs 55 GBP a year less than dry.',
    );
  });

  test('not where it is less safe, or leaves people in the cold', () => {
    const damper = plan('aired', { spots: 75, energy: 1010 });
    const colder = plan('aired', { spots: 60, cold: 25, energy: 1010 });
    expect(decide({ rivals: [damper, colder] }).verdict).toBe('buy');
    expect(decide({ rivals: [plan('aired', { spots: 74, cold: 24, energy: 1010 })] }).verdict).toBe(
      'fix something else first',
    );
  });
});

describe('wait', () => {
  test('where there is nothing to take away', () => {
    const found = decide({
      baseline: plan('as-lived', { spots: 20, damp: 10, energy: 1000 }),
      plan: plan('dry', { spots: 0, damp: 0, energy: 1030, purchaseCost: 25 }),
    });
    expect(found.verdict).toBe('wait');
    expect(found.sentences[0]).toBe('Wait: dry would change too little here to be worth buying.');
  });

  test('where it makes things worse', () => {
    expect(decide({ plan: plan('dry', { spots: 900, damp: 1600, energy: 1040 }) }).verdict).toBe(
      'wait',
    );
  });

  test('and then a cheaper way is said to be cheaper, not to cost less than nothing more', () => {
    const dry = plan('dry', { spots: 790, damp: 1490, energy: 1040, purchaseCost: 25 });
    const aired = plan('aired', { spots: 795, damp: 1500, energy: 1010 });
    const found = decide({ plan: dry, rivals: [aired] });
    expect(found).toMatchObject({ verdict: 'wait', sure: true, instead: null });
    expect(found.sentences.at(-1)).toBe(
      'The cheapest other way to as low a mould risk, aired, costs 55 GBP a year less.',
    );
  });

  test('where it would save money only if all went well', () => {
    const little = plan('dry', { spots: 800, damp: 1490, energy: 970 });
    expect(decide({ plan: little, range: { low: -60, high: 5 } }).verdict).toBe('wait');
  });
});

describe('what would turn it round', () => {
  const price = { input: 'the price of electricity', unit: 'GBP/kWh', today: 0.27, likely: true };

  test('is said, and takes the certainty away', () => {
    const found = decide({ flips: [{ ...price, value: 0.412 }] });
    expect(found.sure).toBe(false);
    expect(found.sentences).toContain(
      'It would turn round were the price of electricity 0.412 GBP/kWh instead of 0.270.',
    );
  });

  test('is said too where it is unlikely, and leaves the answer sure', () => {
    const found = decide({ flips: [{ ...price, value: 0.95, likely: false }] });
    expect(found.sure).toBe(true);
    expect(found.sentences.at(-1)).toBe(
      'It would turn round were the price of electricity 0.950 GBP/kWh instead of 0.270.',
    );
  });

  test('what does not turn it is not', () => {
    expect(decide({ flips: [{ ...price, value: null }] })).toEqual(decide());
  });
});

test('hours of a quarter count as a year of them', () => {
  const quarter = { hours: 2191.5 };
  const before = plan('as-lived', { spots: 7, energy: 250, ...quarter });
  const after = plan('dry', { spots: 0, energy: 251, ...quarter });
  const found = decide({ baseline: before, plan: after, range: { low: 4, high: 4 } });
  expect(found.verdict).toBe('buy'); // 28 a year
  expect(found.sentences.slice(1)).toEqual([
    'Cold spots above 80 % go from 28 to 0 room-hours a year, rooms too damp from 0 to 0.',
    'It costs 4 GBP a year, purchase cost included.',
  ]);
});
