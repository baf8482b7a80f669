import { expect, test } from 'vitest';
import { measure, START, setup } from './hand-made.ts';

const NIGHTLY = Array.from({ length: 24 }, (_, hour) => (hour < 6 ? 1 : 0));
const HEARD = NIGHTLY.map((count, hour) => (hour < 3 ? 0 : count));
const rule = (name: string, fired: number, over = {}) => ({
  name,
  tells: true,
  fired,
  someoneHome: 0,
  someoneAwake: 0,
  couldAct: 0,
  actedOn: 0,
  duplicates: 0,
  activeHours: 0,
  missed: 0,
  heldBack: 0,
  byHour: NIGHTLY,
  heardByHour: HEARD,
  ...over,
});
const week = setup({ period: { start: START, hours: 2 * 168 } });
const alerts = (...rules: ReturnType<typeof rule>[]) =>
  measure(week, () => ({}), { dt: 3600, control: { rules, airings: [], devices: [] } });

test('each rule and all together, by the week', () => {
  const damp = {
    activeHours: 30,
    someoneHome: 8,
    someoneAwake: 5,
    couldAct: 6,
    actedOn: 3,
    duplicates: 2,
  };
  const found = alerts(
    rule('damp', 9, damp),
    rule('stuffy', 3, { someoneHome: 1, missed: 4, heldBack: 5 }),
  );
  expect(found.alerts).toEqual({
    fired: 12,
    someone_home: 9,
    acted_on: 3,
    per_week: 6,
    by_rule: {
      damp: {
        tells: true,
        fired: 9,
        per_week: 4.5,
        someone_home: 8,
        someone_awake: 5,
        could_act: 6,
        acted_on: 3,
        duplicates: 2,
        active_hours: 30,
        missed: 0,
        held_back: 0,
        by_hour: NIGHTLY,
        could_act_by_hour: HEARD,
      },
      stuffy: {
        tells: true,
        fired: 3,
        per_week: 1.5,
        someone_home: 1,
        someone_awake: 0,
        could_act: 0,
        acted_on: 0,
        duplicates: 0,
        active_hours: 0,
        missed: 4,
        held_back: 5,
        by_hour: NIGHTLY,
        could_act_by_hour: HEARD,
      },
    },
  });
});

test('no rules, no alerts', () => {
  const none = { fired: 0, someone_home: 0, acted_on: 0, per_week: 0, by_rule: {} };
  expect(measure(week, () => ({}), { dt: 3600 }).alerts).toEqual(none);
});

test('a rule that never fired and one that nobody heard are named', () => {
  const { notices } = alerts(rule('silent', 0), rule('unheard', 20, { couldAct: 4 }));
  expect(notices).toContainEqual({
    id: 'rule-never-fired',
    text:
      'The rule "silent" never fired: its conditions and its gate never held together for ' +
      'long enough.',
  });
  expect(notices.filter(({ id }) => id === 'rule-never-fired')).toHaveLength(1);
  expect(notices).toContainEqual({
    id: 'rule-unheard',
    text:
      'The rule "unheard" fired 20 times, and 4 times somebody was home and awake within the ' +
      'hour to do something about it.',
  });
});

test('a rule that was active throughout has fired before, not never', () => {
  const { notices } = alerts(rule('always', 0, { activeHours: 336 }), rule('once', 1));
  expect(notices.map(({ id }) => id)).not.toContain('rule-never-fired');
  expect(notices).toContainEqual({
    id: 'rule-active-before',
    text:
      'The rule "always" was active when the period began, stayed so for 336 h and did not fire ' +
      'again: look at its levels. It tells, or asks for a window, when it becomes active, and ' +
      'again only with "repeat after".',
  });
});

test('a rule that stands for several rooms is told of once', () => {
  const ruled = (fired: readonly number[], over = {}, number = 1) =>
    fired.map((count, k) => {
      const room = ['den', 'bath', 'hall'][k]!;
      return rule(`stale air (${room})`, count, {
        ...{ series: { number, name: 'stale air', room }, couldAct: 1 },
        ...over,
      });
    });
  const texts = (...rules: ReturnType<typeof rule>[]) =>
    alerts(...rules)
      .notices.filter(({ id }) => id.startsWith('rule-'))
      .map(({ text }) => text);
  const always = { activeHours: 336, tells: false };
  expect(texts(...ruled([0, 0, 0], always))).toEqual([
    'The rule "stale air" was active in all of its 3 rooms when the period began, stayed so for 336 h and did not fire again: look at its levels.',
  ]);
  const [den, bath, hall] = ruled([0, 0, 5], always);
  expect(texts({ ...den!, activeHours: 20 }, bath!, hall!)).toEqual([
    'The rule "stale air" was active in den and bath when the period began, stayed so for 20 to 336 h and did not fire again: look at its levels.',
  ]);
  const never = 'its conditions and its gate never held together for long enough.';
  expect(texts(...ruled([0, 0, 0]))).toEqual([
    `The rule "stale air" never fired in any of its 3 rooms: ${never}`,
  ]);
  expect(texts(...ruled([3, 0, 3]))).toEqual([`The rule "stale air (bath)" never fired: ${never}`]);
  // Another rule may have its name in other rooms.
  expect(texts(...ruled([0, 0]), ...ruled([0], {}, 2))).toEqual([
    `The rule "stale air" never fired in den and bath: ${never}`,
    `The rule "stale air (den)" never fired: ${never}`,
  ]);
  expect(texts(...ruled([20, 12, 4]))).toEqual([
    'The rule "stale air" fired 32 times in den and bath, and 2 times somebody was home and awake within the hour to do something about it.',
  ]);
});

test('a rule that half its firings reach somebody, or that fired hardly ever, is not named', () => {
  const { notices } = alerts(rule('heard', 20, { couldAct: 10 }), rule('rare', 9));
  expect(notices.map(({ id }) => id)).not.toContain('rule-unheard');
  const few = alerts(rule('ten', 10, { couldAct: 4 })).notices;
  expect(few.map(({ id }) => id)).toContain('rule-unheard');
});

test('a rule that only runs a device is no alert', () => {
  const dryer = rule('dryer', 114, { tells: false, someoneHome: 90, actedOn: 4 });
  const found = alerts(rule('damp', 58, { someoneHome: 50 }), dryer).alerts;
  expect(found).toMatchObject({ fired: 58, someone_home: 50, acted_on: 0, per_week: 29 });
  expect(found.by_rule['dryer']).toMatchObject({ tells: false, fired: 114, per_week: 57 });
});
