import { describe, expect, test } from 'vitest';
import { settingWords } from '../../../src/scenario/yaml/settings.ts';
import { alike } from '../../../src/studies/doubts/alike.ts';
import { drawnDifferences, drawnFigures } from '../../../src/studies/doubts/drawn-figures.ts';
import { sampledDoubt } from '../../../src/studies/doubts/sampled-doubt.ts';
import {
  atShare,
  type SampledInput,
  sampledInputs,
  setAside,
} from '../../../src/studies/doubts/sampled-inputs.ts';
import { type PlanVariant, prepareVariant } from '../../../src/studies/plan-variant.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { DRY, linearScenario, linearWorld } from '../linear-world.ts';
import { somePlan } from '../some-plan.ts';

const range = (low: number, value: number, high: number) => ({ low, value, high, whole: false });
const input = (path: string, ...ranges: (ReturnType<typeof range> | null)[]): SampledInput => ({
  ...{ path, source: 'test', in: ranges },
});

/*
 * Money: 1000 + 10 x, in plan q besides y - 5; wet hours 40 in p and 40 - z in q. So q costs y - 5
 * more, whatever x is. A value of a plan that does not have the input is as it is taken to be.
 */
const TAKEN: Record<string, number> = { '/x': 7, '/y': 4, '/z': 0 };
function linear({ plan, set }: PlanVariant, year = 0) {
  const given = new Map(set.map((words) => words.split('=') as [string, string]));
  const at = (path: string) => Number(given.get(path) ?? TAKEN[path]);
  const q = plan === 'q';
  return somePlan(plan, {
    energy: 1000 + 10 * at('/x') + (q ? at('/y') - 5 : 0) + 100 * year,
    den: { over: { cold_spot_hours_above_80_pct: 40 - (q ? at('/z') : 0) } },
  });
}
const PLANS = ['p', 'q'].map((plan) => ({ plan, set: [] }));
const INPUTS = [
  input('/x', range(0, 7, 10), range(0, 7, 10)),
  input('/y', null, range(0, 4, 20)),
  input('/z', null, range(0, 0, 10)),
];
const setup = {
  plans: PLANS,
  inputs: INPUTS,
  samples: 200,
  seed: 1,
  years: 1,
  step: 1800,
  run: linear,
};

describe('a home of straight lines', () => {
  test('differences are sharp, because each draw is the same in both plans', async () => {
    const { plans, differences, samples, impossible } = await sampledDoubt(setup);
    expect({ samples, impossible }).toEqual({ samples: 200, impossible: 0 });
    // Of x alone money goes from 1010 (a tenth: 10 * 1.4 above 1000) to 1094.
    expect(Math.abs(plans[0]!.money.p10 - 1014)).toBeLessThan(0.7); // a stratum is 1/200 of 140
    expect(Math.abs(plans[0]!.money.p90 - 1094)).toBeLessThan(0.3);
    const [{ money, damp, cold }] = differences as [(typeof differences)[0]];
    // Half of y lies evenly from 0 to 4 and half from 4 to 20; y - 5 is below 0 for 0.5 + 0.5 / 16.
    expect(money.as_is).toBeCloseTo(-1, 9);
    expect(Math.abs(money.less - 0.53125)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(money.median - -1)).toBeLessThan(0.16);
    expect(Math.abs(money.p10 - -4.2)).toBeLessThan(0.05);
    expect(Math.abs(money.p90 - 11.8)).toBeLessThan(0.17);
    // z is 0 in half of the draws, and then both are as wet.
    expect([damp.less, damp.equal]).toEqual([0.5, 0.5]);
    expect([cold.less, cold.equal]).toEqual([0, 1]);
  });

  test('cold is that of the table of plans: the room worst off on winter days, not all rooms added up', async () => {
    const run = ({ plan }: PlanVariant) =>
      somePlan(plan, {
        den: { over: { felt_cold_hours: 900, winter_cold_hours_per_day: plan === 'q' ? 3 : 2 } },
        bath: { over: { felt_cold_hours: plan === 'q' ? 0 : 400, winter_cold_hours_per_day: 1 } },
      });
    const { plans, differences } = await sampledDoubt({ ...setup, samples: 8, run });
    expect(plans.map(({ cold }) => cold.median)).toEqual([2, 3]);
    // Fewer hours in all, and yet the den is colder.
    expect(differences[0]!.cold.less).toBe(0);
  });

  test('what matters, and the value that turns the answer round', async () => {
    const { plans, differences } = await sampledDoubt(setup);
    expect(plans[0]!.money.matters).toEqual([{ path: '/x', correlation: expect.closeTo(1, 9) }]);
    expect(differences[0]!.money.matters).toEqual([
      { path: '/y', correlation: expect.closeTo(1, 9) },
    ]);
    expect(differences[0]!.cold.matters).toEqual([]);
    expect(differences[0]!.flips).toEqual([{ path: '/y', today: 4, value: expect.closeTo(5, 9) }]);
  });

  test('what turns the answer round is asked in the year of figures as they are', async () => {
    const run = (variant: PlanVariant, year: number) => {
      const plain = linear(variant, 0);
      if (variant.plan !== 'q' || year === 0) return plain;
      return somePlan('q', { energy: plain.money.total_per_year + 2 });
    };
    const { differences } = await sampledDoubt({ ...setup, run });
    expect(differences[0]!.flips).toMatchObject([{ path: '/y', value: expect.closeTo(5, 9) }]);
  });

  test('an end that is no home turns nothing round', async () => {
    const run = (variant: PlanVariant, year: number) => {
      if (variant.set.includes('/y=20')) throw new InputProblems([]);
      return linear(variant, year);
    };
    expect((await sampledDoubt({ ...setup, run })).differences[0]!.flips).toEqual([]);
  });

  test('nothing turns round an answer that every draw gives', async () => {
    const inputs = [INPUTS[0]!, input('/y', null, range(0, 4, 4.9))];
    const { differences } = await sampledDoubt({ ...setup, inputs });
    expect(differences[0]!.money.less).toBe(1);
    expect(differences[0]!.flips).toEqual([]);
  });

  test('years of weather come equally often, the first for figures as they are', async () => {
    const { plans, years } = await sampledDoubt({ ...setup, inputs: [], years: 4 });
    const { money } = plans[0]!;
    expect(years).toBe(4);
    expect([money.as_is, money.p10, money.median, money.p90]).toEqual([1070, 1070, 1220, 1370]);
    expect(money.matters).toEqual([{ path: 'weather', correlation: expect.closeTo(1, 9) }]);
  });

  test('draws that are no home are left out of all plans, and counted', async () => {
    const run = (variant: PlanVariant) => {
      const x = variant.set.find((words) => words.startsWith('/x='));
      if (variant.plan === 'q' && x !== undefined && Number(x.slice(3)) < 7) {
        throw new InputProblems([]);
      }
      return linear(variant);
    };
    const { samples, impossible, plans } = await sampledDoubt({ ...setup, run });
    expect({ samples, impossible }).toEqual({ samples: 100, impossible: 100 });
    expect(plans[0]!.money.p10).toBeGreaterThan(1070);
  });

  test('where no draw is a home, the first says why', async () => {
    const why = {
      file: 'a',
      line: 0,
      column: 0,
      where: '',
      expected: 'a home',
      got: 'none',
      hint: '',
    };
    const run = (variant: PlanVariant) => {
      if (variant.set.length > 1) throw new InputProblems([why]);
      return linear(variant);
    };
    await expect(sampledDoubt({ ...setup, run })).rejects.toThrow('a: expected a home, got none');
  });

  test('draws take steps of half an hour, corrected by one in twenty in the own step', async () => {
    // In longer steps p costs 1 % more, what q adds to it is half as much again, and q is half as wet again.
    const own = new Set<string>();
    let longer = 0;
    const run = (variant: PlanVariant, year: number) => {
      const plain = linear(variant, year);
      if (!variant.set.includes('/step=30')) {
        own.add(JSON.stringify(variant));
        return plain;
      }
      longer++;
      const { money, rooms, plan } = plain;
      const q = plan === 'q';
      const wet = rooms['den']!.cold_spot_hours_above_80_pct;
      const first = linear({ ...variant, plan: 'p' }, year).money.total_per_year;
      return somePlan(plan, {
        energy: 1.01 * first + 1.5 * (money.total_per_year - first),
        den: { over: { cold_spot_hours_above_80_pct: q ? 1.5 * wet : wet } },
      });
    };
    const exact = await sampledDoubt(setup);
    const found = await sampledDoubt({ ...setup, step: 600, run });
    expect(longer).toBe(400);
    // Draws of q give all of its inputs; those that look for a flip give one.
    const drawn = [...own].filter((words) => JSON.parse(words).set.length > 1);
    const alone = [...own].filter((words) => JSON.parse(words).set.length === 0);
    expect([drawn.length, alone.length]).toEqual([10, 2]);
    expect([exact.step_minutes, found.step_minutes]).toEqual([30, 30]);
    expect(found.plans[0]!.money.median).toBeCloseTo(exact.plans[0]!.money.median, 9);
    for (const [k, plan] of found.plans.entries()) {
      expect(plan.damp.median).toBeCloseTo(exact.plans[k]!.damp.median, 9);
      expect(plan.damp.p10).toBeGreaterThanOrEqual(0);
    }
    const [was, is] = [exact.differences[0]!, found.differences[0]!];
    for (const part of ['p10', 'median', 'p90', 'less'] as const) {
      expect(is.money[part]).toBeCloseTo(was.money[part], 9);
    }
    // Alike in either step where neither adds anything.
    expect([is.cold.less, is.cold.equal]).toEqual([0, 1]);
    expect(is.flips).toEqual(was.flips);
  });

  test('what longer steps add skewly is right on the mean, and no hours fall below nought', async () => {
    const run = (variant: PlanVariant, year: number) => {
      const plain = linear(variant, year);
      if (!variant.set.includes('/step=30')) return plain;
      const wet = plain.rooms['den']!.cold_spot_hours_above_80_pct;
      const more = Math.max(0, wet - 5) + wet ** 2 / 40; // little where little is wet
      return somePlan(plain.plan, {
        energy: plain.money.total_per_year,
        den: { over: { cold_spot_hours_above_80_pct: more } },
      });
    };
    const exact = await sampledDoubt(setup);
    const found = await sampledDoubt({ ...setup, step: 600, run });
    const [was, is] = [exact.plans[1]!.damp, found.plans[1]!.damp];
    expect(is.p10).toBeGreaterThanOrEqual(0);
    expect(Math.abs(is.median - was.median)).toBeLessThan(0.5 * (was.p90 - was.p10));
    expect(found.plans[1]!.damp.as_is).toBe(was.as_is);
  });

  test('a few draws are all run in the own step', async () => {
    const steps = new Set<string>();
    const run = (variant: PlanVariant, year: number) => {
      for (const words of variant.set) if (words.startsWith('/step=')) steps.add(words);
      return linear(variant, year);
    };
    const { step_minutes } = await sampledDoubt({ ...setup, samples: 29, step: 600, run });
    expect(step_minutes).toBe(10);
    expect(steps.size).toBe(0);
    let again = 0;
    const counted = (variant: PlanVariant) => {
      if (variant.plan === 'q' && variant.set.length === 3) again++; // three inputs and no step
      return run(variant, 0);
    };
    const more = await sampledDoubt({ ...setup, samples: 30, step: 600, run: counted });
    expect(more.step_minutes).toBe(30);
    expect(again).toBe(3);
  });

  test('plans that take longer steps keep them', async () => {
    const steps = new Set<string>();
    const run = (variant: PlanVariant, year: number) => {
      for (const words of variant.set) if (words.startsWith('/step=')) steps.add(words);
      return linear(variant, year);
    };
    const { step_minutes } = await sampledDoubt({ ...setup, step: 3600, run });
    expect(step_minutes).toBe(60);
    expect(steps.size).toBe(0);
  });

  test('a figure of a draw: its own where it was run so, else times the ratio of those', () => {
    const draws = [
      { runs: [8, 2], own: [4, 2] },
      { runs: [12, 4], own: [6, 4] },
      { runs: [4, 0], own: null },
    ];
    const itself = (value: number) => value;
    expect(drawnFigures(draws, 0, itself)).toEqual([4, 6, 2]);
    expect(drawnFigures(draws, 1, itself)).toEqual([2, 4, 0]);
    expect(drawnFigures([{ runs: [9], own: null }], 0, itself)).toEqual([9]);
    const dry = [
      { runs: [0], own: [0] },
      { runs: [3], own: null },
    ];
    expect(drawnFigures(dry, 0, itself)).toEqual([0, 3]);
  });

  test('what a plan adds: its own where it was run so, else times the slope of those', () => {
    const draws = [
      { runs: [10, 14], own: [6, 8] },
      { runs: [10, 12], own: [7, 7.5] },
      { runs: [9, 6], own: null },
      { runs: [9, 9], own: null },
    ];
    const itself = (value: number) => value;
    // (4 * 2 + 2 * 0.5) / (4 * 4 + 2 * 2)
    expect(drawnDifferences(draws, 1, itself)).toEqual([2, 0.5, -3 * 0.45, 0]);
    // In either step of another sign, or none run in both: as the longer step has it.
    const contrary = [{ runs: [1, 2], own: [2, 1] }, draws[2]!];
    expect(drawnDifferences(contrary, 1, itself)).toEqual([-1, -3]);
    expect(drawnDifferences([draws[2]!], 1, itself)).toEqual([-3]);
    // Next to nothing that becomes ten times as much, or a tenth, says little of what is much.
    const steep = [{ runs: [0, 0.1], own: [0, 1] }, draws[2]!];
    expect(drawnDifferences(steep, 1, itself)).toEqual([1, -9]);
    const flat = [{ runs: [0, 1], own: [0, 0.1] }, draws[2]!];
    expect(drawnDifferences(flat, 1, itself)).toEqual([0.1, -1]);
  });

  test('the same seed gives the same doubt, in whatever order runs answer', async () => {
    const late = (variant: PlanVariant) =>
      new Promise<ReturnType<typeof linear>>((done) =>
        setTimeout(() => done(linear(variant)), variant.set.length > 1 ? 2 : 0),
      );
    const once = await sampledDoubt({ ...setup, samples: 20 });
    expect(await sampledDoubt({ ...setup, samples: 20, run: late })).toEqual(once);
    expect(await sampledDoubt({ ...setup, samples: 20, seed: 2 })).not.toEqual(once);
  });
});

test('where in its range a number lies at a share', () => {
  const at = (share: number) => atShare({ low: 0, value: 4, high: 20, whole: false }, share);
  expect([0, 0.25, 0.5, 0.75, 1].map(at)).toEqual([0, 2, 4, 12, 20]);
  const whole = (share: number) => atShare({ low: 1, value: 3, high: 7, whole: true }, share);
  expect([0, 0.2, 0.5, 0.7, 1].map(whole)).toEqual([1, 2, 3, 5, 7]);
});

test('the inputs of plans: stated first, each plan with its own range or none', () => {
  const scenario = linearScenario({
    plans: ['now: { change: {} }', DRY],
    more: 'doubts: { /heating/setpoint: [17, 20], /devices/drier/target: [40, 70] }',
  });
  const world = linearWorld(scenario);
  const plans = ['now', 'dry'].map((name) => world.named(name));
  const inputs = sampledInputs(scenario, plans);
  expect(inputs.slice(0, 2)).toEqual([
    {
      ...{ path: '/heating/setpoint', source: 'stated in the scenario' },
      in: [range(17, 18, 20), range(17, 18, 20)],
    },
    {
      ...{ path: '/devices/drier/target', source: 'stated in the scenario' },
      in: [null, range(40, 55, 70)],
    },
  ]);
  expect(new Set(inputs.map(({ path }) => path)).size).toBe(inputs.length);
  expect(inputs.find(({ path }) => path === '/heating/season/over')?.in[0]?.whole).toBe(true);
  expect(inputs.some(({ path }) => /carbon|faces/.test(path))).toBe(false);
});

describe('numbers that change more than themselves are set aside', () => {
  test('a U-value of the floor that is worked out from layers', () => {
    const scenario = linearScenario({ plans: ['now: { change: {} }'] });
    const variant: PlanVariant = { plan: 'now', set: [] };
    const plans = [linearWorld(scenario).named('now')];
    const inputs = sampledInputs(scenario, plans);
    let prepared = 0;
    const prepare = (_: number, set: readonly string[]) => {
      prepared++;
      return prepareVariant(scenario, new Map(), { ...variant, set });
    };
    const { drawn, leftAside } = setAside(inputs, plans, prepare);
    expect(prepared).toBeLessThan(inputs.length / 2);
    const alone = inputs.filter((one) => setAside([one], plans, prepare).drawn.length === 1);
    expect(drawn).toEqual(alone);
    expect(leftAside.map(({ path }) => path)).toEqual(['/home/build/floor u-value']);
    expect(drawn).toEqual(inputs.filter(({ path }) => path !== '/home/build/floor u-value'));
    // What is left gives the home as it is, with every number laid on at the value used.
    const set = drawn.map(({ path, in: [range] }) =>
      settingWords(path, String(atShare(range!, 0.5))),
    );
    const laidOn = prepareVariant(scenario, new Map(), { ...variant, set });
    expect(alike(laidOn.home, plans[0]!.prepared.home)).toBe(true);
    expect(alike(laidOn.household, plans[0]!.prepared.household)).toBe(true);
    expect(alike(laidOn.automation, plans[0]!.prepared.automation)).toBe(true);
  });

  test.each([
    [1, 1.0009, true],
    [1, 1.002, false],
    [0, 1e-9, false],
    [Number.NaN, Number.NaN, true],
    ['a', 'a', true],
    [null, {}, false],
    [{ a: 1, b: [1, 2] }, { b: [1, 2], a: 1 }, true],
    [{ a: 1 }, { a: 1, b: undefined }, false],
    [[1, 2], [1], false],
  ])('%j and %j are alike: %s', (a, b, expected) => {
    expect(alike(a, b)).toBe(expected);
    expect(alike(b, a)).toBe(expected);
  });
});
