import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { leadWords } from '../../../src/studies/verdict/lead-words.ts';
import {
  asksTheSame,
  rivalsByMerit,
  type WeighSetup,
  weighPlan,
} from '../../../src/studies/verdict/weigh-plan.ts';
import { someLevel, somePlan } from '../some-plan.ts';

interface Figures {
  /** Hours of cold spots above 80 %, in the room in question and elsewhere. */
  spots?: number;
  elsewhere?: number;
  /** Highest mould index, of the room in question. */
  mould?: number;
  /** Room-hours too cold with somebody in, and of a winter day. */
  cold?: number;
  coldADay?: number;
  money?: number;
  hours?: number;
}

const plan = (
  name: string,
  { spots = 0, elsewhere = 0, mould = spots / 200, cold = 0, coldADay = 0, ...rest }: Figures,
): PlanMeasures =>
  somePlan(name, {
    energy: rest.money ?? 1000,
    hours: rest.hours ?? 8760,
    den: {
      over: {
        cold_spot_hours_above_80_pct: spots,
        mould_index_peak: mould,
        felt_cold_hours: cold,
        winter_cold_hours_per_day: coldADay,
      },
    },
    bath: { over: { cold_spot_hours_above_80_pct: elsewhere } },
  });

/** With wet corners and mould in the den, which all others have none of. */
const wetter = (made: PlanMeasures): PlanMeasures => ({
  ...made,
  rooms: {
    ...made.rooms,
    den: { ...made.rooms['den']!, cold_spot_hours_above_80_pct: 800, mould_index_peak: 4 },
  },
});

const BASE = plan('as-lived', { spots: 800, elsewhere: 100 });
const DRY = plan('dry', { spots: 50, elsewhere: 60, money: 1065 });
const usual: WeighSetup = {
  ...{ baseline: BASE, plan: DRY, guards: ['damp'], room: 'den', rivals: [] },
  range: { low: 40, high: 90 },
};
const weigh = (more: Partial<WeighSetup> = {}) => weighPlan({ ...usual, ...more });
const names = (more: Partial<WeighSetup>) =>
  rivalsByMerit({ ...usual, ...more }).map((rival) => rival.plan);

describe('the six questions in their order', () => {
  test('it helps, and nothing else does as much: worth it', () => {
    const found = weigh();
    expect(found).toMatchObject({ verdict: 'worth it', extra: 65, helped: ['damp'], harms: [] });
    expect(found).toMatchObject({ rival: null, better: null });
    // an index of 4 against the 1 from which it grows
    expect(found.standing).toBeCloseTo(3, 9);
  });

  test('as much for more: worth it, by as much money', () => {
    const warmer = plan('warmer', { spots: 60, money: 1080 });
    const found = weigh({ rivals: [warmer] });
    expect(found).toMatchObject({ verdict: 'worth it', rival: warmer, better: null });
    expect(found.standing).toBeCloseTo(15, 9);
  });

  test('as much for less: that first, by as much money', () => {
    const aired = plan('aired', { spots: 60, money: 1010 });
    const found = weigh({ rivals: [aired] });
    expect(found).toMatchObject({ verdict: 'something else first', rival: aired, better: aired });
    expect(found.standing).toBeCloseTo(-55, 9);
  });

  test('as much for the same: worth it, by a hair', () => {
    const same = plan('same', { money: 1065 });
    expect(weigh({ rivals: [same] })).toMatchObject({
      ...{ verdict: 'worth it', standing: Number.EPSILON },
    });
  });

  test.each([
    ['no mould starts without it', { mould: 0.9 }, 'not needed'],
    ['mould starts without it', { mould: 1 }, 'worth it'],
  ] as const)('%s: %o is %s', (_, figures, verdict) => {
    const baseline = plan('as-lived', { spots: 800, elsewhere: 100, ...figures });
    expect(weigh({ baseline, plan: plan('dry', { money: 1065 }) }).verdict).toBe(verdict);
  });

  test.each([
    ['wet corners of 6 % of the time', 1051.2 - 100, 0, 'damp', 'worth it'],
    ['wet corners of less', 1051 - 100, 0, '', 'not needed'],
    ['damp air of 10 % of the time', 0, 1752, 'damp', 'worth it'],
    ['damp air of less', 0, 1751, '', 'not needed'],
  ])('damp needs no mould: %s', (_, spots, humidity_high, helped, verdict) => {
    const made = plan('as-lived', { spots, elsewhere: 100, mould: 0.5 });
    const den = made.rooms['den']!;
    const outside_band_hours = { ...den.outside_band_hours, humidity_high };
    const baseline = { ...made, rooms: { ...made.rooms, den: { ...den, outside_band_hours } } };
    const found = weigh({ baseline, plan: plan('dry', { mould: 0.5, money: 1065 }) });
    expect(found.verdict).toBe(verdict);
    expect(found.helped.join()).toBe(helped);
    expect(found.dampAlone).toBe(helped !== '');
    // Where it is mended by nothing that happens, it does too little.
    expect(weigh({ baseline, plan: { ...baseline, plan: 'idle' } }).verdict).not.toBe('worth it');
    expect(weigh().dampAlone).toBe(false);
  });

  test('damp air alone is told of and is no harm that a plan does', () => {
    const damper = plan('damper', { spots: 0, cold: 0, mould: 0.5, money: 900 });
    const den = damper.rooms['den']!;
    const outside_band_hours = { ...den.outside_band_hours, humidity_high: 8000 };
    const made = { ...damper, rooms: { ...damper.rooms, den: { ...den, outside_band_hours } } };
    const setup = { baseline: plan('as-lived', {}), plan: made, range: { low: -120, high: -80 } };
    expect(weigh(setup)).toMatchObject({ verdict: 'worth it', harms: [] });
  });

  test('not needed is no matter of its price', () => {
    const baseline = plan('as-lived', { spots: 100, mould: 0.5 });
    for (const money of [1000, 1065, 5000]) {
      expect(weigh({ baseline, plan: plan('dry', { money }) }).verdict).toBe('not needed');
    }
  });

  test('too little where it saves, though not surely, and nothing happens without it', () => {
    const baseline = plan('as-lived', { spots: 100, mould: 0.5 });
    const free = plan('free', { spots: 100, mould: 0.5, money: 990 });
    const unsure = { baseline, plan: free, range: { low: -25, high: 5 } };
    expect(weigh(unsure)).toMatchObject({ verdict: 'too little', extra: -10 });
  });

  test('too little where nobody would notice', () => {
    const dry = plan('dry', { spots: 790, elsewhere: 100, money: 1065 });
    const aired = plan('aired', { spots: 780, elsewhere: 100, money: 900 });
    expect(weigh({ plan: dry, rivals: [aired] })).toMatchObject({
      ...{ verdict: 'too little', helped: [], better: null },
    });
  });

  test('what helps against something else than it is for does too little', () => {
    const cold = { cold: 900, coldADay: 5 };
    const baseline = plan('as-lived', { spots: 800, elsewhere: 100, ...cold });
    const warm = plan('warm', { spots: 800, elsewhere: 100, money: 1065 });
    const setup = { baseline, plan: warm };
    expect(weigh(setup).verdict).toBe('too little');
    expect(weigh({ ...setup, guards: ['cold'] }).verdict).toBe('worth it');
  });

  test('money saved whatever is doubtful: what it is for is not asked about', () => {
    const dry = plan('dry', { spots: 800, elsewhere: 100, money: 925 });
    const saved = weigh({ plan: dry, range: { low: -90, high: -60 } });
    expect(saved).toMatchObject({ verdict: 'worth it', standing: 75 });
    expect(weigh({ plan: dry, range: { low: -90, high: 0 } }).verdict).toBe('too little');
    const aired = plan('aired', { spots: 800, money: 900 });
    expect(weigh({ plan: dry, rivals: [aired], range: { low: -90, high: -60 } })).toMatchObject({
      ...{ verdict: 'something else first', standing: -25 },
    });
  });

  test('what saves or helps and makes something else clearly worse is a trade-off', () => {
    const colder = { cold: 900, coldADay: 5 };
    const cheap = plan('cheap', { spots: 800, elsewhere: 100, ...colder, money: 900 });
    const saving = weigh({ plan: cheap, guards: ['cold'], range: { low: -120, high: -80 } });
    expect(saving).toMatchObject({ verdict: 'a trade-off', harms: [{ of: 'cold' }] });
    const dry = plan('dry', { spots: 50, elsewhere: 60, ...colder, money: 1065 });
    expect(weigh({ plan: dry }).verdict).toBe('a trade-off');
    const dear = plan('dear', { spots: 800, elsewhere: 100, ...colder, money: 1065 });
    expect(weigh({ plan: dear }).verdict).toBe('too little');
  });
});

describe('as much', () => {
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
    const wet = plan('dry', { spots: 600, mould: 1, money: 1065 });
    const near = rivals([
      { spots: 630, mould: 1 },
      { spots: 631, mould: 1 },
    ]);
    expect(names({ plan: wet, rivals: near })).toEqual(['rival 0']);
  });

  test('is as little mould, where the plan makes it less', () => {
    const wet = plan('dry', { spots: 600, mould: 1, money: 1065 });
    const some = [1.3, 1.31, 2].map((mould) => ({ spots: 600, mould }));
    expect(names({ plan: wet, rivals: rivals(some) })).toEqual(['rival 0']);
    // Both stay under 1, where nothing grows; in less than a year it tells nothing.
    const none = plan('dry', { spots: 50, mould: 0.2, money: 1065 });
    expect(names({ plan: none, rivals: rivals([{ spots: 50, mould: 0.9 }]) })).toEqual(['rival 0']);
    const [baseline, own, near] = [800, 50, 55].map((spots, k) =>
      plan(`half ${k}`, { spots, mould: [4, 0, 4][k]!, hours: 4383 }),
    ) as [PlanMeasures, PlanMeasures, PlanMeasures];
    expect(names({ baseline, plan: own, rivals: [near] })).toEqual(['half 2']);
    // Where the plan leaves it as it is, so may others.
    const asItIs = plan('dry', { spots: 50, mould: 4, money: 1065 });
    expect(names({ plan: asItIs, rivals: rivals([{ spots: 50, mould: 4.2 }]) })).toEqual([
      'rival 0',
    ]);
  });

  test('is judged by the mould of the room that the plan is for', () => {
    const elsewhere = (made: PlanMeasures): PlanMeasures => ({
      ...made,
      rooms: { ...made.rooms, bath: { ...made.rooms['bath']!, mould_index_peak: 3 } },
    });
    const found = names({
      ...{ baseline: elsewhere(BASE), plan: elsewhere(DRY) },
      rivals: rivals([
        { spots: 50, mould: 1.3 },
        { spots: 50, mould: 3 },
      ]).map(elsewhere),
    });
    expect(found).toEqual(['rival 0']);
  });

  test('leaves air no drier than as it is by more than two points of the time', () => {
    const dry = (made: PlanMeasures, share: number): PlanMeasures => {
      const den = made.rooms['den']!;
      // Of the time of two rooms.
      const humidity_low = 2 * 8760 * share;
      const outside_band_hours = { ...den.outside_band_hours, humidity_low };
      return { ...made, rooms: { ...made.rooms, den: { ...den, outside_band_hours } } };
    };
    const [near, far] = rivals([{ spots: 50 }, { spots: 50 }]) as [PlanMeasures, PlanMeasures];
    expect(names({ rivals: [dry(near, 0.0199), dry(far, 0.021)] })).toEqual(['rival 0']);
  });

  test('takes nine tenths of the dry air that the plan takes away, of which much stays', () => {
    const dry = (name: string, share: number, money: number): PlanMeasures => {
      const made = plan(name, { money });
      const den = made.rooms['den']!;
      const outside_band_hours = { ...den.outside_band_hours, humidity_low: 2 * 8760 * share };
      return { ...made, rooms: { ...made.rooms, den: { ...den, outside_band_hours } } };
    };
    const others = [dry('as moist', 0.674, 1010), dry('hardly moister', 0.7, 1020)];
    expect(
      names({
        ...{
          baseline: dry('as-lived', 0.72, 1000),
          plan: dry('moist', 0.67, 1065),
          rivals: others,
        },
        ...{ guards: ['dry'], room: null, range: { low: 60, high: 70 } },
      }),
    ).toEqual(['as moist']);
  });

  test('takes nine tenths of the damp air that the plan takes away, in its room', () => {
    const damp = (name: string, hours: number, elsewhere: number, money: number): PlanMeasures => {
      const made = plan(name, { spots: 0, money });
      const inRoom = (room: string, humidity_high: number) => ({
        ...made.rooms[room]!,
        outside_band_hours: { ...made.rooms[room]!.outside_band_hours, humidity_high },
      });
      return { ...made, rooms: { den: inRoom('den', hours), bath: inRoom('bath', elsewhere) } };
    };
    const baseline = damp('as-lived', 4000, 1000, 1000);
    const dry = damp('dry', 1000, 1000, 1065);
    const others = [
      damp('as dry', 1300, 1000, 1010),
      damp('damper', 1301, 1000, 1011),
      // more than the 5000 room-hours of today, by a twentieth of the plan's and one
      damp('damper elsewhere', 1000, 4101, 1012),
      damp('hardly damper elsewhere', 1000, 4100, 1013),
    ];
    const weighed = { baseline, plan: dry, range: { low: 60, high: 70 } };
    // Corners are dry in all of them, so that nothing else tells them apart.
    expect(names({ ...weighed, baseline: wetter(baseline), rivals: others })).toEqual([
      ...['as dry', 'hardly damper elsewhere'],
    ]);
    // Of what a plan leaves as it is, others need not take any away.
    const idle = damp('dry', 4000, 1000, 1065);
    const found = names({
      ...weighed,
      ...{ baseline: wetter(baseline), plan: idle, rivals: [damp('near', 4000, 1000, 1010)] },
    });
    expect(found).toEqual(['near']);
  });

  test('leaves the whole home no worse than it is, but for a day of one room in a year', () => {
    const found = names({ rivals: rivals([{ elsewhere: 924 }, { elsewhere: 925 }]) });
    expect(found).toEqual(['rival 0']);
  });

  test('leaves people in the cold for no more than a day longer', () => {
    const dry = plan('dry', { spots: 50, cold: 10, money: 1065 });
    const found = names({ plan: dry, rivals: rivals([{ cold: 34 }, { cold: 35 }]) });
    expect(found).toEqual(['rival 0']);
  });

  test('takes nine tenths of what the plan takes out of the air', () => {
    const air = (name: string, mean: number, money: number): PlanMeasures => {
      const made = plan(name, { spots: 0, money });
      const carried = (level: number, over: number) => ({
        species: { co2: someLevel(level) },
        over,
      });
      const den = { ...made.rooms['den']!, ...carried(mean, 0) };
      const outside_band_hours = { ...den.outside_band_hours, co2_high: 3000 };
      return { ...made, rooms: { den: { ...den, outside_band_hours } } };
    };
    const [baseline, own] = [air('as-lived', 1000, 1000), air('own', 850, 1070)];
    const near = [air('near', 862, 1030), air('half', 880, 1031)];
    const found = names({ baseline, plan: own, guards: ['air'], room: null, rivals: near });
    expect(found).toEqual(['near']);
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
      names({ baseline: plan('as-lived', { spots: 990, ...half }), plan: own, rivals: near }),
    ).toEqual(['near']); // 24 and 26 a year
  });
});

describe('whatever the figures', () => {
  const hours = fc.integer({ min: 0, max: 1200 });
  const money = fc.oneof(
    fc.double({ min: -2000, max: 4000, noNaN: true }),
    fc.integer({ min: 998, max: 1002 }),
  );
  const mould = fc.double({ min: 0, max: 6, noNaN: true });
  const coldADay = fc.double({ min: 0, max: 12, noNaN: true });
  const figures = fc.record({
    ...{ spots: hours, elsewhere: hours, cold: hours, money, mould, coldADay },
  });
  const setups = fc
    .record({
      baseline: figures,
      bought: figures,
      others: fc.array(figures, { maxLength: 4 }),
      room: fc.constantFrom('den', 'bath', null),
      guards: fc.uniqueArray(fc.constantFrom('damp', 'cold', 'heat', 'dry', 'air'), {
        minLength: 1,
      }),
      ends: fc.tuple(money, money),
    })
    .map(
      ({ baseline, bought, others, room, guards, ends: [a, b] }): WeighSetup => ({
        baseline: plan('as-lived', baseline),
        plan: plan('dry', bought),
        rivals: others.map((one, k) => plan(`rival ${k}`, one)),
        ...{ room, guards },
        range: { low: Math.min(a, b) - 1000, high: Math.max(a, b) - 1000 },
      }),
    );

  test('the sign of the standing is the verdict, and it is a number', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const { verdict, standing } = weighPlan(setup);
        expect(Number.isFinite(standing)).toBe(true);
        expect(Math.sign(standing)).toBe(verdict === 'worth it' ? 1 : -1);
      }),
      { numRuns: 1000 },
    );
  });

  test('what is better does as much, is the cheapest, cheaper than the plan, and only then named', () => {
    fc.assert(
      fc.property(setups, (setup) => {
        const { verdict, rival, better } = weighPlan(setup);
        expect(better !== null).toBe(verdict === 'something else first');
        const prices = rivalsByMerit(setup).map((one) => one.money.total_per_year);
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

  test('one more rival never turns "something else first" into "worth it"', () => {
    fc.assert(
      fc.property(setups, figures, (setup, one) => {
        const before = weighPlan(setup);
        const after = weighPlan({ ...setup, rivals: [...setup.rivals, plan('more', one)] });
        const asked = new Set(['worth it', 'something else first']);
        expect(asked.has(after.verdict)).toBe(asked.has(before.verdict));
        if (before.verdict === 'something else first') expect(after.verdict).toBe(before.verdict);
        if (!asked.has(before.verdict)) expect(after.verdict).toBe(before.verdict);
      }),
      { numRuns: 300 },
    );
  });
});

test('not needed and too little ask the same of a person: to leave it', () => {
  expect(asksTheSame('not needed', 'too little')).toBe(true);
  expect(asksTheSame('too little', 'a trade-off')).toBe(false);
  expect(asksTheSame('worth it', 'something else first')).toBe(false);
});

test('to heat a home further that is always too warm is a harm', () => {
  const hot = (name: string, kelvin: number, money: number) => {
    const room = {
      outside: { temperature_high: 8760 },
      occupied: { temperature_high: 3000 },
      over: { occupied_hours: 3000, degree_hours_above: kelvin * 8760 },
    };
    return somePlan(name, { energy: money, den: room, bath: room });
  };
  const setup = (kelvin: number) => ({
    ...{ baseline: hot('as-lived', 2, 1000), plan: hot('other', kelvin, 900) },
    ...{ guards: ['damp' as const], room: null, rivals: [], range: { low: -110, high: -90 } },
  });
  const weighed = (kelvin: number) => weighPlan(setup(kelvin));
  expect(weighed(2).verdict).toBe('worth it');
  expect(weighed(6).verdict).toBe('a trade-off');
  expect(weighed(6).harms.map(({ of }) => of)).toEqual(['warm']);
  // There are no more hot hours than before.
  const own = { ...setup(6), purchases: [], discountRate: 0, prices: null!, flips: [] };
  const { verdict } = leadWords(own, weighed(6));
  expect(verdict).toContain('hotter rooms');
  expect(verdict).not.toContain('hot hours');
});
