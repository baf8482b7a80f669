import { describe, expect, test } from 'vitest';
import type { Household, IrregularDays, Person } from '../../../src/control/household.ts';
import { quietHousehold } from '../../engine/homes.ts';
import { AHEAD, AUTUMN, SPRING } from '../../units/summer-time.ts';
import {
  BEDROOM,
  DAY,
  EVERY_DAY,
  HOME,
  LIVING,
  laidOut,
  MONDAY,
  series,
  total,
  worker,
} from '../people.ts';

const STEADY: IrregularDays = { minutes: 0, asSunday: 0, out: 0 };
const WEEK = 7;

const living = (people: readonly Person[], more: Partial<Household> = {}, days = WEEK): number[] =>
  series(laidOut(quietHousehold(HOME, { people, ...more }), days), 'occupants', LIVING);
const asleep = (people: readonly Person[], days = WEEK): number[] =>
  series(laidOut(quietHousehold(HOME, { people }), days), 'occupants', BEDROOM);

describe('irregular days', () => {
  test('that never differ are the pattern', () => {
    expect(living([worker({ irregular: STEADY })])).toEqual(living([worker()]));
    expect(asleep([worker({ irregular: STEADY })])).toEqual(asleep([worker()]));
  });

  test('come back with the same seed and differ with another', () => {
    const people = [worker({ irregular: { minutes: 45, asSunday: 0.2, out: 0.1 } })];
    const days = 60;
    const first = living(people, { seed: 7 }, days);
    expect(living(people, { seed: 7 }, days)).toEqual(first);
    expect(living(people, { seed: 8 }, days)).not.toEqual(first);
    expect(living(people, {}, days)).toEqual(living(people, { seed: 1 }, days));
  });

  test('a day is the same whether days are laid out from Monday or from Thursday on', () => {
    const people = [worker({ irregular: { minutes: 45, asSunday: 0.2, out: 0.1 } })];
    const household = quietHousehold(HOME, { people });
    const whole = series(laidOut(household, WEEK), 'occupants', LIVING);
    const later = laidOut(household, WEEK - 3, { start: MONDAY + 3 * DAY });
    expect(series(later, 'occupants', LIVING)).toEqual(whole.slice(3 * 144));
  });

  test('stay as they are when others are listed before, of other names', () => {
    const irregular = { minutes: 45, asSunday: 0.2, out: 0.1 };
    const one = worker({ name: 'one', irregular });
    const other = worker({ name: 'other', irregular });
    const alone = living([one], {}, 60);
    const both = living([other, one], {}, 60);
    const rest = living([other], {}, 60);
    both.forEach((people, s) => {
      expect(people - rest[s]!).toBeCloseTo(alone[s]!, 12);
    });
    expect(rest).not.toEqual(alone);
    const nameless = { ...one, name: 'adult 1', drawnBy: 'one' };
    expect(living([nameless], {}, 60)).toEqual(alone);
  });

  test('two people have luck of their own', () => {
    const one = worker({ irregular: { minutes: 45, asSunday: 0, out: 0 } });
    const [alone, both] = [living([one]), living([one, one])];
    expect(both).not.toEqual(alone.map((n) => 2 * n));
  });

  test('nobody is in two places at once, nor lost while shifted', () => {
    const person = worker({ irregular: { minutes: 60, asSunday: 0.3, out: 0.1 } });
    const days = laidOut(quietHousehold(HOME, { people: [person] }), 120);
    const [a, b] = [series(days, 'occupants', BEDROOM), series(days, 'occupants', LIVING)];
    for (let s = 0; s < a.length; s++) expect(a[s]! + b[s]!).toBeLessThanOrEqual(1 + 1e-9);
    // At 3 in the morning everybody sleeps, whatever the day before and after was like.
    for (let s = 3 * 6; s < a.length; s += 144) expect(a[s]).toBeCloseTo(1, 9);
  });

  test('shifts have the spread asked for', () => {
    const person = worker({ irregular: { minutes: 30, asSunday: 0, out: 0 } });
    const days = laidOut(quietHousehold(HOME, { people: [person] }), 364, { dt: 60 });
    const shifts = days
      .filter((_, k) => k % 7 !== 6)
      .map((day) => {
        let s = 12 * 60;
        while (day.occupants[s * 2 + LIVING] === 0) s++;
        return s - 17 * 60;
      });
    const mean = total(shifts) / shifts.length;
    const spread = Math.sqrt(total(shifts.map((x) => (x - mean) ** 2)) / shifts.length);
    // Four standard deviations of a mean and of a spread of 312 draws.
    expect(Math.abs(mean)).toBeLessThan((4 * 30) / Math.sqrt(312) + 0.5);
    expect(Math.abs(spread / 30 - 1)).toBeLessThan(4 / Math.sqrt(2 * 312));
  });

  test('shifts are normal, and are the same on odd days as on others', () => {
    const person = worker({ irregular: { minutes: 30, asSunday: 0.5, out: 0 } });
    const days = laidOut(quietHousehold(HOME, { people: [person] }), 1001, { dt: 60 });
    const drawn = days
      .filter((_, k) => k % 7 !== 6)
      .map((day) => {
        const inLiving = (minute: number) => day.occupants[minute * 2 + LIVING]!;
        let minute = 4 * 60;
        while (inLiving(minute) === 0) minute++;
        const begins = minute + 1 - inLiving(minute);
        return { deviate: (begins - 7 * 60) / 30, odd: inLiving(13 * 60) > 0 };
      });
    const share = (of: typeof drawn, below: number) =>
      of.filter(({ deviate }) => deviate < below).length / of.length;
    const odd = drawn.filter((day) => day.odd);
    const usual = drawn.filter((day) => !day.odd);
    // The normal distribution at these, by any table; four standard deviations of a share.
    for (const [below, p] of [
      [-1, 0.1587],
      [-0.5, 0.3085],
      [0, 0.5],
      [0.5, 0.6915],
      [1, 0.8413],
    ] as const) {
      for (const some of [drawn, odd, usual]) {
        const four = 4 * Math.sqrt((p * (1 - p)) / some.length);
        expect(Math.abs(share(some, below) - p)).toBeLessThan(four);
      }
    }
  });

  test('every day as Sunday is a week of Sundays', () => {
    const sundays = worker({ irregular: { minutes: 0, asSunday: 1, out: 0 } });
    const occupied = living([sundays]);
    const sunday = living([worker()]).slice(-144);
    for (let k = 0; k < WEEK; k++) expect(occupied.slice(k * 144, (k + 1) * 144)).toEqual(sunday);
  });

  test('a day out leaves the night alone, and takes a nap with it', () => {
    const nap = { days: EVERY_DAY, from: 800, to: 860, room: BEDROOM, asleep: true };
    const person = worker({ irregular: { minutes: 0, asSunday: 0, out: 1 } });
    const napper = { ...person, schedule: [...person.schedule, nap] };
    expect(total(living([napper]))).toBe(0);
    expect(asleep([napper])).toEqual(asleep([worker()]));
  });

  test('a day out leaves a broken night alone', () => {
    const inBed = (from: number, to: number) => ({
      ...{ days: EVERY_DAY, from, to, room: BEDROOM, asleep: true },
    });
    const schedule = [inBed(1320, 1440), inBed(1500, 1620), inBed(1680, 1800)];
    const parent = worker({ schedule, irregular: { minutes: 0, asSunday: 0, out: 1 } });
    expect(asleep([parent])).toEqual(asleep([worker({ schedule })]));
  });

  test('days as Sunday and days out come about as often as said', () => {
    const days = 1000;
    const person = worker({ irregular: { minutes: 0, asSunday: 0.2, out: 0.1 } });
    const laid = laidOut(quietHousehold(HOME, { people: [person] }), days);
    const weekdays = laid.filter((_, k) => k % 7 !== 6);
    const share = (hit: (atNoon: number, atSix: number) => boolean): number =>
      weekdays.filter((day) =>
        hit(day.occupants[12 * 12 + LIVING]!, day.occupants[18 * 12 + LIVING]!),
      ).length / weekdays.length;
    const four = (p: number): number => 4 * Math.sqrt((p * (1 - p)) / weekdays.length);
    expect(Math.abs(share((noon) => noon > 0) - 0.2)).toBeLessThan(four(0.2));
    expect(Math.abs(share((_, six) => six === 0) - 0.1)).toBeLessThan(four(0.1));
  });

  test('a pattern on its clock keeps its hours through daylight saving', () => {
    const irregular = { minutes: 0, asSunday: 0, out: 0 };
    for (const jump of [SPRING, AUTUMN]) {
      const start = jump + 10 * 3600 - 3 * DAY; // about noon, when nobody sleeps
      const around = (person: Person): number[] => {
        const household = quietHousehold(HOME, { people: [person], clock: AHEAD });
        return series(laidOut(household, 5, { start }), 'occupants', BEDROOM);
      };
      expect(around(worker({ irregular }))).toEqual(around(worker()));
      // Five nights of 8 h, one of them with an hour less or more.
      const nights = total(around(worker())) / 6;
      const lost = jump === SPRING ? -1 : 1;
      const steady = total(asleep([worker()], 5)) / 6;
      expect(nights - steady).toBeCloseTo(lost, 9);
    }
  });
});

describe('holidays', () => {
  const away = worker({ holidays: [{ from: 103, to: 104 }] });

  test('empty the home from midnight to midnight and keep gains away', () => {
    const days = laidOut(quietHousehold(HOME, { people: [away] }), 4);
    const usual = laidOut(quietHousehold(HOME, { people: [worker()] }), 4);
    for (const room of [BEDROOM, LIVING]) {
      for (const of of ['occupants', 'awake', 'peopleHeat'] as const) {
        expect(total(series(days.slice(1, 3), of, room))).toBe(0);
        expect(series(days.slice(0, 1), of, room)).toEqual(series(usual.slice(0, 1), of, room));
        expect(series(days.slice(3), of, room)).toEqual(series(usual.slice(3), of, room));
      }
    }
  });

  test('run over the end of the year', () => {
    const person = worker({ holidays: [{ from: 1230, to: 102 }] });
    const household = quietHousehold(HOME, { people: [person] });
    const start = Date.UTC(2022, 11, 28) / 1000;
    const occupied = laidOut(household, 8, { start }).map((day) => total([...day.occupants]));
    expect(occupied.map((n) => n > 0)).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
      true,
      true,
    ]);
  });

  test('follow the local date', () => {
    const person = worker({ holidays: [{ from: 103, to: 103 }] });
    const household = quietHousehold(HOME, { people: [person], clock: AHEAD });
    const asleepOn = series(laidOut(household, 3), 'occupants', BEDROOM);
    // Local midnight is 23:00 UTC.
    expect(asleepOn[144 + 23 * 6]).toBe(1);
    expect(asleepOn[144 + 23 * 6 - 1]).toBe(0);
    expect(asleepOn[23 * 6 - 1]).toBe(1);
    expect(asleepOn[23 * 6]).toBe(0);
  });

  test('stop what people do, and what they would have hung up, but not the fridge', () => {
    const when = [{ days: EVERY_DAY, from: 720, to: 780 }];
    const activity = {
      name: 'x',
      room: LIVING,
      when,
      heat: 100,
      electricity: 100,
      vapour: 0,
      drying: 0,
      species: [],
    };
    const heatOf = (
      people: readonly Person[],
      stopsFor?: 'an empty home' | 'holidays',
    ): number[] => {
      const activities = [stopsFor === undefined ? activity : { ...activity, stopsFor }];
      return laidOut(quietHousehold(HOME, { people, activities }), WEEK).map(
        (day) => total([...day.applianceHeat]) / 6,
      );
    };
    const all = new Array<number>(WEEK).fill(100);
    expect(heatOf([away])).toEqual(all);
    expect(heatOf([away], 'holidays')).toEqual([100, 0, 0, 100, 100, 100, 100]);
    expect(heatOf([away, worker()], 'holidays')).toEqual(all);
    // At noon a worker is at home on Sundays only.
    expect(heatOf([away], 'an empty home')).toEqual([0, 0, 0, 0, 0, 0, 100]);
    expect(heatOf([], 'holidays')).toEqual(all);
    expect(heatOf([], 'an empty home')).toEqual(all.map(() => 0));
  });
});
