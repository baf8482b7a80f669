import { describe, expect, test } from 'vitest';
import type { Household, OpeningSpell, Person } from '../../../src/control/household.ts';
import { streamsOfPeople } from '../../../src/control/schedules/irregular-days.ts';
import { somebodyAirs } from '../../../src/control/schedules/somebody-airs.ts';
import { localDay } from '../../../src/units/local-clock.ts';
import { bareHome, bareRoom, quietHousehold } from '../../engine/homes.ts';
import { EVERY_DAY, LIVING, laidOut, MONDAY, series, worker } from '../people.ts';

const WEEK = 7;
const monday = localDay(MONDAY);

const household = (people: readonly Person[], more: Partial<Household> = {}): Household =>
  quietHousehold(bareHome([bareRoom('a', 30), bareRoom('b', 30)]), { people, ...more });

/** On which days from a Monday on a window is opened that shall be from some time of the day on. */
function airedDays(
  people: readonly Person[],
  time: string,
  { days = WEEK, spell = {} as Partial<OpeningSpell>, seed = 1 } = {},
): number[] {
  const home = household(people, { seed });
  const airs = somebodyAirs(home, streamsOfPeople(home));
  const [hours, minutes] = time.split(':').map(Number) as [number, number];
  const from = hours * 60 + minutes;
  const opened = { days: EVERY_DAY, from, to: from + 10, value: 1, ...spell };
  return [...Array(days).keys()].filter((day) => airs(monday + day, opened));
}

const ALL = [0, 1, 2, 3, 4, 5, 6];
const SUNDAY = [6];

describe('a window is opened by the clock', () => {
  test('by who is in, asleep or awake, or has left within a quarter of an hour', () => {
    // Out from 9 to 17 but on Sundays.
    expect(airedDays([worker()], '06:30')).toEqual(ALL);
    expect(airedDays([worker()], '09:14')).toEqual(ALL);
    expect(airedDays([worker()], '09:15')).toEqual(SUNDAY);
    expect(airedDays([worker()], '16:59')).toEqual(SUNDAY);
    expect(airedDays([worker()], '17:00')).toEqual(ALL);
    // After midnight it is the night that began the day before.
    expect(airedDays([worker()], '00:10')).toEqual(ALL);
  });

  test('by one of many, who lives there', () => {
    const shift = { days: EVERY_DAY, from: 600, to: 900, room: LIVING, asleep: false };
    const late = worker({ schedule: [shift] });
    expect(airedDays([worker(), late], '12:00')).toEqual(ALL);
    expect(airedDays([worker(), { ...late, guest: true }], '12:00')).toEqual(SUNDAY);
  });

  test('where nobody lives, and by a motor', () => {
    const guest = worker({ guest: true });
    for (const people of [[], [guest]]) expect(airedDays(people, '12:00')).toEqual(ALL);
    const away = worker({ holidays: [{ from: 101, to: 110 }] });
    const spell = { byMotor: true };
    expect(airedDays([away], '12:00', { spell })).toEqual(ALL);
    expect(airedDays([away], '07:30')).toEqual([]);
  });

  test('not on holiday, of one or of all', () => {
    const away = worker({ holidays: [{ from: 103, to: 104 }] });
    expect(airedDays([away], '07:30')).toEqual([0, 3, 4, 5, 6]);
    expect(airedDays([away, worker()], '07:30')).toEqual(ALL);
    // Who comes back at midnight is in a moment later, but was not a quarter of an hour before.
    expect(airedDays([away], '00:05')).toEqual([0, 3, 4, 5, 6]);
  });
});

describe('irregular days', () => {
  const never = { minutes: 0, asSunday: 0, out: 0 };

  test('spent out keep windows shut, once the night is over', () => {
    const out = worker({ irregular: { ...never, out: 1 } });
    expect(airedDays([out], '06:50')).toEqual(ALL);
    expect(airedDays([out], '07:20')).toEqual([]);
    expect(airedDays([out], '17:30')).toEqual([]);
    expect(airedDays([out], '23:10')).toEqual(ALL);
    expect(airedDays([out, worker()], '17:30')).toEqual(ALL);
  });

  test('are those on which nobody is in', () => {
    const irregular = { ...never, asSunday: 0.3, out: 0.3 };
    const people = [worker({ name: 'one', irregular }), worker({ name: 'two', irregular })];
    const days = 120;
    const home = household(people, { seed: 5 });
    const living = series(laidOut(home, days), 'occupants', LIVING);
    const noon = [...Array(days).keys()].filter((day) => living[day * 144 + 72]! > 0);
    expect(noon.length).toBeGreaterThan(30);
    expect(noon.length).toBeLessThan(90);
    expect(airedDays(people, '12:00', { days, seed: 5 })).toEqual(noon);
  });

  test('that come late or early shift the habit with them', () => {
    const late = worker({ irregular: { ...never, minutes: 60 } });
    expect(airedDays([late], '08:55', { days: 60 })).toHaveLength(60);
  });
});
