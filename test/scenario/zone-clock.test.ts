import { expect, test } from 'vitest';
import { longitudeClock, zoneClock } from '../../src/scenario/zone-clock.ts';
import { toLocal, toUtc } from '../../src/units/local-clock.ts';

const at = (...args: Parameters<typeof Date.UTC>) => Date.UTC(...args) / 1000;

// Intl is the outside here: its rules come from the runtime, not from us.
test.each([
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'Pacific/Auckland',
])('%s shows what the runtime shows, hour by hour over two years and their jumps', (zone) => {
  const clock = zoneClock(zone)!;
  const format = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  for (let utc = at(2023, 0, 1); utc < at(2025, 0, 1); utc += 3600) {
    const local = (((toLocal(clock, utc) % 86_400) + 86_400) % 86_400) / 60;
    const shown = `${`${Math.floor(local / 60)}`.padStart(2, '0')}:${`${local % 60}`.padStart(2, '0')}`;
    if (format.format(utc * 1000) !== shown) {
      expect(shown, new Date(utc * 1000).toISOString()).toBe(format.format(utc * 1000));
    }
  }
});

test('the United Kingdom changes its clocks at 01:00 UTC on the last Sundays', () => {
  const clock = zoneClock('Europe/London')!;
  expect(toUtc(clock, at(2024, 2, 31, 1, 30))).toBe(at(2024, 2, 31, 1));
  expect(toUtc(clock, at(2024, 9, 27, 3))).toBe(at(2024, 9, 27, 3));
  expect(toUtc(clock, at(2024, 6, 1, 12))).toBe(at(2024, 6, 1, 11));
});

test('the London of 1970 was an hour ahead all year', () => {
  expect(toLocal(zoneClock('Europe/London')!, at(1970, 0, 15))).toBe(at(1970, 0, 15, 1));
});

test('a name that no zone has, and a place without a zone', () => {
  expect(zoneClock('Europe/Saltmere')).toBeNull();
  expect(longitudeClock(-74)).toEqual({ from: [0], offset: [-5 * 3600] });
});
