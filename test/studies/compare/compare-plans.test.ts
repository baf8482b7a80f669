import { expect, test } from 'vitest';
import { comparePlans } from '../../../src/studies/compare/compare-plans.ts';
import { somePlan } from '../some-plan.ts';

test('plans run once each, in order', async () => {
  const ran: string[] = [];
  const found = await comparePlans(['as-lived', 'nineteen', 'dry'], async (plan) => {
    ran.push(plan);
    const buys = plan === 'dry' ? [{ what: 'dryer', price: 180, lastsYears: 8 }] : [];
    const figures = { energy: plan === 'dry' ? 900 : 1000 };
    return { measures: somePlan(plan, figures), purchases: buys, discountRate: 0 };
  });
  expect(ran).toEqual(['as-lived', 'nineteen', 'dry']);
  expect(found.baseline).toBe('as-lived');
  expect(found.differences.map((d) => d.payback_years)).toEqual([null, 1.8]);
});

test('a run that fails fails the comparison', async () => {
  const broken = () => Promise.reject(new Error('no such plan'));
  await expect(comparePlans(['x'], broken)).rejects.toThrow('no such plan');
});
