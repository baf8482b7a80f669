import { expect, test } from 'vitest';
import { commonSpan } from '../../../src/fit/readings/span-of.ts';
import type { LoggedSeries } from '../../../src/log/log.ts';
import { madeWeather } from '../../engine/homes.ts';

const DAY = 86_400;
const series = (quantity: string, room: string | null, from: number, to: number): LoggedSeries => ({
  ...{ quantity, room, place: room === null ? 'home' : 'room', device: null, from: 'm.csv' },
  ...{ reading: 'instant', values: Float64Array.of(1, 2) },
  times: Float64Array.of(from * DAY, to * DAY),
});

test('a log is of the days in which rooms were measured, whatever meters go on', () => {
  const all = [
    series('gas', null, 0, 90),
    series('temperature', 'den', 30, 60),
    series('relative humidity', 'hall', 40, 70),
    series('window', 'hall', 20, 80),
  ];
  const log = { series: all, start: 0, end: 90 * DAY };
  const weather = madeWeather({}, { start: 0 });
  expect(commonSpan(log, weather)).toEqual({ start: 29 * DAY, hours: 42 * 24 }); // a day more on either side
});

test('of a long log the latest 26 weeks are fitted', () => {
  const log = { series: [series('temperature', 'den', 0, 300)], start: 0, end: 300 * DAY };
  const weather = madeWeather({}, { start: 0 });
  expect(commonSpan(log, weather)).toEqual({ start: (300 - 7 * 26) * DAY, hours: 7 * 26 * 24 });
});
