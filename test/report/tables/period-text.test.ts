import { expect, test } from 'vitest';
import { periodText } from '../../../src/report/tables/period-text.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';

// Berlin: an hour ahead, two from the end of March to that of October 2023.
const BERLIN = {
  from: [0, Date.UTC(2023, 2, 26, 1) / 1000, Date.UTC(2023, 9, 29, 1) / 1000],
  offset: [3600, 7200, 3600],
};
const words = (from: string, to: string, clock = BERLIN) =>
  periodText({ period: { from, to, hours: (Date.parse(to) - Date.parse(from)) / 3.6e6 } }, clock);

test('a period from midnight to midnight by the dates of its first and last day', () => {
  expect(words('2022-12-31T23:00:00Z', '2023-12-31T23:00:00Z')).toBe(
    '2023-01-01 to 2023-12-31 (365 days)',
  );
  expect(words('2023-06-30T22:00:00Z', '2023-07-01T22:00:00Z')).toBe('2023-07-01 (1 day)');
  expect(words('2023-01-01T00:00:00Z', '2024-01-01T00:00:00Z', UTC_CLOCK as typeof BERLIN)).toBe(
    '2023-01-01 to 2023-12-31 (365 days)',
  );
});

test('days of which one has 25 hours', () => {
  expect(words('2023-10-27T22:00:00Z', '2023-10-29T23:00:00Z')).toBe(
    '2023-10-28 to 2023-10-29 (2 days)',
  );
});

test('any other by its times on the clock', () => {
  expect(words('2023-07-01T00:00:00Z', '2023-07-02T06:30:00Z')).toBe(
    '2023-07-01 02:00 to 2023-07-02 08:30 (30.5 hours)',
  );
  expect(words('2023-01-01T00:00:00Z', '2024-01-01T00:00:00Z')).toBe(
    '2023-01-01 01:00 to 2024-01-01 01:00 (365 days)',
  );
});
