import { expect, test } from 'vitest';
import { whatMends } from '../../../src/studies/answers/what-mends.ts';
import { askedPlans } from './asked.ts';

const PLANS = `  now: { change: { devices: { stove: { kind: stove, room: den, burns: "18:00-22:00" } } } }
  cold: { based on: now, change: { devices: null } }
  clean: { based on: now, change: { devices: { purifier: { kind: purifier, room: den, clean air: 200, power: 30 } } } }
`;

/** A home whose stove stands in the first plan, with these means of particles. */
function home(now: number, cold: number, clean: number) {
  const plans = askedPlans(PLANS);
  const levels = [now, cold, clean];
  return plans.map((plan, k) => ({
    ...plan,
    figures: {
      ...plan.figures,
      air: [
        {
          name: 'pm25',
          label: 'PM2.5',
          unit: 'µg/m3',
          kind: 'mean' as const,
          value: levels[k]!,
          over: 5,
          minded: false,
        },
      ],
    },
  }));
}

const told = (now: number, cold: number, clean: number): string => {
  const plans = home(now, cold, clean);
  return whatMends(plans[1]!, plans[0]!, plans).replaceAll('\u00a0', ' ');
};

test('of what a machine adds to the air, the share that another plan takes away', () => {
  // The stove adds 4, the purifier takes 3 of them.
  expect(told(10, 6, 7)).toBe('Of the PM2.5 that the stove adds, clean takes away 75 %.');
});

test('nothing that takes it away is said too', () => {
  expect(told(10, 6, 10)).toBe('Nothing that was tried takes the PM2.5 away.');
});

test('a machine that adds less than a tenth is no question', () => {
  expect(told(10, 8.8, 9.1)).toContain('clean takes away 75 %');
  expect(told(10, 9.2, 8)).toBe('');
});

test('a plan that has the machine asks nothing', () => {
  const [now, , clean] = home(10, 6, 7);
  expect(whatMends(clean!, now!, [now!, clean!])).toBe('');
});
