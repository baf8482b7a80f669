import { describe, expect, test } from 'vitest';
import { type Automation, type HeatingSeason, OPEN_GATE } from '../../../src/control/automation.ts';
import type { Household } from '../../../src/control/household.ts';
import { createHeatingCalendar } from '../../../src/control/schedules/heating-calendar.ts';
import { always, quietHousehold } from '../../engine/homes.ts';
import { underThermostat } from '../made-room.ts';
import { noAutomation } from '../no-automation.ts';
import { BEDROOM, DAY, EVERY_DAY, HOME, LIVING, MONDAY, worker } from '../people.ts';

const HOUR = 3600;
const DT = 600;
const PER_DAY = DAY / DT;
const NOBODY = new Float64Array(2);

/** 17 by night, 21 from 6 to 22 in the living room; 18 in the bedroom. */
const household = (more: Partial<Household> = {}): Household =>
  quietHousehold(HOME, {
    people: [worker()],
    setpoints: [
      always(18),
      { base: 17, spells: [{ days: EVERY_DAY, from: 360, to: 1320, value: 21 }] },
    ],
    ...more,
  });

const months = (...numbers: number[]): number =>
  numbers.reduce((bits, m) => bits | (1 << (m - 1)), 0);
const byMonths = (bits: number) => ({
  months: bits,
  outdoorBelow: Number.POSITIVE_INFINITY,
  days: 1,
});

/** Whether each of some days is heated, whose outdoor temperatures are given. */
function heatedDays(
  automation: Partial<Automation>,
  outdoor: readonly number[],
  { start = MONDAY, clock = household().clock } = {},
): number[] {
  const all = { ...noAutomation(2), ...automation };
  const calendar = createHeatingCalendar(all, household({ clock }), DT);
  return outdoor.map((temperature, d) => {
    calendar.beginDay(start + d * DAY);
    const seen = { outdoor: Float64Array.of(temperature), felt: NOBODY };
    for (let s = 0; s < PER_DAY; s++) calendar.step(s, seen, NOBODY, NOBODY);
    return calendar.today[0]!;
  });
}

describe('a season', () => {
  test('by months begins and ends at local midnight', () => {
    const start = Date.UTC(2023, 3, 29) / 1000; // 29 April
    const heatingSeason = byMonths(months(10, 11, 12, 1, 2, 3, 4));
    expect(heatedDays({ heatingSeason }, [5, 5, 5], { start })).toEqual([1, 1, 0]);
    // Two hours east May has begun two hours before midnight UTC.
    const east = { from: [0], offset: [2 * HOUR] };
    const eastward = createHeatingCalendar(
      { ...noAutomation(2), heatingSeason },
      household({ clock: east }),
      DT,
    );
    eastward.beginDay(start + DAY);
    const outdoor = Float64Array.of(5);
    const flags = Array.from({ length: PER_DAY }, (_, s) => {
      eastward.step(s, { outdoor, felt: NOBODY }, NOBODY, NOBODY);
      return eastward.today[0]!;
    });
    expect(flags.indexOf(0)).toBe(22 * 6);
  });

  test('by outdoor temperature goes by the mean of whole days before', () => {
    const heatingSeason = { months: 0b1111_1111_1111, outdoorBelow: 10, days: 2 };
    // Means of the two days before, by hand: 12 (now), 12, 11, 9, 9, 11, 13.
    expect(heatedDays({ heatingSeason }, [12, 12, 10, 8, 10, 12, 14])).toEqual([
      0, 0, 0, 0, 1, 1, 0,
    ]);
  });

  test('at the limit itself is over', () => {
    const heatingSeason = { months: 0b1111_1111_1111, outdoorBelow: 10, days: 1 };
    expect(heatedDays({ heatingSeason }, [10, 9.99, 10])).toEqual([0, 0, 1]);
  });

  test('by both needs both', () => {
    const heatingSeason = { months: months(1), outdoorBelow: 10, days: 1 };
    const start = Date.UTC(2023, 0, 30) / 1000;
    expect(heatedDays({ heatingSeason }, [12, 5, 5], { start })).toEqual([0, 0, 0]);
    expect(heatedDays({ heatingSeason }, [5, 5, 5], { start })).toEqual([1, 1, 0]);
  });
});

describe('who is cold on another day of the months', () => {
  const at = { days: EVERY_DAY, room: LIVING, from: 18 * 60, to: 20 * 60 };
  const evenings = { ...at, asleep: false };
  const ifCold = { under: 2, after: HOUR };
  /** No day of January is cold enough by itself: it is 0 °C outdoors. */
  const mild = { months: months(1), outdoorBelow: -10, days: 2, ifCold };

  /** Setting of a living room that stays at one temperature, by day and hour. */
  const heldAt = (heatingSeason: HeatingSeason, roomAt: number, stay = evenings) => {
    const { thermostats: _, ...automation } = { ...noAutomation(2), heatingSeason };
    const home = household({ people: [worker({ schedule: [stay] })] });
    const room = { outdoors: roomAt, heated: roomAt, timeConstant: 1, begin: roomAt };
    const { setpoints } = underThermostat({ frostGuard: 5 }, home, { automation, room, days: 4 });
    return (day: number, hour: number) => setpoints[day * PER_DAY + Math.floor(hour * 6)]!;
  };

  test('switches the heating on after an hour, for as many days more as the mean is taken over', () => {
    const held = heldAt(mild, 18.9);
    expect([held(0, 17), held(0, 18), held(0, 18.7)]).toEqual([5, 5, 5]);
    expect([held(0, 18.9), held(0, 21.9), held(0, 23)]).toEqual([21, 21, 17]);
    expect([held(1, 3), held(1, 12), held(2, 12), held(2, 23.9)]).toEqual([17, 21, 21, 17]);
    // Off again, until somebody has been cold for an hour once more.
    expect([held(3, 0), held(3, 18.7), held(3, 18.9)]).toEqual([5, 5, 21]);
  });

  test.each([
    ['in a room 2 K under its setting', mild, 19, evenings],
    ['where nobody does', { ...mild, ifCold: undefined }, 10, evenings],
    ['in other months', { ...mild, months: months(2) }, 10, evenings],
    ['for less than it takes', { ...mild, ifCold: { under: 2, after: 2.5 * HOUR } }, 10, evenings],
    ['asleep', mild, 10, { ...at, asleep: true }],
  ] as const)('not %s', (_, { ifCold: who, ...season }, roomAt, stay) => {
    const held = heldAt({ ...season, ...(who !== undefined && { ifCold: who }) }, roomAt, stay);
    expect([held(0, 19.9), held(1, 19.9), held(3, 19.9)]).toEqual([5, 5, 5]);
  });

  test('two in a room are cold no sooner than one, nor is one in another room that is cold and empty', () => {
    const people = (...schedules: (typeof evenings)[][]) =>
      household({
        people: schedules.map((schedule) => worker({ schedule })),
        setpoints: [always(21), always(21)],
      });
    const { thermostats: _, ...automation } = { ...noAutomation(2), heatingSeason: mild };
    const room = { outdoors: 10, heated: 10, timeConstant: 1, begin: 10 };
    const onFrom = (home: Household): number =>
      underThermostat({ frostGuard: 5 }, home, { automation, room }).setpoints.indexOf(21);
    const bedroom = { ...evenings, room: BEDROOM };
    // An hour from 18:00 on: in the sixth of its steps.
    for (const home of [
      people([evenings]),
      people([evenings], [evenings]),
      people([evenings], [bedroom]),
      people([bedroom]),
    ]) {
      expect(onFrom(home)).toBe(18 * 6 + 5);
    }
  });

  test('not on beyond the months, for all that it was switched on in their last days', () => {
    const { thermostats: _, ...automation } = { ...noAutomation(2), heatingSeason: mild };
    const start = Date.UTC(2023, 0, 30) / 1000;
    const room = { outdoors: 10, heated: 10, timeConstant: 1, begin: 10 };
    const { setpoints } = underThermostat(
      { frostGuard: 5 },
      household({ people: [worker({ schedule: [evenings] })] }),
      { automation, room, days: 3, start },
    );
    const noon = (day: number) => setpoints[day * PER_DAY + 72];
    expect([noon(0), noon(1), noon(2)]).toEqual([5, 21, 5]);
  });

  test('by the setting of the hour: by night it is 17 °C', () => {
    const late = { ...evenings, from: 22 * 60, to: 24 * 60 };
    expect(heldAt(mild, 15.1, late)(0, 23.9)).toBe(5);
    expect(heldAt(mild, 14.9, late)(0, 23.9)).toBe(17);
  });

  test('hours of one day are not those of the next', () => {
    const twoHours = { ...mild, ifCold: { under: 2, after: 2 * HOUR } };
    const brief = { ...evenings, to: 19 * 60 };
    expect(heldAt(twoHours, 10, brief)(3, 19)).toBe(5);
    expect(heldAt(twoHours, 10)(3, 19.9)).toBe(21);
  });
});

describe('outside its season a thermostat keeps the frost guard', () => {
  const off = { ...noAutomation(2), heatingSeason: byMonths(months(7)) };
  const { thermostats: _, ...summer } = off;
  const each = (value: number): number[] => new Array<number>(PER_DAY).fill(value);

  test('whatever programme, gate, lead and rules ask for', () => {
    for (const more of [
      {},
      { otherwise: 16, gate: { ...OPEN_GATE, windowsShut: true } },
      { lead: { by: 'fixed', seconds: 2 * HOUR } as const },
      { lead: { by: 'learned', most: 3 * HOUR } as const },
    ]) {
      const guarded = { ...more, frostGuard: 6 };
      for (const asked of [Number.NaN, 23]) {
        const { setpoints } = underThermostat(guarded, household(), { automation: summer, asked });
        expect(setpoints).toEqual(each(6));
      }
    }
  });

  test('a plain valve gets heat only while the one thermostat calls, and knows no season', () => {
    const one = { ...summer, callRoom: 0 };
    const bedroom = { ...noAutomation(1).thermostats[0]!, deadband: 1, frostGuard: 6 };
    const valve = { ...noAutomation(1).thermostats[0]!, proportionalBand: 2 };
    const automation = { ...one, thermostats: [bedroom, valve] };
    const valves = household({ setpoints: [always(18), always(21)] });
    const warm = { outdoors: 15, heated: 15, timeConstant: 1, begin: 15 };
    const frozen = { ...warm, begin: 3 };
    const at = (room: typeof warm): number =>
      underThermostat({}, valves, { automation, room }).setpoints[0]!;
    expect(at(warm)).toBe(Number.NEGATIVE_INFINITY);
    expect(at(frozen)).toBe(21);
  });
});

describe('a holiday setback', () => {
  const dates = [{ from: 103, to: 104 }]; // 3 and 4 January, the second and third day
  const plain = noAutomation(2);
  const { thermostats: _, ...rest } = { ...plain, holidaySetback: { setpoint: 12, dates } };

  test('caps programme and setback on its days, from midnight to midnight', () => {
    const { setpoints } = underThermostat({}, household(), { automation: rest, days: 4 });
    const noon = (day: number): number => setpoints[day * PER_DAY + 72]!;
    expect([0, 1, 2, 3].map(noon)).toEqual([21, 12, 12, 21]);
    expect(setpoints.indexOf(12)).toBe(PER_DAY);
    expect(setpoints.lastIndexOf(12)).toBe(3 * PER_DAY - 1);
    const aired = { gate: { ...OPEN_GATE, windowsShut: true }, otherwise: 16 };
    const open = { automation: rest, days: 4, windowOpen: () => true };
    const shut = underThermostat(aired, household(), open).setpoints;
    expect([0, 1, 2, 3].map((day) => shut[day * PER_DAY + 72])).toEqual([16, 12, 12, 16]);
  });

  test('raises nothing that is lower, and yields to a rule', () => {
    const cool = household({ setpoints: [always(18), always(10)] });
    expect(underThermostat({}, cool, { automation: rest, days: 4 }).setpoints).toEqual(
      new Array<number>(4 * PER_DAY).fill(10),
    );
    const { setpoints } = underThermostat({}, cool, { automation: rest, days: 2, asked: 19 });
    expect(setpoints[PER_DAY + 1]).toBe(19);
  });

  test('a lead warms up for the return', () => {
    const lead = { by: 'fixed', seconds: 3 * HOUR } as const;
    const { setpoints } = underThermostat({ lead }, household(), { automation: rest, days: 4 });
    // 17 °C holds from the midnight at which the holiday ends; three hours are 18 steps.
    expect(setpoints.slice(3 * PER_DAY - 19, 3 * PER_DAY - 17)).toEqual([12, 17]);
  });

  test('without dates holds whenever all who live here are away', () => {
    const away = { from: 103, to: 104 };
    const { thermostats: _none, ...automation } = {
      ...plain,
      holidaySetback: { setpoint: 12, dates: null },
    };
    const noons = (people: Household['people']): number[] => {
      const { setpoints } = underThermostat({}, household({ people }), { automation, days: 3 });
      return [0, 1, 2].map((day) => setpoints[day * PER_DAY + 72]!);
    };
    const traveller = worker({ holidays: [away] });
    expect(noons([traveller])).toEqual([21, 12, 12]);
    expect(noons([traveller, worker()])).toEqual([21, 21, 21]);
    expect(noons([])).toEqual([21, 21, 21]);
  });
});

test('without season and setback every day is heated', () => {
  expect(heatedDays({}, [30, 30])).toEqual([1, 1]);
});
