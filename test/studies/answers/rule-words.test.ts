import { describe, expect, test } from 'vitest';
import { busiestRule, ringing } from '../../../src/studies/answers/rule-words.ts';
import { somePlan } from '../some-plan.ts';
import { preparedPlans } from './asked.ts';

const EVENING = Array.from({ length: 24 }, (_, hour) => (hour === 18 ? 9 : 1));
const rule = (fired: number, could_act = fired, duplicates = 0) => ({
  tells: true,
  ...{ fired, could_act, duplicates, per_week: fired / 52, by_hour: EVENING },
  ...{ someone_home: 0, someone_awake: 0, acted_on: 0, missed: 0, held_back: 0, active_hours: 0 },
  could_act_by_hour: EVENING,
});
type Rules = Readonly<Record<string, ReturnType<typeof rule>>>;

/** A plan whose rules rang so often in a year. */
function plan(by_rule: Rules) {
  const [prepared] = preparedPlans('  a: { change: {} }\n');
  const fired = Object.values(by_rule).reduce((sum, one) => sum + one.fired, 0);
  const alerts = { fired, someone_home: 0, acted_on: 0, per_week: fired / 52, by_rule };
  const measures = { ...somePlan('a'), alerts };
  return { prepared: prepared!, measures, figures: {} as never, parts: new Map() };
}
const plain = (words: string) => words.replaceAll('\u00a0', ' ');

describe('how often a plan rings', () => {
  test.each<[Rules, string]>([
    [{ damp: rule(0) }, 'never rings'],
    [{ damp: rule(52) }, 'rings 1.0 times a week'],
    [{ damp: rule(1040) }, 'rings 20 times a week'],
    [
      { damp: rule(104, 52), stuffy: rule(104, 104) },
      'rings 4.0 times a week (25 % with nobody awake at home within the hour)',
    ],
  ])('%#', (rules, words) => expect(plain(ringing(plan(rules), plan({})))).toBe(words));

  test('is never where a rule stays on, which is told with it', () => {
    const on = (active_hours: number, tells = true) =>
      ringing(plan({ damp: { ...rule(0), active_hours, tells } }), plan({}));
    expect(on(8760)).toBe('never rings ("damp" is on all the time)');
    expect(plain(on(8234))).toBe('never rings ("damp" is on 94 % of the time)');
    // 89 % of a year: it returns to normal, and rings the next time.
    expect(on(7796)).toBe('never rings');
    expect([on(4000), on(8760, false)]).toEqual(['never rings', 'never rings']);
  });

  test('is what a plan without the rules spares', () => {
    const without = (had: Rules) => ringing(plan({}), plan(had));
    expect(without({ damp: rule(1040) })).toBe('spares 20 alerts a week');
    // What has no rules is not said never to ring.
    expect(without({ damp: { ...rule(0), active_hours: 8760 } })).toBe(
      'gives up rules that never ring ("damp" is on all the time)',
    );
    expect(without({ fan: { ...rule(0), tells: false, active_hours: 8760 } })).toBe('');
  });
});

describe('the rule that rings most', () => {
  const told = (...plans: readonly Rules[]) => busiestRule(plans.map(plan)).map(plain);

  test('of all plans, with its hour and how often it repeats itself', () => {
    expect(told({ damp: rule(104), stuffy: rule(260, 260, 52) }, { damp: rule(156) })).toEqual([
      '"stuffy" rings most, 5 times a week, most often from 18 to 19 h; 20 % of that is within an hour of the time before.',
    ]);
    expect(told({ damp: rule(104) }, { damp: rule(156) })).toEqual([
      '"damp" rings most, 3 times a week, most often from 18 to 19 h.',
    ]);
  });

  test('is none that only runs a device', () => {
    const dryer = { ...rule(2964), tells: false };
    expect(told({ damp: rule(104), dryer })).toEqual([
      '"damp" rings most, 2 times a week, most often from 18 to 19 h.',
    ]);
  });

  test('is not worth a word below once a week', () => {
    expect(told({ damp: rule(51) })).toEqual([]);
    expect(told({ damp: rule(52) })).toEqual([
      '"damp" rings most, once a week, most often from 18 to 19 h.',
    ]);
    expect(told({})).toEqual([]);
  });
});
