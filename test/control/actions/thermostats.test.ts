import { describe, expect, test } from 'vitest';
import { type Gate, OPEN_GATE, type PresenceSensor } from '../../../src/control/automation.ts';
import type { Household } from '../../../src/control/household.ts';
import { always, quietHousehold } from '../../engine/homes.ts';
import { underThermostat } from '../made-room.ts';
import { noAutomation } from '../no-automation.ts';
import { EVERY_DAY, HOME, LIVING, laidOut, series, worker } from '../people.ts';

const OFF = Number.NEGATIVE_INFINITY;
const HOUR = 3600;
const PERFECT: PresenceSensor = { holdOn: 0, delay: 0, missesAwake: 0, missesAsleep: 0 };
const SENSORS = { ...noAutomation(2), presenceSensors: [PERFECT, PERFECT] };
const { thermostats: _plain, ...sensed } = SENSORS;
const IN_THE_ROOM: Gate = { present: 'in the room', windowsShut: false };
const AT_HOME: Gate = { present: 'at home', windowsShut: false };

/** 21 by day from 6 to 22, 17 at night. */
const household = (more: Partial<Household> = {}): Household =>
  quietHousehold(HOME, {
    people: [worker()],
    setpoints: [
      always(18),
      { base: 17, spells: [{ days: EVERY_DAY, from: 360, to: 1320, value: 21 }] },
    ],
    ...more,
  });

const programme = (days = 1): number[] => series(laidOut(household(), days), 'setpoints', LIVING);
const each = (value: number, days = 1): number[] => new Array<number>(days * 144).fill(value);

describe('a gate', () => {
  test('that never opens is the same as `otherwise`', () => {
    const nobody = household({ people: [] });
    for (const gate of [IN_THE_ROOM, AT_HOME]) {
      for (const otherwise of [OFF, 12, 25]) {
        const more = { gate, otherwise, holdOff: 2 * HOUR };
        const { setpoints } = underThermostat(more, nobody, { automation: {}, days: 2 });
        expect(setpoints).toEqual(each(otherwise, 2));
      }
    }
    const aired = { gate: { ...OPEN_GATE, windowsShut: true }, otherwise: 12 };
    expect(underThermostat(aired, household(), { windowOpen: () => true }).setpoints).toEqual(
      each(12),
    );
  });

  test('that is always open is the same as the programme', () => {
    const stays = [{ days: EVERY_DAY, from: 0, to: 1440, room: LIVING, asleep: false }];
    const inside = household({ people: [worker({ schedule: stays })] });
    expect(underThermostat({}, inside, { days: 2 }).setpoints).toEqual(programme(2));
    for (const gate of [IN_THE_ROOM, AT_HOME, { ...IN_THE_ROOM, windowsShut: true }]) {
      const more = { gate, otherwise: 12 };
      const { setpoints } = underThermostat(more, inside, { automation: sensed, days: 2 });
      expect(setpoints).toEqual(programme(2));
    }
  });

  test('by presence lets the programme through while somebody is there', () => {
    const more = { gate: IN_THE_ROOM, otherwise: 12 };
    const { setpoints } = underThermostat(more, household(), { automation: sensed });
    const there = series(laidOut(household(), 1), 'occupants', LIVING);
    expect(setpoints).toEqual(programme().map((set, s) => (there[s]! > 0 ? set : 12)));
  });

  test('holds off to the nearest step', () => {
    // Out at 9:00, step 54 of ten minutes.
    const shutAt = (holdOff: number, dt = 600): number => {
      const more = { gate: IN_THE_ROOM, otherwise: 12, holdOff };
      const { setpoints } = underThermostat(more, household(), { automation: sensed, dt });
      expect(setpoints[(9 * HOUR) / dt - 1]).toBe(21);
      return setpoints.indexOf(12, (9 * HOUR) / dt);
    };
    expect(shutAt(0)).toBe(54);
    expect(shutAt(1800)).toBe(57);
    expect(shutAt(2099)).toBe(57);
    expect(shutAt(2101)).toBe(58);
    for (const dt of [60, 300, 600, 1200]) {
      for (const holdOff of [120, 420, 900, 1560]) {
        expect(Math.abs(shutAt(holdOff, dt) * dt - 9 * HOUR - holdOff)).toBeLessThanOrEqual(dt / 2);
      }
    }
  });
});

describe('a lead', () => {
  const risesAt = ({ setpoints }: { setpoints: number[] }, from = 0): number =>
    setpoints.findIndex((set, s) => s >= from && set > setpoints[s - 1]!);

  test('of a fixed time starts exactly so long before the programme rises', () => {
    for (const [seconds, step] of [
      [0, 36],
      [HOUR, 30],
      [HOUR + 1, 30],
      [HOUR - 1, 31],
      [3 * HOUR, 18],
    ] as const) {
      const lead = { by: 'fixed', seconds } as const;
      expect(risesAt(underThermostat({ lead }, household()))).toBe(step);
    }
  });

  test('reaches back over midnight, and looks beyond a first small rise', () => {
    const setpoints = [
      always(18),
      {
        base: 21,
        spells: [
          { days: EVERY_DAY, from: 1200, to: 1470, value: 15 },
          { days: EVERY_DAY, from: 1470, to: 1500, value: 17 },
        ],
      },
    ];
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const { setpoints: set } = underThermostat({ lead }, household({ setpoints }), { days: 2 });
    // 17 at 0:30 and 21 at 1:00: warmed to 17 from 23:30 and to 21 from 0:00.
    expect(set.slice(139, 145)).toEqual([15, 15, 17, 17, 17, 21]);
  });

  test('begins with the last step of a day where it has to', () => {
    const spells = [{ days: EVERY_DAY, from: 50, to: 1200, value: 21 }];
    const setpoints = [always(18), { base: 15, spells }];
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const { setpoints: set } = underThermostat({ lead }, household({ setpoints }), { days: 2 });
    expect(set.slice(141, 145)).toEqual([15, 15, 21, 21]);
  });

  test('by a gate for presence starts before somebody usually comes, not before the programme rises', () => {
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const more = { gate: IN_THE_ROOM, otherwise: 12, lead };
    const people = [worker({ irregular: { minutes: 0, asSunday: 0, out: 1 } })];
    const { setpoints } = underThermostat(more, household({ people }), {
      automation: sensed,
      days: 6,
    });
    // Nobody ever comes down, but from 6 to 7 and 16 to 17 the room is warmed for the usual.
    const warmed = programme(6).map((_, s) => {
      const minute = (s % 144) * 10;
      return (minute >= 360 && minute < 420) || (minute >= 960 && minute < 1020) ? 21 : 12;
    });
    expect(setpoints).toEqual(warmed);
  });

  test('leaves the home cold through holidays, and is in time for the first day back', () => {
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const more = { gate: AT_HOME, otherwise: 12, lead };
    const people = [worker({ holidays: [{ from: 103, to: 104 }] })];
    const { setpoints } = underThermostat(more, household({ people }), {
      automation: sensed,
      days: 4,
    });
    expect(new Set(setpoints.slice(144, 3 * 144 - 6))).toEqual(new Set([12]));
    // They are back in bed at midnight: 17 by the programme, an hour ahead.
    expect(setpoints.slice(3 * 144 - 7, 3 * 144 + 1)).toEqual([12, ...each(17).slice(0, 7)]);
  });

  test('keeps the room warm for the hold-off where people come late', () => {
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const people = [worker({ irregular: { minutes: 0, asSunday: 0, out: 1 } })];
    const more = { gate: IN_THE_ROOM, otherwise: 12, lead, holdOff: 1800 };
    const { setpoints } = underThermostat(more, household({ people }), { automation: sensed });
    // From 16:00 for 17:00, given up at 17:30.
    expect(setpoints.indexOf(21, 72)).toBe(96);
    expect(setpoints.indexOf(12, 96)).toBe(105);
  });

  test('does not warm a room whose gate an open window shuts', () => {
    const gate = { ...OPEN_GATE, windowsShut: true };
    const lead = { by: 'fixed', seconds: HOUR } as const;
    const more = { gate, otherwise: 12, lead };
    const windowOpen = (s: number): boolean => s >= 32 && s < 34;
    const { setpoints } = underThermostat(more, household(), { windowOpen });
    expect(setpoints.slice(29, 37)).toEqual([17, 21, 21, 12, 12, 21, 21, 21]);
  });
});

describe('an open window', () => {
  const more = { windowDelay: 1200, frostGuard: 7 };
  const windowOpen = (s: number): boolean => s >= 60 && s < 66;

  test('locks the heating out after the delay and until it is shut, frost guard apart', () => {
    const { setpoints } = underThermostat(more, household(), { windowOpen });
    const locked = (s: number): boolean => s >= 62 && s < 66;
    expect(setpoints).toEqual(programme().map((set, s) => (locked(s) ? 7 : set)));
  });

  test('locks out in the nearest step', () => {
    for (const dt of [60, 300, 600, 1200]) {
      const open = (s: number): boolean => s * dt >= 10 * HOUR && s * dt < 11 * HOUR;
      for (const windowDelay of [120, 420, 900, 1560]) {
        const { setpoints } = underThermostat({ windowDelay }, household(), {
          windowOpen: open,
          dt,
        });
        const locked = setpoints.indexOf(OFF) * dt;
        expect(Math.abs(locked - 10 * HOUR - windowDelay)).toBeLessThanOrEqual(dt / 2);
      }
    }
  });

  test('without delay locks at once, with null never', () => {
    const at = (windowDelay: number | null): number[] =>
      underThermostat({ windowDelay }, household(), { windowOpen }).setpoints;
    expect(at(0).flatMap((set, s) => (set === OFF ? [s] : []))).toEqual([60, 61, 62, 63, 64, 65]);
    expect(at(null)).toEqual(programme());
  });

  test('outranks what a rule asks for, which outranks programme and gate', () => {
    const gated = { ...more, gate: IN_THE_ROOM, otherwise: 12 };
    const { setpoints } = underThermostat(gated, household(), { windowOpen, asked: 19 });
    expect(setpoints.map((set) => (set === 7 ? 'locked' : set)).slice(58, 68)).toEqual([
      19,
      19,
      19,
      19,
      'locked',
      'locked',
      'locked',
      'locked',
      19,
      19,
    ]);
  });
});

test('the frost guard has the last word, over off and over `otherwise`', () => {
  const off = household({ setpoints: [always(18), always(OFF)] });
  expect(underThermostat({ frostGuard: 6 }, off).setpoints).toEqual(each(6));
  const shut = { frostGuard: 6, gate: IN_THE_ROOM, otherwise: 3 };
  expect(underThermostat(shut, household()).setpoints).toEqual(each(6));
  expect(underThermostat({ frostGuard: 6 }, household()).setpoints).toEqual(programme());
});
