import { describe, expect, test } from 'vitest';
import { memoizedRuns } from '../../src/studies/memoized-runs.ts';
import type { PlanVariant } from '../../src/studies/plan-variant.ts';
import { InputProblems } from '../../src/units/problem.ts';
import { somePlan } from './some-plan.ts';

/** Runs that are counted; those that a setting asks to fail do. */
function world() {
  const asked: PlanVariant[] = [];
  const run = memoizedRuns((variant) => {
    asked.push(variant);
    if (variant.set.includes('/refused=1')) throw new InputProblems([]);
    return somePlan(variant.plan, { energy: asked.length });
  });
  return { asked, run };
}

describe('runs that are remembered', () => {
  test('the same plan is run once, before and after it has answered', async () => {
    const { asked, run } = world();
    const varied = { plan: 'dry', set: ['/heating/setpoint=19'] };
    const [first, second] = await Promise.all([run(varied), run({ ...varied })]);
    expect(second).toBe(first);
    expect(await run({ plan: 'dry', set: ['/heating/setpoint=19'] })).toBe(first);
    expect(asked).toEqual([varied]);
  });

  test('other plans, settings, orders of settings and names are other runs', async () => {
    const { asked, run } = world();
    const as = { name: 'warmer', description: '', purchases: [] };
    const different: PlanVariant[] = [
      { plan: 'dry', set: [] },
      { plan: 'as-lived', set: [] },
      { plan: 'dry', set: ['/a=1', '/b=1'] },
      { plan: 'dry', set: ['/b=1', '/a=1'] },
      { plan: 'dry', set: [], as },
      { plan: 'dry', set: [], as: { ...as, purchases: [{ what: 'x', price: 1, lastsYears: 1 }] } },
    ];
    const found = await Promise.all(different.map(run));
    expect(asked).toEqual(different);
    expect(new Set(found).size).toBe(different.length);
  });

  test('a refusal is remembered too, and comes as one, not as an error on the spot', async () => {
    const { asked, run } = world();
    const varied = { plan: 'dry', set: ['/refused=1'] };
    const first = run(varied);
    await expect(first).rejects.toThrow(InputProblems);
    await expect(run(varied)).rejects.toThrow(InputProblems);
    expect(asked).toHaveLength(1);
  });
});
