import { describe, expect, test } from 'vitest';
import { frontierChart } from '../../../src/report/charts/frontier-chart.ts';
import { sweepText } from '../../../src/report/sweep/sweep-text.ts';

const run = (number: number, money: number, hours: number) => ({
  ...{ run: number, plan: 'now', values: { '/heating/setpoint': 17 + number }, money, hours },
});
const RUNS = [run(1, 1000, 500), run(2, 1010, 300), run(3, 1200, 200)];
const outcome = {
  ...{ file: 'all.csv', runs: 12, failed: 0, shard: [1, 1] as const, currency: 'GBP' },
  frontier: RUNS,
  // By hand: 10 for 200 hours less, then 190 for 100.
  knee: { at: RUNS[1]!, before: 10 / 200, after: 190 / 100 },
};

test('a frontier with its bend in words', () => {
  expect(sweepText(outcome, 80)).toBe(`12 runs in all.csv

Money against hours outside the bands, all rooms: for 3 of 12 runs no other is
cheaper with no more hours, or has fewer hours for no more money.

   GBP   room h
a year  outside  run  /heating/setpoint
  1000      500    1                 18
  1010      300    2                 19
  1200      200    3                 20

The bend is at run 2 (now, /heating/setpoint 19). Up to it, from the cheapest,
100 room-hours less cost 5.00 GBP a year; beyond it, to the one with fewest
hours, 190.`);
});

test.each([
  ['/heating/setpoint', 17, true],
  ['/heating/setpoint', 18, false],
  ['/heating/setpoint/1/setpoint', 15, true],
  ['/heating/rooms/bedroom', 14, true],
  ['/heating/rooms/bedroom/setpoint', 14, true],
  ['/heating/efficiency', 0.8, false],
  ['/cooling/setpoint', 17, false],
])('a bend at %s %f is cautioned against: %s', (pointer, value, cautioned) => {
  const at = { ...RUNS[1]!, values: { [pointer]: value } };
  const told = [
    { frontier: [{ ...RUNS[0]!, values: { [pointer]: 30 } }, at], knee: { ...outcome.knee, at } },
    { frontier: [at] },
  ];
  for (const more of told) {
    const text = sweepText({ ...outcome, ...more }, 80).replaceAll('\n', ' ');
    expect(text.includes('That sets a thermostat below 18 °C')).toBe(cautioned);
  }
});

describe('other ends', () => {
  const end = (more: object) =>
    sweepText({ ...outcome, ...more }, 80)
      .split('\n\n')
      .at(-1);

  test.each([
    [
      'one run beats all',
      { frontier: RUNS.slice(0, 1), knee: null },
      'Run 1 (now, /heating/setpoint 18) is the cheapest and has the fewest hours.',
    ],
    [
      'no bend',
      { knee: null },
      'Between its ends the frontier has no bend at which money and hours are both low.',
    ],
    ['a part', { frontier: [], knee: null, shard: [2, 4] }, '12 runs, shard 2 of 4, in all.csv'],
    [
      'runs without figures',
      { frontier: [], knee: null, failed: 2 },
      '12 runs in all.csv, 2 of them without figures',
    ],
    ['one run', { frontier: [], knee: null, runs: 1 }, '1 run in all.csv'],
  ])('%s', (_, more, expected) => {
    expect(end(more)).toBe(expected);
  });

  test('drawn values are printed as people would set them', () => {
    const drawn = { ...run(1, 1000, 500), values: { '/heating/setpoint': 18.3913794204 } };
    expect(end({ frontier: [drawn], knee: null })).toBe(
      'Run 1 (now, /heating/setpoint 18.39) is the cheapest and has the fewest hours.',
    );
  });

  test('a long frontier is shortened to rows evenly from it, with its bend', () => {
    const long = Array.from({ length: 100 }, (_, k) => run(k + 1, 1000 + k, 500 - k));
    const knee = { at: long[1]!, before: 1, after: 2 };
    const text = sweepText({ ...outcome, frontier: long, knee }, 80);
    expect(text).toMatch(/ {2}1000 +500 +1 /);
    expect(text).toMatch(/ {2}1001 +499 +2 /);
    expect(text).toMatch(/ {2}1099 +401 +100 /);
    expect(text).toContain('and 79 between these');
  });
});

describe('the title of the picture', () => {
  const named = RUNS.map(({ money, hours }, k) => ({ name: `run ${k + 1}`, money, hours }));
  const data = { currency: 'GBP', runs: RUNS, frontier: named, bend: named[1]! };

  test.each([
    [
      data,
      '3 of 3 runs are beaten by no other, from 1000 GBP a year and 500 room-hours to 1200 GBP a year and 200 room-hours outside the bands; the bend is at run 2',
    ],
    [
      { ...data, frontier: named.slice(0, 1), bend: null },
      'run 1 beats all 3 runs: 1000 GBP a year and 500 room-hours outside the bands',
    ],
    [{ ...data, runs: [], frontier: [], bend: null }, 'No run has figures'],
  ])('%#', (some, title) => {
    expect(frontierChart(some, 720).title).toBe(title);
  });
});
