import { expect, test } from 'vitest';
import { type LocalClock, UTC_CLOCK } from '../../src/units/local-clock.ts';
import { monthStarts } from '../../src/units/month-starts.ts';

const utc = (text: string) => Date.parse(`${text}:00Z`) / 1000;
const starts = (from: string, to: string, clock: LocalClock) =>
  monthStarts(utc(from), utc(to), clock).map((at) =>
    new Date(at * 1000).toISOString().slice(0, 16),
  );

test('months of a year, the first from its start', () => {
  const all = starts('2023-01-01T00:00', '2024-01-01T00:00', UTC_CLOCK);
  expect(all).toHaveLength(12);
  expect([all[0], all[11]]).toEqual(['2023-01-01T00:00', '2023-12-01T00:00']);
});

test('a month that has begun counts from its beginning', () => {
  expect(starts('2023-01-31T23:00', '2023-02-01T01:00', UTC_CLOCK)).toEqual([
    ...['2023-01-01T00:00', '2023-02-01T00:00'],
  ]);
});

test('a summer by the wall clock touches no hour of the month before', () => {
  const summer: LocalClock = { from: [0], offset: [3600] };
  expect(starts('2023-05-31T23:00', '2023-08-31T23:00', summer)).toEqual([
    ...['2023-05-31T23:00', '2023-06-30T23:00', '2023-07-31T23:00'],
  ]);
});
