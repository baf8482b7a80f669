import { describe, expect, test } from 'vitest';
import type { LocalClock } from '../../src/units/local-clock.ts';
import { periodOf, type Span } from '../../src/weather/period-of.ts';

const at = (iso: string) => Date.parse(`${iso}:00Z`) / 1000;
const typical: Span = {
  ...{ title: 'typical', start: at('2023-01-01T00:00'), step: 3600, count: 8760 },
  periodic: true,
};
const winter: Span = {
  ...{ title: 'winter', start: at('2015-10-01T00:00'), step: 3600, count: 24 * 213 },
  periodic: false,
};
const AHEAD: LocalClock = { from: [0], offset: [3600] };

describe('periodOf', () => {
  test('neither day named: all of it', () => {
    expect(periodOf(typical, null, null)).toEqual({ start: typical.start, hours: 8760 });
    expect(periodOf(winter, null, null, AHEAD)).toEqual({ start: winter.start, hours: 24 * 213 });
  });

  test('a year that turns has whole days, wherever its clock is', () => {
    for (const hours of [-11, -5, 1, 5.5, 13, 14]) {
      const clock = { from: [0], offset: [hours * 3600] };
      const start = typical.start - hours * 3600;
      expect(periodOf(typical, null, null, clock)).toEqual({ start, hours: 8760 });
      expect(periodOf(typical, null, '01-07', clock)).toEqual({ start, hours: 168 });
      expect(periodOf(typical, null, '12-31', clock)).toEqual({ start, hours: 8760 });
    }
  });

  test('a year that turns inside a day is begun with the nearest midnight', () => {
    const turning = (start: string) => ({ ...typical, start: at(start) });
    for (const [start, begun] of [
      ['2022-07-08T11:00', '2022-07-08T00:00'],
      ['2022-07-08T13:00', '2022-07-09T00:00'],
      ['2022-07-01T14:00', '2022-07-01T00:00'],
      ['2022-07-01T15:00', '2022-07-02T00:00'],
      ['2022-06-30T10:00', '2022-07-01T00:00'],
    ] as const) {
      expect(periodOf(turning(start), null, null)).toEqual({ start: at(begun), hours: 8760 });
    }
  });

  test('whole hours only', () => {
    const odd = { ...winter, start: winter.start + 1200, step: 1200, count: 10 };
    expect(periodOf(odd, null, null)).toEqual({ start: winter.start + 3600, hours: 2 });
  });

  test('a day past the seam is that at the beginning, wherever its clock is', () => {
    expect(periodOf(typical, '06-01', '01-01', AHEAD)).toEqual({
      ...{ start: at('2022-05-31T23:00'), hours: 215 * 24 },
    });
  });

  test('both days included', () => {
    expect(periodOf(typical, '03-01', '03-31')).toEqual({
      start: at('2023-03-01T00:00'),
      hours: 744,
    });
    expect(periodOf(typical, '07-04', '07-04')).toEqual({
      start: at('2023-07-04T00:00'),
      hours: 24,
    });
    expect(periodOf(typical, '01-01', '12-31', AHEAD)).toEqual({
      start: at('2022-12-31T23:00'),
      hours: 8760,
    });
  });

  test('over new year', () => {
    expect(periodOf(typical, '11-01', '02-28')).toEqual({
      start: at('2022-11-01T00:00'),
      hours: 120 * 24,
    });
    expect(periodOf(winter, '12-30', '01-02')).toEqual({
      start: at('2015-12-30T00:00'),
      hours: 96,
    });
  });

  test('a year that turns in summer: days inside it are where it has them', () => {
    const summer = { ...typical, start: at('2022-07-01T00:00') };
    const found = (from: string | null, to: string | null) => {
      const { start, hours } = periodOf(summer, from, to);
      return [new Date(start * 1000).toISOString().slice(0, 10), hours / 24];
    };
    expect(found('01-09', '02-15')).toEqual(['2023-01-09', 38]);
    expect(found('08-01', '08-31')).toEqual(['2022-08-01', 31]);
    expect(found('11-01', '02-28')).toEqual(['2022-11-01', 120]);
    expect(found('06-16', '07-15')).toEqual(['2022-06-16', 30]); // over its seam
    expect(found('09-01', '08-31')).toEqual(['2021-09-01', 365]);
    expect(found('01-01', null)).toEqual(['2023-01-01', 365]);
    expect(found(null, '03-31')).toEqual(['2022-07-01', 274]);
    // Its middle lies in the later of its two years.
    const later = { ...typical, start: at('2022-07-05T00:00') };
    expect(periodOf(later, '09-01', '08-31')).toEqual({
      ...{ start: at('2021-09-01T00:00'), hours: 8760 },
    });
  });

  test('one day named', () => {
    expect(periodOf(typical, '11-01', null)).toEqual({
      start: at('2023-11-01T00:00'),
      hours: 8760,
    });
    expect(periodOf(typical, null, '01-07')).toEqual({ start: typical.start, hours: 168 });
    expect(periodOf(winter, '04-01', null)).toEqual({ start: at('2016-04-01T00:00'), hours: 720 });
  });

  test('a leap day where the weather has one', () => {
    expect(periodOf(winter, '02-29', '02-29')).toEqual({
      start: at('2016-02-29T00:00'),
      hours: 24,
    });
  });

  test('summer time: the day the clocks go forward has 23 hours', () => {
    const clock: LocalClock = { from: [0, at('2023-03-26T01:00')], offset: [0, 3600] };
    expect(periodOf(typical, '03-26', '03-26', clock).hours).toBe(23);
  });

  test('the first and last day may lack hours', () => {
    expect(periodOf(winter, '10-01', '04-30', AHEAD)).toEqual({
      start: winter.start,
      hours: 24 * 213 - 1,
    });
  });

  test('says what the weather covers', () => {
    expect(() => periodOf(winter, '04-15', '05-15')).toThrow(
      'winter: period: expected days inside the weather, 2015-10-01T00:00Z to 2016-05-01T00:00Z, got 04-15 to 05-15',
    );
    expect(() => periodOf(winter, '07-01', null)).toThrow('got 07-01 to its end');
    expect(() => periodOf(typical, '02-29', '03-05')).toThrow(
      'typical: period: expected days inside the weather, 2023-01-01T00:00Z to 2024-01-01T00:00Z, got 02-29 to 03-05',
    );
  });

  test('refuses what is no day, both at once', () => {
    expect(() => periodOf(typical, '13-01', '4 May')).toThrow(
      'typical: period.from: expected a day of the year as MM-DD, got "13-01"\n' +
        'typical: period.to: expected a day of the year as MM-DD, got "4 May"',
    );
  });
});
