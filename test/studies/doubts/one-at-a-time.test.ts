import { describe, expect, test } from 'vitest';
import type { Assumed } from '../../../src/home/notices.ts';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { type DoubtfulInput, doubtfulInputs } from '../../../src/studies/doubts/doubtful-inputs.ts';
import { oneAtATime } from '../../../src/studies/doubts/one-at-a-time.ts';
import { type PlanVariant, prepareVariant } from '../../../src/studies/plan-variant.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { homeWith } from '../../scenario/problems-of.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { somePlan } from '../some-plan.ts';

const source = 'common practice';
const input = (path: string, low: number, value: number, high: number): DoubtfulInput => ({
  ...{ path, value, low, high, source },
});
const assumed = (
  path: string,
  low: number | null,
  value: number | string,
  high: number | null,
): Assumed => ({
  ...{ path, value, unit: '', low, high, source },
});

describe('which inputs are tried', () => {
  const list = [
    assumed('/home/height', 2.3, 2.5, 2.7),
    assumed('/home/build/absorptance', 0.3, 0.6, 0.9),
    assumed('/heating/fuel', null, 'gas', null),
    assumed('/site/albedo', 0.2, 0.2, 0.2),
    assumed('/money/gas/carbon', 0, 0.2, 9),
    assumed('/household/bodies/awake/co2', 0, 1, 9),
    assumed('/devices/cleaner/tvoc share', 0, 0.5, 1),
    assumed('/home/rooms/hall/faces', 0, 180, 360),
    assumed('/household/activities/9/water', 0.005, 0.01, 0.03),
    assumed('/household/activities/3/water', 1, 2, 5),
    assumed('/household/activities/1/water', 0.2, 0.4, 1.1),
    assumed('/money/gas/price', 0.05, 0.07, 0.1),
    assumed('/home/leakage/ach50', 5, 10, 20),
  ];
  const found = doubtfulInputs(list, list, 100);

  test('the widest of each kind, then the second widest, then those of no kind', () => {
    expect(found.map(({ path }) => path)).toEqual([
      ...['/home/leakage/ach50', '/household/activities/3/water', '/money/gas/price'],
      ...['/household/activities/1/water', '/household/activities/9/water'],
      ...['/home/build/absorptance', '/home/height'],
    ]);
    expect(found[0]).toEqual(input('/home/leakage/ach50', 5, 10, 20));
  });

  test('kinds come by how much they move damp and its cost, whatever their width', () => {
    const byKind = [
      ...[
        '/home/leakage/ach50',
        '/household/activities/3/water',
        '/home/rooms/den/cold spot factor',
      ],
      ...['/home/build/wall u-value', '/sensors/humidity/bias', '/devices/d/target'],
      ...['/devices/d/power', '/devices/d/label', '/money/gas/price', '/heating/efficiency'],
      ...['/heating/setpoint', '/home/background vents', '/household/bodies/awake/water'],
      ...['/home/doors/mixing', '/home/build/furnishing factor', '/home/build/window u-value'],
      '/money/discount rate',
    ];
    // The later, the wider, and given backwards.
    const given = byKind.map((path, k) => assumed(path, 0, 0.5, 1 + k)).reverse();
    expect(doubtfulInputs(given, given, 100).map(({ path }) => path)).toEqual(byKind);
  });

  test('those of no kind come by their range over its larger end, then by name', () => {
    const given = [
      assumed('/b', 1, 2, 3), // 2/3
      assumed('/a', 10, 20, 30), // 2/3
      assumed('/d', -4, -1, 0), // 1
      assumed('/c', 90, 100, 110), // 2/11, though the widest
      assumed('/e', -2, 0, 2), // 2
    ];
    const found = doubtfulInputs(given, given, 100);
    expect(found.map(({ path }) => path)).toEqual(['/e', '/d', '/a', '/b', '/c']);
  });

  test('at most so many', () => {
    expect(doubtfulInputs(list, list, 2)).toEqual(found.slice(0, 2));
    expect(doubtfulInputs(list, list, 0)).toEqual([]);
  });

  test('what stands in one of the two only is said to', () => {
    const device = assumed('/devices/d/target', 50, 55, 60);
    expect(doubtfulInputs([list[0]!], [list[0]!, device], 9)).toEqual([
      { ...input('/devices/d/target', 50, 55, 60), only: 'plan' },
      input('/home/height', 2.3, 2.5, 2.7),
    ]);
    expect(doubtfulInputs([device], [], 9)).toMatchObject([{ only: 'baseline' }]);
  });

  test('of a real scenario each can be set low and high', () => {
    const scenario = readOnce(
      homeWith('devices: { d: { kind: dehumidifier, room: bedroom } }'),
      'h.yaml',
    );
    const { assumed: list } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
    const inputs = doubtfulInputs(list, list, 100);
    expect(inputs.length).toBeGreaterThan(30);
    const refused = inputs.filter(({ path, low, high }) =>
      [low, high].some((value) => !isTaken({ plan: 'as-lived', set: [`${path}=${value}`] }, path)),
    );
    expect(refused.map(({ path }) => path)).toEqual([]);

    /** True where the setting is understood and the value is then no longer assumed. */
    function isTaken(variant: PlanVariant, path: string): boolean {
      const plan = prepareVariant(scenario, new Map(), variant);
      return plan.assumed.every((other) => other.path !== path);
    }
  });
});

/** Extra money of the plan: -100 + 3 times a - 2 times b; c is in both plans alike. */
function world() {
  const asked: PlanVariant[] = [];
  const run = async (variant: PlanVariant): Promise<PlanMeasures> => {
    asked.push(variant);
    const { a, b, c, d } = { a: 10, b: 20, c: 0, d: 0, ...settingsOf(variant) };
    if (d > 5) throw new InputProblems([]);
    const extra = variant.plan === 'dry' ? -100 + 3 * a - 2 * b : 0;
    return somePlan(variant.plan, { energy: 1000 + c + extra });
  };
  return { run, asked };
}

const settingsOf = ({ set }: PlanVariant): Record<string, number> =>
  Object.fromEntries(
    set.map((words) => [words.slice(1).split('=')[0]!, Number(words.split('=')[1])]),
  );

const plans = { baseline: { plan: 'as-lived', set: [] }, plan: { plan: 'dry', set: ['/e=1'] } };

describe('one input at a time', () => {
  const inputs = [
    input('/b', 10, 20, 22),
    input('/c', -900, 0, 900),
    input('/a', 0, 10, 50),
    input('/d', 0, 0, 9),
  ];

  test('effects are those of the formula, largest first, and what is in both plans cancels', async () => {
    const { run } = world();
    const found = await oneAtATime({ ...plans, inputs, run });
    expect(found).toMatchObject({ figure: -110, low: -140, high: 10 });
    const rows = found.effects.map(({ path, at_low, at_high, effect, flips }) => [
      path,
      at_low,
      at_high,
      effect,
      flips,
    ]);
    expect(rows).toEqual([
      ['/a', -140, 10, 120, true],
      ['/b', -90, -114, 20, false],
      ['/c', -110, -110, 0, false],
    ]);
  });

  test('an input at whose end the scenario is no longer one is named, not hidden', async () => {
    const { run, asked } = world();
    const found = await oneAtATime({ ...plans, inputs, run });
    expect(found.impossible.map(({ path }) => path)).toEqual(['/d']);
    expect(found.runs).toBe(asked.length);
    const low = await oneAtATime({ ...plans, inputs: [input('/d', 9, 9, 0)], run });
    expect([low.impossible.length, low.effects.length, low.low]).toEqual([1, 0, -110]);
  });

  test('effects come by their size whatever order they were asked in, alike ones by name', async () => {
    const { run } = world();
    const found = await oneAtATime({ ...plans, inputs: inputs.slice(0, 3).reverse(), run });
    expect(found.effects.map(({ path }) => path)).toEqual(['/a', '/b', '/c']);
    const still = [input('/f', 0, 0, 1), input('/c', 0, 0, 1)];
    const alike = await oneAtATime({ ...plans, inputs: still, run });
    expect(alike.effects.map(({ path }) => path)).toEqual(['/c', '/f']);
  });

  test('settings come after those the plan has', async () => {
    const { run, asked } = world();
    await oneAtATime({ ...plans, inputs: [inputs[0]!], run });
    expect(asked).toContainEqual({ plan: 'dry', set: ['/e=1', '/b=22'] });
    expect(asked).toContainEqual({ plan: 'as-lived', set: ['/b=22'] });
  });

  test('what stands in the plan only is left alone in the baseline', async () => {
    const { run, asked } = world();
    const found = await oneAtATime({ ...plans, inputs: [{ ...inputs[2]!, only: 'plan' }], run });
    expect(found).toMatchObject({ low: -140, high: 10, runs: asked.length });
    const touched = asked.filter(({ set }) => set.some((words) => words.startsWith('/a=')));
    expect(touched.map((variant) => variant.plan)).toEqual(['dry', 'dry']);
  });

  test('any other figure may be asked for', async () => {
    const { run } = world();
    const figure = (_: PlanMeasures, plan: PlanMeasures) => plan.money.energy;
    const found = await oneAtATime({ ...plans, inputs: [inputs[1]!], run, figure });
    expect(found).toMatchObject({ figure: 890, low: -10, high: 1790 });
  });

  test('a failure that is not the input’s is not swallowed', async () => {
    const run = async ({ set }: PlanVariant): Promise<PlanMeasures> => {
      if (set.includes('/a=50')) throw new Error('the worker is gone');
      return somePlan('x');
    };
    await expect(oneAtATime({ ...plans, inputs, run })).rejects.toThrow('the worker is gone');
  });
});
