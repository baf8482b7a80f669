import { expect, test } from 'vitest';
import { createColdSpots } from '../../../src/measures/damp/cold-spots.ts';
import { createHourlyMeans } from '../../../src/measures/hourly-means.ts';
import { dailyRanges } from '../../../src/measures/series/daily-ranges.ts';
import { extremeWeek } from '../../../src/measures/series/extreme-week.ts';
import { createPlanSeries } from '../../../src/measures/series/plan-series.ts';
import { type LocalClock, UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { home, type Moment, room, START, setup, stretches } from '../hand-made.ts';

const two = home({ rooms: [room('den'), room('bath')] });
const own = setup({
  home: two,
  mouldClasses: ['sensitive', 'resistant'],
  period: { start: START, hours: 72 },
});
const at = (s: number, i: number): Moment => ({
  ...{ air: 18 + i + (s % 6), operative: 17 + (s % 6), humidity: 60 + 30 * i + (s % 6) },
  ...{ occupants: s % 6 < 3 ? 2 : 0, outdoor: s % 12 },
});
const trace = (cuts: readonly number[]) => [...stretches(two, START, 600, 432, cuts, at)];

function seriesOf(cuts: readonly number[]) {
  const series = createPlanSeries(own);
  for (const part of trace(cuts)) series.observe(part);
  return series.result();
}

test('hourly means by room, and outdoors', () => {
  const { start, outdoors, rooms } = seriesOf([144]);
  expect(start).toBe(START);
  expect(rooms.map(({ name }) => name)).toEqual(['den', 'bath']);
  expect(Array.from(outdoors.temperature.slice(0, 3))).toEqual([2.5, 8.5, 2.5]);
  expect(rooms[1]!.airTemperature).toEqual(new Float32Array(72).fill(21.5));
  expect(rooms[0]!.operativeTemperature[5]).toBeCloseTo(19.5, 4);
  expect(rooms[1]!.relativeHumidity[71]).toBeCloseTo(92.5, 4);
});

test('a cold spot on which water condenses is at 100 %, whatever its air would come to', () => {
  const series = createPlanSeries(own);
  for (const part of stretches(two, START, 600, 432, [144], () => ({
    humidity: 90,
    outdoor: -5,
  }))) {
    series.observe(part);
  }
  expect(series.result().rooms[0]!.coldSpotHumidity).toEqual(new Float32Array(72).fill(100));
});

test('somebody in counts by the share of the hour, two people as one', () => {
  expect(seriesOf([144]).rooms[0]!.occupied[10]).toBeCloseTo(0.5, 6);
});

test('cold spot and mould index are those of the figures', () => {
  const spots = createColdSpots(two, own.mouldClasses);
  let above = 0;
  const means = createHourlyMeans(2, [
    spots.observe,
    () => {
      if (spots.humidity[1]! > 80) above++;
    },
  ]);
  for (const part of trace([144])) means.observe(part);
  const { rooms } = seriesOf([144]);
  const bath = rooms[1]!;
  expect(above).toBeGreaterThan(0);
  expect(above).toBe(spots.result(1).hoursAbove80);
  expect(bath.coldSpotHumidity.filter((value) => value > 80)).toHaveLength(above);
  expect(bath.mouldIndex).toHaveLength(3);
  expect(bath.mouldIndex[2]).toBeCloseTo(spots.result(1).mouldEnd, 6);
  expect(bath.mouldIndex[2]).toBeGreaterThan(bath.mouldIndex[0]!);
});

test('the mould index is that of the end of each day of the wall clock, 25 hours long or a part', () => {
  const back: LocalClock = { from: [0, START + 25 * 3600], offset: [7200, 3600] };
  const spots = createColdSpots(two, own.mouldClasses);
  const after: number[] = [];
  const means = createHourlyMeans(2, [spots.observe, () => after.push(spots.mouldIndex[0]!)]);
  const series = createPlanSeries({ ...own, clock: back });
  for (const part of trace([144])) {
    means.observe(part);
    series.observe(part);
  }
  const { mouldIndex } = series.result().rooms[0]!;
  const midnights = [22, 47, 71]; // two hours ahead, then one
  expect(Array.from(mouldIndex.slice(0, 3))).toEqual(
    midnights.map((hours) => Math.fround(after[hours - 1]!)),
  );
  expect(mouldIndex).toHaveLength(4);
  expect(mouldIndex[3]).toBe(Math.fround(after[71]!));
});

test('the same, however the trace is cut', () => {
  expect(seriesOf([7, 50, 3])).toEqual(seriesOf([144]));
});

const SUMMER: LocalClock = { from: [0], offset: [3600] };

test('days go from midnight to midnight by the wall clock', () => {
  const values = Float32Array.from({ length: 47 }, (_, h) => h);
  const utc = dailyRanges(values, START, UTC_CLOCK);
  expect(utc.start).toBe(START);
  expect(Array.from(utc.least)).toEqual([0, 24]);
  expect(Array.from(utc.most)).toEqual([23, 46]);
  expect(Array.from(utc.mean)).toEqual([11.5, 35]);
  const local = dailyRanges(values, START, SUMMER);
  expect(Array.from(local.most)).toEqual([22, 46]);
  expect(dailyRanges(new Float32Array(0), START, UTC_CLOCK).mean).toHaveLength(0);
});

test('the coldest week begins at a local midnight', () => {
  const cold = Float32Array.from({ length: 24 * 20 }, (_, h) => (h >= 101 && h < 290 ? -5 : 5));
  expect(extremeWeek(cold, START, UTC_CLOCK, 'lowest')).toBe(120);
  expect(extremeWeek(cold, START, SUMMER, 'lowest')).toBe(119);
  expect(extremeWeek(cold.subarray(0, 100), START, UTC_CLOCK, 'lowest')).toBe(0);
});
