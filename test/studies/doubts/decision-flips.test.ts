import { describe, expect, test } from 'vitest';
import {
  decisionFlips,
  type FlipsSetup,
  flipOf,
} from '../../../src/studies/doubts/decision-flips.ts';
import type { Flip } from '../../../src/studies/doubts/flip.ts';
import type { FlipInput } from '../../../src/studies/doubts/flip-inputs.ts';
import type { Option } from '../../../src/studies/options.ts';
import type { PlanVariant } from '../../../src/studies/plan-variant.ts';
import { weighPlan } from '../../../src/studies/verdict/weigh-plan.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { AIRED, DRIER, DRY, linearScenario, linearWorld, type Today } from '../linear-world.ts';
import { somePlan } from '../some-plan.ts';

const PLANS = ['as-lived: { change: {} }', AIRED, DRY];

interface Asked extends Today {
  /** What could be done instead. */
  rivals?: readonly string[];
  over?: Partial<Omit<FlipsSetup, 'rivals'>>;
  files?: ReadonlyMap<string, string>;
}

/** The dehumidifier against airing, or against nothing. */
async function flips({ rivals = ['aired'], over, files, ...today }: Asked = {}) {
  const world = linearWorld(linearScenario({ plans: PLANS, ...today }), files);
  const { named, run } = world;
  const [baseline, plan] = [named('as-lived'), named('dry')];
  const extra = plan.measures.money.total_per_year - baseline.measures.money.total_per_year;
  const found = await decisionFlips({
    ...{ baseline, plan, rivals: rivals.map(named), run, weigh },
    range: { low: extra - 10, high: extra + 10 },
    fuelPrices: electricityAt(typeof today.electricity === 'number' ? today.electricity : 0.3),
    ...over,
  });
  return { found, asked: world.asked };
}
const weigh: FlipsSetup['weigh'] = (figures) =>
  weighPlan({ guards: ['damp'], room: 'den', ...figures });
const today = await flips();
const alone = await flips({ rivals: [] });

const of = (found: readonly Flip[], words: string): Flip =>
  found.find(({ input }) => input.includes(words))!;

describe('the price of electricity', () => {
  // 300 kWh and 22.5 of purchase cost against 127.5: 105 / 300
  test('turns "buy" round above, where airing gets cheaper', () => {
    expect(of(today.found, 'electricity')).toEqual({
      ...{ path: null, input: 'the price of electricity', unit: 'GBP/kWh', today: 0.3 },
      ...{ low: expect.closeTo(0.075, 9), high: expect.closeTo(1.2, 9) },
      ...{ value: expect.closeTo(0.35, 9), becomes: 'something else first', likely: true },
      ...{ tried: true, relative: false },
      note: 'the kWh of the runs priced again, all hours dearer alike',
    });
  });

  test.each([
    [0.5, true],
    [0.7, false],
  ])(
    'turns "something else first" at %d round below, at the same price',
    async (electricity, likely) => {
      const { found } = await flips({ electricity });
      expect(of(found, 'electricity')).toMatchObject({ value: expect.closeTo(0.35, 9), likely });
    },
  );

  test('is exact where money is weighed on one side and something else on the other', async () => {
    const { found } = await flips({
      over: {
        weigh: ({ plan, rivals: [aired] }) => {
          const more = plan.money.total_per_year - aired!.money.total_per_year;
          return more < 0
            ? { verdict: 'worth it', standing: -more }
            : { verdict: 'not needed', standing: -0.7 };
        },
      },
    });
    expect(Math.abs(of(found, 'electricity').value! - 0.35)).toBeLessThan(0.3 / 1000);
  });

  test('turns nothing round where nothing else is as safe', () => {
    expect(of(alone.found, 'electricity')).toMatchObject({ value: null, likely: false });
  });

  test('is asked for in a run of its own where something goes by it: by day and night, both', async () => {
    const electricity = '{ day: 0.3, night: 0.1, night hours: ["00:00-07:00"] }';
    const more =
      'rules: [{ name: cheap, when: [{ price: electricity, under: 0.2, clear: 0.21 }], response: [{ tell: wash now }] }]';
    const { found, asked } = await flips({ electricity, more });
    expect(of(found, 'electricity').value).toBeCloseTo(0.35, 9);
    expect(of(found, 'electricity').note).toContain('because something goes by the price');
    const settings = asked.map(({ set }) => set.filter((words) => words.startsWith('/money')));
    expect(settings.filter((set) => set.length > 0).length).toBeGreaterThan(6);
    for (const set of settings.filter(({ length }) => length > 0)) {
      const [day, night] = set.map((words) => Number(words.split('=')[1]));
      expect(day! / night!).toBeCloseTo(3, 9);
    }
  });

  test('from a file is priced again without a run', async () => {
    const prices = 'time,price\n2023-01-01T00:00Z,0.3\n2023-01-01T01:00Z,0.3\n';
    const { found, asked } = await flips({
      electricity: '{ prices: p.csv }',
      files: new Map([['p.csv', prices]]),
    });
    expect(of(found, 'electricity')).toMatchObject({
      value: expect.closeTo(0.35, 9),
      note: 'the kWh of the runs priced again, all hours dearer alike',
    });
    expect(touching(asked, '/money')).toEqual([]);
  });
});

describe('water of the household', () => {
  // 300 h at 2 L/day, 300 h a litre: an index of 1, or 100 h, at 4/3
  test('turns "buy" round below', () => {
    expect(of(alone.found, 'water')).toEqual({
      ...{
        path: null,
        input: 'water from washing, cooking, laundry and plants',
        unit: 'L/day',
        today: 2,
      },
      ...{ low: 0.5, high: 6, value: expect.closeTo(4 / 3, 9), likely: true },
      becomes: 'not needed',
      ...{ tried: true, relative: false },
      note: 'by running again; every activity more or less alike',
    });
  });

  test('turns "not needed" round above', async () => {
    const { found } = await flips({ water: 1, rivals: [] });
    expect(of(found, 'water')).toMatchObject({ value: expect.closeTo(4 / 3, 9), likely: true });
  });

  test('is found too where money is weighed on one side and hours on the other', () => {
    // four halvings from 2 to 0.5
    expect(Math.abs(of(today.found, 'water').value! - 4 / 3)).toBeLessThan(1.5 / 16);
  });
});

describe('the thermostats', () => {
  // 300 h at 18 °C, 100 h less a kelvin: an index of 1 at 20
  test('turn "buy" round above', () => {
    expect(of(alone.found, 'thermostat')).toEqual({
      ...{ path: null, input: 'the thermostat', unit: '°C', today: 18, low: 14, high: 22 },
      ...{ value: expect.closeTo(20, 9), becomes: 'not needed', likely: false },
      ...{ tried: true, relative: false },
      note: 'by running again; all rooms, setbacks and nights along with it',
    });
  });

  test('turn "not needed" round below, degrees as read', async () => {
    const { found } = await flips({ setpoint: '"69.8 °F"', rivals: [] });
    const flip = of(found, 'thermostat');
    expect(flip).toMatchObject({ unit: '°C', value: expect.closeTo(20, 9), likely: true });
    expect(flip.today).toBeCloseTo(21, 9);
  });

  test('are in kelvin where there are several', async () => {
    const setpoint =
      '[{ from: "06:00", to: "09:00", setpoint: 18 }, { from: "17:00", to: "22:00", setpoint: 19 }]';
    const several = of((await flips({ setpoint, rivals: [] })).found, 'thermostat');
    expect(several).toMatchObject({
      ...{ input: 'all thermostats', relative: true, unit: 'K', today: 0, low: -4, high: 4 },
      value: expect.closeTo(2, 9),
    });
  });
});

describe('where the scenario forbids a value', () => {
  const heated = (plan: string, setpoint: number) =>
    plan.replace('change: {', `change: { heating: { setpoint: ${setpoint} },`);

  test('half of the way is tried, and said', async () => {
    // 4 °C is below the frost guard, 6 °C is not
    const { found } = await flips({ setpoint: 8, rivals: [] });
    expect(of(found, 'thermostat')).toMatchObject({ low: 6, high: 12, value: null });
  });

  test('not tried, in words, where not even a quarter of the way can be gone', async () => {
    const plans = [PLANS[0]!, heated(AIRED, 5.5), heated(DRY, 39.5)];
    const { found } = await flips({ plans });
    expect(of(found, 'thermostat')).toEqual({
      ...{ path: null, input: 'the thermostat', unit: '°C', today: 18, low: 14, high: 22 },
      ...{ value: null, becomes: null, likely: false },
      ...{ tried: false, relative: false },
      note: 'not tried: heating.setpoint would be 43.5',
    });
    expect(of(found, 'water').note).not.toContain('not tried');
  });

  test('not tried, in words, where a value between is refused', async () => {
    const { run } = linearWorld(linearScenario({ plans: PLANS }));
    const refusing = (variant: PlanVariant) => {
      const between = variant.set.some((words) => words === '/heating/setpoint=20');
      return run(between ? { ...variant, set: ['/heating/setpoint=-11'] } : variant);
    };
    const { found } = await flips({ rivals: [], over: { run: refusing } });
    expect(of(found, 'thermostat')).toMatchObject({
      ...{ value: null, likely: false, note: 'not tried: heating.setpoint would be -11' },
    });
  });

  test('not tried, in words, where the home leaves the range of the formulas', async () => {
    const { run } = linearWorld(linearScenario({ plans: PLANS }));
    const place = { file: 'lines.yaml', line: 0, column: 0, where: '', expected: '', hint: '' };
    const wet = { ...place, got: 'relative humidity of 318 %, outside 0 to 200 %' };
    const refusing = (variant: PlanVariant) => {
      if (variant.set.some((words) => words.includes('/water='))) throw new InputProblems([wet]);
      return run(variant);
    };
    const { found } = await flips({ rivals: [], over: { run: refusing } });
    expect(of(found, 'water')).toMatchObject({
      ...{ value: null, low: 0.5, high: 6, likely: false },
      note: 'not tried: it would lead to relative humidity of 318 %, outside 0 to 200 %',
    });
  });

  test('what fails for another reason is not swallowed', async () => {
    const run = async (): Promise<never> => {
      throw new Error('the worker is gone');
    };
    await expect(flips({ over: { run } })).rejects.toThrow('the worker is gone');
  });
});

describe('the price of what is bought', () => {
  // 90 of electricity and an eighth of the price against 127.5
  test('turns "buy" round above, without a run', () => {
    expect(of(today.found, 'bought')).toEqual({
      ...{ path: null, input: 'the price of what is bought', unit: 'GBP', today: 180 },
      ...{ low: 0, high: 900, value: expect.closeTo(300, 9), likely: false },
      becomes: 'something else first',
      ...{ tried: true, relative: false },
      note: 'purchase cost worked out again; rooms and bills are the same',
    });
    const others = ['/money', '/household', '/heating'].flatMap((at) => touching(today.asked, at));
    expect(others).toHaveLength(today.asked.length);
  });

  test('turns "something else first" round below', async () => {
    const dear = DRY.replace('price: 180', 'price: 400');
    const { found } = await flips({ plans: [...PLANS.slice(0, 2), dear] });
    expect(of(found, 'bought')).toMatchObject({ value: expect.closeTo(300, 9), likely: true });
  });

  test('is that of the plan alone, without what the baseline buys as well', async () => {
    // A rival that buys the same drier is 22.5 dearer, and stays so: 180 of price.
    const curtains = '{ what: curtains, price: 90, lasts: 10 }';
    const plans = [
      `as-lived: { change: {}, purchases: [${curtains}] }`,
      AIRED.replace('aired: {', `aired: { purchases: [${curtains}, ${DRIER}],`),
      DRY.replace('purchases: [', `purchases: [${curtains}, `),
    ];
    const { found } = await flips({ plans });
    expect(of(found, 'bought')).toMatchObject({ today: 180, value: expect.closeTo(480, 9) });
  });
});

describe('how it is asked', () => {
  test('nothing is run at today’s values, and few others', () => {
    for (const { set } of today.asked) {
      expect(['/money/electricity=0.3', '/heating/setpoint=18']).not.toContain(set[0]);
    }
    // baseline, plan and rival, two inputs, at most seven values less today's
    expect(today.asked.length).toBeGreaterThan(2 * 3 * 2);
    expect(today.asked.length).toBeLessThanOrEqual(2 * 3 * 6);
  });

  test('inputs that there are not are left out', async () => {
    // assumed activities, no heating, nothing bought, free electricity
    const plans = [
      'as-lived: { change: { household: null, heating: { source: none, setpoint: null } } }',
      DRY.replace(/, purchases.*$/, ' }'),
    ];
    const { found } = await flips({ plans, rivals: [], over: { fuelPrices: electricityAt(0) } });
    expect(found).toEqual([]);
  });

  test('the range of doubt moves along: money saved for sure is not asked to dry', async () => {
    // No damp in the home, 200 a year less with the plan: 87.5 saved, of which 20 are beyond doubt.
    const world = linearWorld(linearScenario({ setpoint: 22 }));
    const cheaper = async (variant: PlanVariant) => {
      const figures = await world.run(variant);
      const less = variant.plan === 'dry' ? 200 : 0;
      const total_per_year = figures.money.total_per_year - less;
      return { ...figures, money: { ...figures.money, total_per_year } };
    };
    const [baseline, plan] = [world.named('as-lived'), world.named('dry')];
    const found = await decisionFlips({
      ...{ baseline, rivals: [], run: cheaper, weigh, fuelPrices: electricityAt(0.3) },
      plan: { ...plan, measures: await cheaper(plan.variant) },
      range: { low: -100, high: -20 },
    });
    const { value } = of(found, 'electricity');
    expect(Math.abs(value! - (0.3 + 20 / 300))).toBeLessThan(0.9 / 16);
  });
});

const touching = (asked: readonly PlanVariant[], at: string): PlanVariant[] =>
  asked.filter(({ set }) => set.some((words) => words.startsWith(at)));

function electricityAt(price: number) {
  return { electricity: { price, what: 'electricity' } };
}

describe('one input, by itself', () => {
  const option = (name: string, energy: number) =>
    ({ name, measures: somePlan(name, { energy }) }) as Option;
  /** A plan that costs as much as the input says beyond the 1000 of the baseline. */
  const COST: FlipInput = {
    ...{ path: null, input: 'cost', unit: 'GBP', today: 1, low: 0, high: 10, relative: false },
    ...{ resolution: 0.1, priced: true, note: '', usual: [0, 10] },
    at: ({ name }, value) => somePlan(name, { energy: name === 'plan' ? 1000 + value : 1000 }),
  };
  const setup = (by: FlipsSetup['weigh']) => ({
    ...{ baseline: option('now', 1000), plan: option('plan', 1001), rivals: [], fuelPrices: {} },
    ...{ run: () => somePlan('none'), range: { low: -4, high: 3 }, weigh: by },
  });

  test('becomes what lies next to where it turns, and not what asks the same as now', async () => {
    const verdictAt = (cost: number) =>
      cost < 4 ? 'too little' : cost < 6 ? 'not needed' : cost < 9 ? 'a trade-off' : 'worth it';
    const by: FlipsSetup['weigh'] = ({ plan }) => ({
      ...{ verdict: verdictAt(plan.money.total_per_year - 1000), standing: 1 },
    });
    const { value, becomes } = await flipOf(setup(by), COST);
    expect(Math.abs(value! - 6)).toBeLessThan(0.1);
    expect(becomes).toBe('a trade-off');
  });

  test('is weighed with draws as wide about it as about today', async () => {
    const seen: [number, number, number][] = [];
    const by: FlipsSetup['weigh'] = ({ plan, range: { low, high } }) => {
      seen.push([plan.money.total_per_year - 1000, low, high]);
      return { verdict: 'worth it', standing: 1 };
    };
    await flipOf(setup(by), COST);
    // Today 1, from 5 below it to 2 above.
    expect(seen.map(([cost]) => cost)).toEqual(expect.arrayContaining([1, 0, 10]));
    expect(seen.map(([cost, low, high]) => [low - cost, high - cost])).toEqual(
      seen.map(() => [-5, 2]),
    );
  });
});
