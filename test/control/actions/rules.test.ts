import { expect, test } from 'vitest';
import type { Gate, Rule, RuleAction } from '../../../src/control/automation.ts';
import type { Household } from '../../../src/control/household.ts';
import type { Observation } from '../../../src/control/observations.ts';
import { seededRandom } from '../../../src/units/seeded-random.ts';
import { always } from '../../engine/homes.ts';
import {
  ALERT,
  condition,
  control,
  DAY,
  EVERY_DAY,
  range,
  rehearse,
  rule,
  type Script,
  someone,
  stepsWhere,
} from '../rehearse.ts';

const PRESENT: Gate = { present: 'in the room', windowsShut: false };
const WARM = condition('temperature', 'above', 25);
/** The den is too warm in these steps. */
const warmIn = (...steps: readonly number[]) => {
  const when = new Set(steps);
  return (observed: Observation, step: number): void => {
    observed.temperature[0] = when.has(step) ? 26 : 20;
  };
};
const runs: RuleAction = { do: 'device', device: 0, on: true };
const opens = (more: object = {}): RuleAction => ({
  ...{ do: 'window', openings: [0], openShare: 0.5, lasts: 1200, probability: 1, delay: 0 },
  ...more,
});
const reportOf = (one: Rule, script: Script) => {
  const { rules } = rehearse({
    ...script,
    automation: { ...script.automation, rules: [one] },
  }).report;
  return rules[0]!;
};
const withRun = (one: Partial<Rule>, script: Script): number[] => {
  const rules = [rule({ all: [WARM], ...one, actions: [runs] })];
  const deviceControls = [control({ by: { kind: 'rule' } })];
  const automation = { ...script.automation, rules, deviceControls };
  return stepsWhere(rehearse({ ...script, automation }).devices);
};

test('with no on delay and a perfect sensor a rule is its threshold crossing, exactly', () => {
  const random = seededRandom(7);
  const temperature = Array.from({ length: 144 }, () => 24 + 2 * random());
  temperature[20] = 25; // on the edge is not above
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = temperature[step]!;
  };
  const above = temperature.flatMap((t, step) => (t > 25 ? [step] : []));
  expect(withRun({}, { see })).toEqual(above);
  const crossings = above.filter((step) => !above.includes(step - 1)).length;
  expect(reportOf(rule({ all: [WARM] }), { see }).fired).toBe(crossings);
});

test('once met, a condition stays met down to its clear level', () => {
  const levels = [24, 25.5, 24.5, 24.01, 24, 24.5, 25, 25.01, 23];
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = levels[step] ?? 20;
  };
  expect(withRun({ all: [{ ...WARM, clear: 24 }] }, { see })).toEqual([1, 2, 3, 7]);
  const cold = condition('temperature', 'below', 18, { clear: 19 });
  const mirrored = (observed: Observation, step: number): void => {
    observed.temperature[0] = 43 - (levels[step] ?? 20);
  };
  expect(withRun({ all: [cold] }, { see: mirrored })).toEqual([1, 2, 3, 7]);
});

test('all conditions have to hold at once', () => {
  const damp = condition('relative humidity', 'above', 60);
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = step >= 10 ? 26 : 20;
    observed.relativeHumidity[0] = step < 20 ? 70 : 50;
  };
  expect(withRun({ all: [WARM, damp] }, { see })).toEqual(range(10, 20));
});

test('an on delay has to pass in one go before it fires', () => {
  const see = warmIn(...range(3, 6), ...range(10, 20));
  expect(withRun({ onDelay: 1800 }, { see })).toEqual(range(13, 20));
  // A part of a step acts at the nearest one.
  expect(withRun({ onDelay: 899 }, { see })).toEqual([4, 5, ...range(11, 20)]);
  expect(withRun({ onDelay: 901 }, { see })).toEqual([5, ...range(12, 20)]);
  expect(withRun({ onDelay: DAY }, { see })).toEqual([]);
});

test('a gate that never opens is as good as no rule; one that is always open as no gate', () => {
  const see = warmIn(...range(3, 6), ...range(10, 20));
  expect(withRun({ gate: PRESENT }, { see })).toEqual([]);
  const script = {
    see,
    household: { people: [someone([0, 1440])] },
    automation: { presenceSensors: [ALERT, null] },
  };
  expect(withRun({ gate: PRESENT }, script)).toEqual(withRun({}, script));
});

test('a gate lets a rule through while somebody is there, and fires it when somebody comes', () => {
  const script = {
    see: warmIn(...range(10, 60)),
    household: { people: [someone([200, 300])] },
    automation: { presenceSensors: [ALERT, null] },
  };
  expect(withRun({ gate: PRESENT }, script)).toEqual(range(20, 30));
  expect(reportOf(rule({ all: [WARM], gate: PRESENT }), script).fired).toBe(1);
});

test('a gate for shut windows heeds the room of the conditions', () => {
  const gate: Gate = { present: 'no matter', windowsShut: true };
  const line = { base: 0, spells: [{ days: EVERY_DAY, from: 110, to: 150, value: 1 }] };
  const shut = { base: 0, spells: [] };
  const see = warmIn(...range(10, 20));
  const den = { see, household: { openings: [line, shut] } };
  expect(withRun({ gate }, den)).toEqual([10, ...range(15, 20)]);
  const bath = { see, household: { openings: [shut, line] } };
  expect(withRun({ gate }, bath)).toEqual(range(10, 20));
});

test('a gate for shut windows heeds all the home where no condition has a room', () => {
  const gate: Gate = { present: 'no matter', windowsShut: true };
  const shut = { base: 0, spells: [] };
  const line = { base: 0, spells: [{ days: EVERY_DAY, from: 110, to: 150, value: 1 }] };
  const morning = condition('hour', 'below', 3, { room: -1 });
  const at = (openings: Household['openings']) =>
    withRun({ all: [morning], gate }, { household: { openings } });
  expect(at([shut, shut])).toEqual(range(0, 18));
  expect(at([shut, line])).toEqual([...range(0, 11), ...range(15, 18)]);
  expect(at([line, line])).toEqual([...range(0, 11), ...range(15, 18)]);
});

test('a setpoint holds while the rule does, and the programme after it', () => {
  const action: RuleAction = { do: 'setpoint', room: 0, setpoint: 12 };
  const { setpoints } = rehearse({
    see: warmIn(...range(10, 20)),
    household: {
      setpoints: [
        { base: 21, spells: [] },
        { base: 19, spells: [] },
      ],
    },
    automation: { rules: [rule({ all: [WARM], actions: [action] })] },
  });
  expect(setpoints.map(([den]) => den)).toEqual(
    range(0, 144).map((step) => (step >= 10 && step < 20 ? 12 : 21)),
  );
  expect(new Set(setpoints.map(([, bath]) => bath))).toEqual(new Set([19]));
});

test('asked people open the window for its time, carried over midnight, in shares of a step', () => {
  const rules = [rule({ all: [WARM], actions: [opens({ lasts: 1500 })] })];
  const household = { people: [someone([0, 1440])] };
  const { openings, openTimes, report } = rehearse({
    days: 2,
    see: warmIn(143),
    household,
    automation: { rules },
  });
  expect(stepsWhere(openTimes)).toEqual([143, 144, 145]);
  expect(openings.slice(143, 147).map(([den]) => den)).toEqual([0.5, 0.5, 0.25, 0]);
  expect(stepsWhere(openTimes, 1)).toEqual([]);
  expect(report.rules[0]).toMatchObject({ fired: 1, someoneAwake: 1, couldAct: 1, actedOn: 1 });
});

test('a window that the clock holds open is shut for as long as asked, and opened sooner by a habit', () => {
  const shuts = opens({ openShare: 0, lasts: 1500 });
  const household = {
    people: [someone([0, 1440])],
    openings: [always(0.2), always(0.2)],
  };
  const rules = [rule({ all: [WARM], actions: [shuts] })];
  const script = { see: warmIn(10), household, automation: { rules } };
  const { openings, report } = rehearse(script);
  expect(openings.slice(9, 14).map(([den]) => den)).toEqual([0.2, 0, 0, 0.1, 0.2]);
  expect(openings.every(([, bath]) => bath === 0.2)).toBe(true);
  expect(report.rules[0]).toMatchObject({ fired: 1, actedOn: 1 });
  const cool = condition('temperature', 'below', 21);
  const reopens = rule({ all: [cool], actions: [opens({ lasts: 600 })] });
  const both = rehearse({ ...script, automation: { rules: [...rules, reopens] } });
  expect(both.openings.slice(9, 14).map(([den]) => den)).toEqual([0.2, 0, 0.5, 0.2, 0.2]);
});

test('a window is opened after the delay, and never when the probability is 0', () => {
  const script = { see: warmIn(10, 40), household: { people: [someone([0, 1440])] } };
  const openAt = (action: RuleAction): number[] => {
    const rules = [rule({ all: [WARM], actions: [action] })];
    return stepsWhere(rehearse({ ...script, automation: { rules } }).openTimes);
  };
  expect(openAt(opens({ delay: 840 }))).toEqual([11, 12, 41, 42]);
  expect(openAt(opens({ delay: 960 }))).toEqual([12, 13, 42, 43]);
  expect(openAt(opens({ probability: 0 }))).toEqual([]);
  expect(openAt(opens({ probability: 1, lasts: 600 }))).toEqual([10, 40]);
});

test('somebody opens it as often as the probability says, the same days for the same seed', () => {
  const rules = [rule({ all: [WARM], actions: [opens({ probability: 0.3, lasts: 600 })] })];
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = step % 2 === 0 ? 26 : 20;
  };
  const household = { people: [someone([0, 1440])] };
  const run = (seed: number) => rehearse({ days: 10, see, household, automation: { seed, rules } });
  const { openTimes, report } = run(1);
  expect(report.rules[0]!.fired).toBe(720);
  // Four standard deviations of the binomial.
  expect(Math.abs(report.rules[0]!.actedOn - 216)).toBeLessThan(4 * Math.sqrt(720 * 0.3 * 0.7));
  expect(run(1).openTimes).toEqual(openTimes);
  expect(run(2).openTimes).not.toEqual(openTimes);
});

test('a rule put before another leaves what people make of that as it is', () => {
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = step % 2 === 0 ? 26 : 20;
  };
  const half = { actions: [opens({ probability: 0.5, lasts: 600 })] };
  const own = rule({ name: 'own', all: [WARM], ...half });
  const never = condition('temperature', 'above', 90);
  const before = rule({ name: 'before', all: [never], ...half });
  const household = { people: [someone([0, 1440])] };
  const open = (...rules: readonly Rule[]) =>
    stepsWhere(rehearse({ days: 2, see, household, automation: { rules } }).openTimes);
  expect(open(own).length).toBeGreaterThan(50);
  expect(open(before, own)).toEqual(open(own));
});

test('nobody opens a window while nobody is awake at home; within the hour somebody may wake', () => {
  const wakes = someone([0, 420, 'asleep'], [420, 480]);
  const window = rule({ all: [WARM], actions: [opens()] });
  const at = (step: number) =>
    reportOf(window, { see: warmIn(step), household: { people: [wakes] } });
  const asleep = { fired: 1, someoneHome: 1, someoneAwake: 0 };
  expect(at(35)).toMatchObject({ ...asleep, couldAct: 0, actedOn: 0 });
  expect(at(36)).toMatchObject({ ...asleep, couldAct: 0, actedOn: 0 });
  expect(at(37)).toMatchObject({ ...asleep, couldAct: 1, actedOn: 1 });
  expect(at(43)).toMatchObject({ fired: 1, someoneAwake: 1, couldAct: 1, actedOn: 1 });
  expect(at(48)).toMatchObject({ fired: 1, someoneHome: 0, couldAct: 0, actedOn: 0 });
});

test('firing again within the hour counts as a duplicate', () => {
  expect(reportOf(rule({ all: [WARM] }), { see: warmIn(10, 15, 21, 30) })).toMatchObject({
    fired: 4,
    duplicates: 1,
  });
});

test('firings are counted by the hour of the wall clock', () => {
  const see = warmIn(10, 15, 30, 100); // steps of ten minutes from midnight
  const { byHour } = reportOf(rule({ all: [WARM] }), { see });
  const hours = byHour.flatMap((count, hour) => (count > 0 ? [[hour, count]] : []));
  expect(hours).toEqual([
    [1, 1],
    [2, 1],
    [5, 1],
    [16, 1],
  ]);
  const late = { clock: { from: [0], offset: [9 * 3600] } };
  const there = reportOf(rule({ all: [WARM] }), { see, household: late }).byHour;
  expect(there.indexOf(1)).toBe(1); // 16 h by UTC is 1 h there
});

test('what is heard within the hour counts at the hour in which it rang', () => {
  const see = warmIn(10, 30, 41, 100); // 01:40, 05:00, 06:50, 16:40
  const household = { people: [someone([0, 420, 'asleep'], [420, 1380])] };
  const { heardByHour, couldAct } = reportOf(rule({ all: [WARM] }), { see, household });
  expect(heardByHour.flatMap((count, hour) => (count > 0 ? [[hour, count]] : []))).toEqual([
    [6, 1],
    [16, 1],
  ]);
  expect(couldAct).toBe(2);
});

test('a spell of an hour that nobody is told of is missed once; a shorter one is not', () => {
  const see = warmIn(...range(10, 16), ...range(20, 27), ...range(40, 100));
  const people = [someone([0, 0])];
  const missed = (one: Partial<Rule>, from = 0): number =>
    reportOf(rule({ all: [WARM], ...one }), { see, household: { people }, countFrom: from }).missed;
  expect(missed({ gate: PRESENT })).toBe(2);
  expect(missed({ onDelay: 5400 })).toBe(2);
  expect(missed({})).toBe(0);
  expect(missed({ onDelay: 3600 })).toBe(0);
  expect(missed({ gate: PRESENT }, 60)).toBe(0);
});

test('what happened before counting starts is not counted', () => {
  const script = { see: warmIn(10, 30, 50), household: { people: [someone([0, 1440])] } };
  const window = rule({ all: [WARM], actions: [opens()] });
  expect(reportOf(window, { ...script, countFrom: 30 })).toMatchObject({ fired: 2, actedOn: 2 });
  expect(reportOf(window, { ...script, countFrom: 51 })).toMatchObject({ fired: 0, couldAct: 0 });
});

test('hours active are counted whenever it became so', () => {
  const one = rule({ all: [WARM] });
  // Steps of ten minutes: 30 from the tenth on.
  expect(reportOf(one, { see: warmIn(...range(10, 40)) }).activeHours).toBeCloseTo(5);
  const after = reportOf(one, { see: warmIn(...range(10, 40)), countFrom: 28 });
  expect(after).toMatchObject({ fired: 0 });
  expect(after.activeHours).toBeCloseTo(2);
  const late = rule({ all: [WARM], onDelay: 3600 });
  expect(reportOf(late, { see: warmIn(...range(10, 40)) }).activeHours).toBeCloseTo(4);
});

test('a condition on what the home does not carry is never met', () => {
  const above = condition('tvoc', 'above', -1);
  const below = condition('tvoc', 'below', 1e9);
  expect(reportOf(rule({ all: [above] }), {}).fired).toBe(0);
  expect(reportOf(rule({ all: [below] }), {}).fired).toBe(0);
});

test('quiet hours hold a message back; what still holds at their end is told then', () => {
  // Quiet until 6:00, step 36.
  const quiet = { base: 0, spells: [{ days: EVERY_DAY, from: 0, to: 360, value: 1 }] };
  const told = (...steps: readonly number[]) =>
    reportOf(rule({ all: [WARM], limits: { quiet } }), { see: warmIn(...steps) });
  expect(told(...range(30, 40))).toMatchObject({ fired: 1, heldBack: 1 });
  expect(told(...range(28, 36))).toMatchObject({ fired: 0, heldBack: 1, missed: 1 });
  expect(told(10, 20, ...range(36, 40))).toMatchObject({ fired: 1, heldBack: 2 });
  const people = [someone([0, 1440])];
  const opened = rehearse({
    see: warmIn(...range(30, 40)),
    household: { people },
    automation: { rules: [rule({ all: [WARM], limits: { quiet }, actions: [opens()] })] },
  });
  expect(stepsWhere(opened.openTimes)).toEqual([36, 37]);
});

test('a device runs in quiet hours as well', () => {
  const quiet = always(1);
  expect(withRun({ limits: { quiet } }, { see: warmIn(10, 11, 12) })).toEqual([10, 11, 12]);
});

test('no more messages a day than allowed, by the local day', () => {
  const often = warmIn(...range(0, 288).filter((step) => step % 10 < 5));
  const fired = (mostPerDay: number, days = 2) =>
    reportOf(rule({ all: [WARM], limits: { mostPerDay } }), { see: often, days });
  expect(fired(1)).toMatchObject({ fired: 2 });
  expect(fired(3)).toMatchObject({ fired: 6 });
  expect(fired(1000)).toMatchObject({ fired: 29, heldBack: 0 });
  // What holds on past midnight is told on the new day: at step 0 and, held back at 100, at 144.
  const late = warmIn(0, ...range(100, 150));
  expect(
    reportOf(rule({ all: [WARM], limits: { mostPerDay: 1 } }), { see: late, days: 2 }),
  ).toMatchObject({ fired: 2, heldBack: 1 });
  // Two hours east the day begins at 22:00, step 132.
  const clock = { from: [0], offset: [7200] };
  expect(
    reportOf(rule({ all: [WARM], limits: { mostPerDay: 1 } }), {
      see: warmIn(10, 100, 130, 132, 140),
      household: { clock },
    }),
  ).toMatchObject({ fired: 2, heldBack: 3 });
});

test('each rule has quiet hours and a count of its own', () => {
  const named = (name: string, limits?: Rule['limits']): Rule =>
    rule({ name, all: [WARM], ...(limits && { limits }) });
  const morning = { base: 0, spells: [{ days: EVERY_DAY, from: 0, to: 120, value: 1 }] };
  const rules = [
    named('free'),
    named('silent', { quiet: always(1) }),
    named('once', { mostPerDay: 1 }),
    named('late', { quiet: morning }),
    named('twice', { mostPerDay: 2 }),
  ];
  // Steps 10 and 12, the one quiet until 2:00, the other not, and one later.
  const { report } = rehearse({ see: warmIn(10, 12, 20), automation: { rules } });
  expect(report.rules.map(({ name, fired, heldBack }) => [name, fired, heldBack])).toEqual([
    ['free', 3, 0],
    ['silent', 0, 3],
    ['once', 1, 2],
    ['late', 2, 1],
    ['twice', 2, 1],
  ]);
});

test('rules of one series share what they may tell in a day', () => {
  const limits = { mostPerDay: 1 };
  const rules = [0, 1].map((room) =>
    rule({
      name: `rule ${room}`,
      all: [condition('temperature', 'above', 25, { room })],
      limits,
      series: { number: 7, name: 'rule', room: String(room) },
    }),
  );
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = step === 10 ? 26 : 20;
    observed.temperature[1] = step === 20 ? 26 : 20;
  };
  const { report } = rehearse({ see, automation: { rules } });
  expect(report.rules.map(({ fired, heldBack }) => [fired, heldBack])).toEqual([
    [1, 0],
    [0, 1],
  ]);
  // Of another series that is called the same nobody has been told.
  const [first, second] = rules;
  const other = { ...second!, series: { ...second!.series!, number: 8 } };
  const apart = rehearse({ see, automation: { rules: [first!, other] } }).report;
  expect(apart.rules.map(({ fired }) => fired)).toEqual([1, 1]);
});

test('repeats after so long, while it stays active', () => {
  const fired = (repeatAfter: number) =>
    reportOf(rule({ all: [WARM], limits: { repeatAfter } }), { see: warmIn(...range(10, 30)) })
      .fired;
  // Twenty steps: told at 10, 16, 22 and 28; at 10 and 25; at 10.
  expect([fired(3600), fired(9000), fired(12_000)]).toEqual([4, 2, 1]);
});

test('a gate goes by the room of the rule where it has one', () => {
  const people = [someone([600, 660])]; // in the den
  const outdoors = condition('temperature', 'above', 0, { room: -1 });
  const at = (room: number) =>
    reportOf(rule({ all: [outdoors], gate: PRESENT, room }), {
      household: { people },
      automation: { presenceSensors: [ALERT, ALERT] },
    }).fired;
  expect([at(0), at(1)]).toEqual([1, 0]);
});

test('each of several rules for thermostats holds its own setting', () => {
  const sets = (setpoint: number): RuleAction => ({ do: 'setpoint', room: 0, setpoint });
  const cold = condition('temperature', 'below', 15);
  const rules = [
    rule({ all: [WARM], actions: [sets(12)] }),
    rule({ all: [cold], actions: [sets(23)] }),
  ];
  const see = (observed: Observation, step: number): void => {
    observed.temperature[0] = step === 10 ? 26 : step === 20 ? 14 : 20;
  };
  const household = { setpoints: [always(21), always(19)] };
  const { setpoints } = rehearse({ see, household, automation: { rules } });
  expect([9, 10, 11, 19, 20, 21].map((step) => setpoints[step]![0])).toEqual([
    21, 12, 21, 21, 23, 21,
  ]);
});

test('messages that nobody awake saw lapse after an hour, those of a second rule too', () => {
  const never = rule({ all: [condition('temperature', 'above', 90)] });
  const heard = (people: Household['people'], ...steps: readonly number[]) =>
    rehearse({
      see: warmIn(...steps),
      household: { people },
      automation: { rules: [never, rule({ all: [WARM] })] },
    }).report.rules.map(({ couldAct }) => couldAct);
  expect(heard([someone([0, 420, 'asleep'], [420, 480])], 10)).toEqual([0, 0]);
  // Told at 6:40, heard at 7:00; told at 7:30 to one who is back in bed, heard at 8:00.
  const twice = someone([0, 420, 'asleep'], [420, 430], [430, 480, 'asleep'], [480, 540]);
  expect(heard([twice], 40, 45)).toEqual([0, 2]);
});

test('what is to be done in two hours is still remembered then', () => {
  const rules = [rule({ all: [WARM], actions: [opens({ delay: 7200, lasts: 600 })] })];
  const household = { people: [someone([0, 1440])] };
  const { openTimes } = rehearse({ see: warmIn(10), household, automation: { rules } });
  expect(stepsWhere(openTimes)).toEqual([22]);
});

test('a window shut by hand counts as shut until the clock has it open again', () => {
  const shuts = opens({ openShare: 0, lasts: 1800 });
  const airedOut = condition('window', 'above', 0.5);
  const rules = [
    rule({ all: [WARM], actions: [shuts] }),
    rule({ all: [airedOut], actions: [runs] }),
  ];
  const { devices } = rehearse({
    see: warmIn(10),
    household: { people: [someone([0, 1440])], openings: [always(1), always(0)] },
    automation: { rules, deviceControls: [control({ by: { kind: 'rule' } })] },
  });
  // Read before people act: shut from the step after the rule, for half an hour.
  expect(stepsWhere(devices).slice(8, 14)).toEqual([8, 9, 10, 14, 15, 16]);
});

test('a rule reaches people by what it tells, lights or asks for, not by what it switches', () => {
  const tells = (...actions: readonly RuleAction[]): boolean =>
    reportOf(rule({ all: [WARM], actions }), { see: warmIn() }).tells;
  const set: RuleAction = { do: 'setpoint', room: 0, setpoint: 16 };
  expect([tells(runs), tells(set), tells(runs, set)]).toEqual([false, false, false]);
  expect([
    tells({ do: 'lamp', what: 'blue' }),
    tells(opens()),
    tells(set, { do: 'tell', what: 'air' }),
  ]).toEqual([...[true, true, true]]);
});
