import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import {
  asSafe,
  type PurchaseSetup,
  weighPurchase,
} from '../../../src/studies/purchase/weigh-purchase.ts';
import { somePlan } from '../some-plan.ts';

interface Figures {
  /** Hours of cold spots above 80 %, in the room in question and elsewhere. */
  spots?: number;
  elsewhere?: number;
  damp?: number;
  cold?: number;
  money?: number;
  hours?: number;
}

const plan = (
  name: string,
  { spots = 0, elsewhere = 0, damp = 0, cold = 0, money = 1000, hours = 8760 }: Figures,
): PlanMeasures =>
  somePlan(name, {
    energy: money,
    hours,
    den: {
      outside: { humidity_high: damp },
      occupied: { temperature_low: cold },
      over: { cold_spot_hours_above_80_pct: spots },
    },
    bath: { over: { cold_spot_hours_above_80_pct: elsewhere } },
  });

const BASE = plan('as-lived', { spots: 800, elsewhere: 100, damp: 1500 });
const DRY = plan('dry', { spots: 50, elsewhere: 60, damp: 200, money: 1065 });
const weigh = (more: Partial<PurchaseSetup> = {}) =>
  weighPurchase({
    ...{ baseline: BASE, plan: DRY, room: 'den', rivals: [], range: { low: 40, high: 90 } },
    ...more,
  });
const names = (more: Partial<PurchaseSetup>) =>
  asSafe({
    ...{ baseline: BASE, plan: DRY, room: 'den', rivals: [], range: { low: 40, high: 90 } },
    ...more,
  }).map((rival) => rival.plan);

describe('the four questions in their order', () => {
  test('nothing else as safe: buy, by as many hours as are taken away beyond a day', () => {
    expect(weigh()).toEqual({
      ...{ verdict: 'buy', standing: 1300 - 24, extra: 65, spots: 790, damp: 1300 },
      ...{ rival: null, better: null },
    });
  });

  test('as safe for more: buy, by as much money', () => {
    const warmer = plan('warmer', { spots: 60, money: 1080 });
    const found = weigh({ rivals: [warmer] });
    expect(found).toMatchObject({ verdict: 'buy', rival: warmer, better: null });
    expect(found.standing).toBeCloseTo(15, 9);
  });

  test('as safe for less: that first, by as much money', () => {
    const aired = plan('aired', { spots: 60, money: 1010 });
    const found = weigh({ rivals: [aired] });
    expect(found).toMatchObject({
      verdict: 'fix something else first',
      rival: aired,
      better: aired,
    });
    expect(found.standing).toBeCloseTo(-55, 9);
  });

  test('as safe for the same: buy, by a hair', () => {
    const same = plan('same', { money: 1065 });
    expect(weigh({ rivals: [same] })).toMatchObject({ verdict: 'buy', standing: Number.EPSILON });
  });

  test.each([
    [24, 0, 'buy', Number.EPSILON],
    [0, 24, 'buy', Number.EPSILON],
    [23, 23, 'wait', -1],
    [-60, -200, 'wait', -84],
  ] as const)('%i h of spots and %i h of damp less: %s', (spots, damp, verdict, standing) => {
    const dry = plan('dry', { spots: 800 - spots, elsewhere: 100, damp: 1500 - damp, money: 1065 });
    expect(weigh({ plan: dry })).toMatchObject({ verdict, standing, spots, damp });
  });

  test('too little taken away: wait, however cheap something else is', () => {
    const dry = plan('dry', { spots: 795, elsewhere: 100, damp: 1500, money: 1065 });
    const aired = plan('aired', { spots: 795, elsewhere: 100, money: 900 });
    expect(weigh({ plan: dry, rivals: [aired] })).toMatchObject({
      ...{ verdict: 'wait', standing: 5 - 24, rival: aired, better: null },
    });
  });

  test('money saved whatever is doubtful: damp is not asked about', () => {
    const dry = plan('dry', { spots: 800, elsewhere: 100, damp: 1500, money: 925 });
    const saved = weigh({ plan: dry, range: { low: -90, high: -60 } });
    expect(saved).toMatchObject({ verdict: 'buy', standing: 75 });
    expect(weigh({ plan: dry, range: { low: -90, high: 0 } }).verdict).toBe('wait');
    const aired = plan('aired', { spots: 800, money: 900 });
    expect(weigh({ plan: dry, rivals: [aired], range: { low: -90, high: -60 } })).toMatchObject({
      verdict: 'fix something else first',
      standing: -25,
    });
  });
});

describe('as safe', () => {
  const rivals = (figures: readonly Figures[]) =>
    figures.map((one, k) => plan(`rival ${k}`, { money: 1010 + k, ...one }));

  test('is within a day of the cold spot of the room in question', () => {
    expect(names({ rivals: rivals([{ spots: 74 }, { spots: 75 }]) })).toEqual(['rival 0']);
    // The other room has more of it than with the purchase, and no more than today.
    expect(names({ rivals: rivals([{ spots: 74, elsewhere: 300 }]) })).toEqual(['rival 0']);
    expect(names({ room: 'bath', rivals: rivals([{ elsewhere: 85 }, { elsewhere: 84 }]) })).toEqual(
      ['rival 1'],
    );
  });

  test('is within a twentieth where that is more', () => {
    const wet = plan('dry', { spots: 600, money: 1065 });
    expect(names({ plan: wet, rivals: rivals([{ spots: 630 }, { spots: 631 }]) })).toEqual([
      'rival 0',
    ]);
  });

  test('leaves the whole home no worse than it is', () => {
    const found = names({ rivals: rivals([{ elsewhere: 900 }, { elsewhere: 901 }]) });
    expect(found).toEqual(['rival 0']);
  });

  test('leaves people in the cold for no more than a day longer', () => {
    const dry = plan('dry', { spots: 50, cold: 10, money: 1065 });
    const found = names({ plan: dry, rivals: rivals([{ cold: 34 }, { cold: 35 }]) });
    expect(found).toEqual(['rival 0']);
  });

  test('cheapest first', () => {
    const dear = rivals([{ money: 1200 }, { money: 1001 }, { money: 1100 }]);
    expect(names({ rivals: dear })).toEqual(['rival 1', 'rival 2', 'rival 0']);
  });

  test('counts hours of a year, however long the period', () => {
    const half = { hours: 4383 };
    const own = plan('dry', { spots: 0, ...half });
    const near = [plan('near', { spots: 12, ...half }), plan('far', { spots: 13, ...half })];
    expect(
      names({ baseline: plan('as-lived', { spots: 99, ...half }), plan: own, rivals: near }),
    ).toEqual(['near']); // 24 and 26 a year
  });
});

describe('whatever the figures', () => {
  const hours = fc.integer({ min: 0, max: 1200 });
  const money = fc.oneof(
    fc.double({ min: -2000, max: 4000, noNaN: true }),
    fc.integer({ min: 998, max: 1002 }),
  );
  const figures = fc.record({ spots: hours, elsewhere: hours, damp: hours, cold: hours, money });
  const setups = fc
    .record({
      baseline: figures,
      bought: figures,
      others: fc.array(figures, { maxLength: 4 }),
      room: fc.constantFrom('den', 'bath'),
      ends: fc.tuple(money, money),
    })
    .map(
      ({ baseline, bought, others, room, ends: [a, b] }): PurchaseSetup => ({
        baseline: plan('as-lived', baseline),
        plan: plan('dry', bought),
        rivals: others.map((one, k) => plan(`rival ${k}`, one)),
        room,
        range: { low: Math.min(a, b) - 1000, high: Math.max(a, b) - 1000 },
      }),
    );

  test('the sign of the standing is the verdict, and it is a number', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const { verdict, standing } = weighPurchase(setup);
        expect(Number.isFinite(standing)).toBe(true);
        expect(Math.sign(standing)).toBe(verdict === 'buy' ? 1 : -1);
      }),
      { numRuns: 1000 },
    );
  });

  test('what is better is as safe, the cheapest, cheaper than the purchase, and only then named', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const { verdict, rival, better } = weighPurchase(setup);
        expect(better !== null).toBe(verdict === 'fix something else first');
        const prices = asSafe(setup).map((one) => one.money.total_per_year);
        expect(rival?.money.total_per_year).toBe(
          prices.length > 0 ? Math.min(...prices) : undefined,
        );
        if (better === null) return;
        expect(better).toBe(rival);
        expect(better.money.total_per_year).toBeLessThan(setup.plan.money.total_per_year);
      }),
      { numRuns: 300 },
    );
  });

  test('one more rival never turns "fix something else first" into "buy"', () => {
    fc.assert(
      fc.property(setups, figures, (setup, one) => {
        const before = weighPurchase(setup);
        const after = weighPurchase({ ...setup, rivals: [...setup.rivals, plan('more', one)] });
        expect(after.verdict === 'wait').toBe(before.verdict === 'wait');
        expect(after.standing).toBeLessThanOrEqual(
          before.rival === null ? Infinity : before.standing,
        );
      }),
      { numRuns: 300 },
    );
  });
});
