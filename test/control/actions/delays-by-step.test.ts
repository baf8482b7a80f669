import { expect, test } from 'vitest';
import type { AiringHabit, Rule, RuleAction } from '../../../src/control/automation.ts';
import type { Observation } from '../../../src/control/observations.ts';
import {
  condition,
  control,
  DAY,
  EVERY_DAY,
  rehearse,
  rule,
  type Script,
  someone,
  stepsWhere,
} from '../rehearse.ts';

/** What delays come to does not depend on the control step, but for half of it. */

const STEPS = [1, 5, 10, 20].map((minutes) => minutes * 60);
const DELAYS = [0, 3, 5, 7, 12, 15, 18, 25, 40].map((minutes) => minutes * 60);
const WARM = condition('temperature', 'above', 25);
const RUNS: RuleAction = { do: 'device', device: 0, on: true };
const TEN = 10 * 3600;
const ALWAYS_IN = { people: [someone([0, 1440])] };

/** Too warm from ten to twelve o'clock. */
const warmAtTen =
  (dt: number) =>
  (observed: Observation, step: number): void => {
    const time = (step * dt) % DAY;
    observed.temperature[0] = time >= TEN && time < TEN + 7200 ? 26 : 20;
  };

const acts = (dt: number, rules: readonly Rule[], more: Script = {}) =>
  rehearse({
    household: ALWAYS_IN,
    see: warmAtTen(dt),
    dt,
    ...more,
    automation: { rules, deviceControls: [control({ by: { kind: 'rule' } })], ...more.automation },
  });

/** How far from `due` the first of these steps begins; NaN for none. [s] */
const off = (steps: readonly number[], dt: number, due: number): number =>
  Math.abs(steps[0]! * dt - due);

test('an on delay is over in the nearest step', () => {
  for (const dt of STEPS) {
    for (const onDelay of DELAYS) {
      const { devices } = acts(dt, [rule({ all: [WARM], onDelay, actions: [RUNS] })]);
      expect(off(stepsWhere(devices), dt, TEN + onDelay), `${onDelay} s`).toBeLessThanOrEqual(
        dt / 2,
      );
    }
  }
});

test('asked people open a window in the step nearest to the end of their delay', () => {
  for (const dt of STEPS) {
    for (const delay of DELAYS) {
      const opens: RuleAction = {
        ...{ do: 'window', openings: [0], openShare: 1, lasts: 1200, probability: 1 },
        delay,
      };
      const { openTimes } = acts(dt, [rule({ all: [WARM], actions: [opens] })]);
      expect(off(stepsWhere(openTimes), dt, TEN + delay), `${delay} s`).toBeLessThanOrEqual(dt / 2);
    }
  }
});

test('an on delay and the delay of who opens the window are added up before they are rounded', () => {
  for (const dt of STEPS) {
    for (const onDelay of [300, 420, 900]) {
      for (const delay of [180, 300, 720]) {
        const opens: RuleAction = {
          ...{ do: 'window', openings: [0], openShare: 1, lasts: 1200, probability: 1 },
          delay,
        };
        const { openTimes } = acts(dt, [rule({ all: [WARM], onDelay, actions: [opens] })]);
        const late = off(stepsWhere(openTimes), dt, TEN + onDelay + delay);
        expect(late, `${onDelay} s and ${delay} s`).toBeLessThanOrEqual(dt / 2);
      }
    }
  }
});

test('who airs by a reading does so in the step nearest to the end of the delay', () => {
  for (const dt of STEPS) {
    for (const delay of DELAYS) {
      const habit: AiringHabit = {
        ...{ name: 'air', openings: [0], openShare: 1, after: { by: 'readings', all: [WARM] } },
        ...{ lasts: 1200, until: [], probability: 1, delay, drierBy: null, notBelow: -50 },
      };
      const { openTimes } = acts(dt, [], { automation: { airings: [habit] } });
      expect(off(stepsWhere(openTimes), dt, TEN + delay), `${delay} s`).toBeLessThanOrEqual(dt / 2);
    }
  }
});

test('an on delay of five minutes is over within an airing of ten, whatever the step', () => {
  const open = condition('window', 'above', 0.5);
  const airing = { base: 0, spells: [{ days: EVERY_DAY, from: 420, to: 430, value: 1 }] };
  const household = { openings: [airing, { base: 0, spells: [] }] };
  const one = rule({ all: [open], onDelay: 300 });
  for (const dt of STEPS) {
    expect(acts(dt, [one], { household, days: 7 }).report.rules[0]!.fired).toBe(7);
  }
});

test('a window that somebody holds open or shut is read so for as long', () => {
  const read = condition('window', 'above', 0.5);
  const minutesRead = (dt: number, openShare: number, lasts: number): number => {
    const acting: RuleAction = {
      ...{ do: 'window', openings: [0], openShare, lasts: lasts * 60, probability: 1, delay: 0 },
    };
    const rules = [
      rule({ all: [WARM], actions: [acting] }),
      rule({ all: [read], actions: [RUNS] }),
    ];
    const line = { base: openShare === 0 ? 1 : 0, spells: [] };
    const household = { ...ALWAYS_IN, openings: [line, { base: 0, spells: [] }] };
    return (stepsWhere(acts(dt, rules, { household }).devices).length * dt) / 60;
  };
  for (const dt of [60, 300, 600]) {
    for (const lasts of [10, 20, 60]) {
      expect(minutesRead(dt, 1, lasts)).toBe(lasts);
      expect(minutesRead(dt, 0, lasts)).toBe(1440 - lasts);
    }
    expect(Math.abs(minutesRead(dt, 1, 17) - 17)).toBeLessThanOrEqual(dt / 120);
  }
});

test('windows that people shut a few minutes after opening keep a gate shut once', () => {
  const gate = { present: 'no matter', windowsShut: true } as const;
  const opens: RuleAction = {
    ...{ do: 'window', openings: [0], openShare: 1, lasts: 600, probability: 1, delay: 0 },
  };
  for (const dt of [60, 300, 600]) {
    const rules = [rule({ all: [WARM], actions: [opens] }), rule({ all: [WARM], gate })];
    // It fires beside the first, and again when the window is shut.
    expect(acts(dt, rules).report.rules[1]!.fired).toBe(2);
  }
});

test('repeats keep their rhythm', () => {
  const told = (dt: number, minutes: number): number => {
    const limits = { repeatAfter: minutes * 60 };
    return acts(dt, [rule({ limits })], { days: 7 }).report.rules[0]!.fired;
  };
  // The first at once, then as many as fit: one more or less, where the last falls on the end.
  for (const dt of STEPS) {
    for (const minutes of [25, 33, 47]) {
      const times = 1 + Math.floor((7 * 1440) / minutes);
      expect(Math.abs(told(dt, minutes) - times), `${minutes} min`).toBeLessThanOrEqual(1);
    }
  }
});
