import { expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { RENAMED_KEYS, renamedKey } from '../../src/scenario/renamed-keys.ts';
import { homeWith, problemsOf } from './problems-of.ts';

const RULE = 'name: R, when: [{ presence: nobody }], response: [{ tell: T }]';
const WHEN_STALE = RULE.replace('presence: nobody', 'room: living, reading: co2, KEY: 900');
const AIRING = 'room: living, at: ["08:00"]';

// Each old key where it stood; what is expected beside it stays as it was.
const OLD = [
  ['says', 'plans: { now: { says: as it is, change: {} } }'],
  ['on', 'plans: { now: { change: {} }, two: { on: now, change: { heating: { setpoint: 19 } } } }'],
  ['buys', 'plans: { now: { change: {}, buys: [] } }'],
  ['wide', `household: { airing: [{ ${AIRING}, wide: 1 }] }`],
  ['stays', 'household: { people: [{ who: adult, stays: [] }] }'],
  ['for', `rules: [{ ${RULE}, for: 10 }]`],
  ['then', `rules: [{ ${RULE}, then: [{ tell: T }] }]`],
  ['above', `rules: [{ ${WHEN_STALE.replace('KEY', 'above')} }]`],
  ['below', `rules: [{ ${WHEN_STALE.replace('KEY', 'below')} }]`],
] as const;

test.each(OLD)('"%s" is refused with its new name', (key, text) => {
  const problems = problemsOf(() => readScenario(homeWith(text), 'h.yaml'));
  const told = problems.filter((problem) => problem.includes(`got "${key}", which is not known`));
  expect(told).toHaveLength(1);
  expect(told[0]).toMatch(/^h\.yaml:\d+:\d+: /);
  expect(told[0]).toContain(`(here it is called "${RENAMED_KEYS.get(key)}")`);
});

test('an old key in a setting is refused with nothing besides', () => {
  const scenario = readScenario(homeWith('plans: { now: { change: {} } }'), 'h.yaml');
  const prepared = (...set: string[]) =>
    problemsOf(() => preparePlan(scenario, { plan: 'now', set, files: new Map() }));
  const [problem, ...more] = prepared('/plans/now/says=x');
  expect(more).toEqual([]);
  expect(problem).toBe(
    '--set /plans/now/says=x: plans.now.says: expected one of the keys description, based on, ' +
      'change, purchases, got "says", which is not known (here it is called "description")',
  );
  expect(prepared('/plans/now/description=x', '/home/rooms/living/floor area=12')).toEqual([
    '--set /plans/now/description=x: plans.now.description: expected a setting of the home or ' +
      'its people, got plans, which was read before',
  ]);
});

test('every renamed key is tried above', () => {
  expect(OLD.map(([key]) => key)).toEqual([...RENAMED_KEYS.keys()]);
});

test('a key that never was one, or belongs elsewhere, has no new name', () => {
  expect(renamedKey('colour', ['description'])).toBeNull();
  expect(renamedKey('says', ['setpoint'])).toBeNull();
  expect(renamedKey('toString', ['description'])).toBeNull();
});
