import { expect, test } from 'vitest';
import { beyondFitted } from '../../../src/fit/readings/beyond-fitted.ts';
import { logCautions } from '../../../src/fit/readings/log-cautions.ts';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import type { Weather } from '../../../src/weather/weather.ts';

const START = Date.UTC(2025, 0, 6) / 1000;
const HOURS = 30 * 24;
const DIVISION = { start: START, hours: HOURS, release: 24, withheld: 24 * 24 };

/** Outdoors 5 °C and a day's swing; in the withheld days so much warmer. */
const weather = (warmer: number): Weather =>
  ({
    ...{ start: START, step: 3600, count: HOURS, notes: [] },
    temperature: Float64Array.from(
      { length: HOURS },
      (_, h) => 5 + 3 * Math.sin((h * Math.PI) / 12) + (h >= DIVISION.withheld ? warmer : 0),
    ),
  }) as unknown as Weather;

const series = (quantity: string, room: string, of: (h: number) => number): LoggedSeries => ({
  ...{ quantity, place: 'room', room, device: null, reading: 'instant', from: 'a.csv, x' },
  times: Float64Array.from({ length: HOURS }, (_, h) => START + h * 3600),
  values: Float64Array.from({ length: HOURS }, (_, h) => of(h)),
});
const log = (...all: LoggedSeries[]): Log => ({
  ...{ series: all, start: START, end: START + HOURS * 3600 },
});
const wave = (h: number): number => 20 + Math.sin((h * Math.PI) / 12) + 0.1 * Math.sin(h * 1.7);
const said = (...all: LoggedSeries[]): string[] =>
  logCautions(log(...all), ['den', 'hall'], weather(0), DIVISION);

test('a good log of like weather has nothing against it', () => {
  expect(said(series('temperature', 'den', wave))).toEqual([]);
});

test('a moved logger, a stuck one, and air below that outdoors are told; rooms elsewhere are not', () => {
  const all = [
    series('temperature', 'den', (h) => wave(h) + (h > 400 ? 3 : 0)),
    series('temperature', 'hall', wave),
    series('relative humidity', 'den', (h) => (h > 100 && h < 160 ? 99.9 : 60 + (h % 7))),
    series('co2', 'den', (h) => 600 + 300 * Math.sin(h / 4)),
    series('temperature', 'attic', () => 12),
  ];
  expect(said(...all)).toEqual([
    'Relative humidity of den stood at 99.9 for 2.4 days from 2025-01-10 05:00: is it wet, or at its end?',
    expect.stringMatching(
      /^CO2 of den falls to 300\.1 ppm and below in one reading of a hundred, under the level outdoors: the sensor reads low/,
    ),
    'The temperature of den stepped up by 3.0 K against other rooms about 2025-01-23 and stayed: was its sensor moved?',
  ]);
});

test('weather that the fit never saw is told, with what it does to bands', () => {
  // ten degrees more: even the coldest hour, 12 °C, is above the warmest fitted, 8 °C
  expect(beyondFitted(weather(10), DIVISION)).toBe(1);
  expect(beyondFitted(weather(0), DIVISION)).toBe(0);
  expect(
    logCautions(log(series('temperature', 'den', wave)), ['den'], weather(10), DIVISION),
  ).toEqual([
    'In 100 % of the withheld hours it was colder or warmer outdoors than ever in the fitted part: stated bands are that much wider.',
  ]);
});

test('gaps of the weather that were filled are told', () => {
  const gap = (text: string) => ({ id: 'gap-filled', text }) as const;
  const notes = [gap('2025-01-07T00:00Z, 1 hour: temperature filled by straight lines'), gap('x')];
  const own = log(series('temperature', 'den', wave));
  expect(logCautions(own, ['den'], { ...weather(0), notes }, DIVISION)).toEqual([
    'The weather has gaps that were filled: 2025-01-07T00:00Z, 1 hour: temperature filled by straight lines, and 1 more. "check" lists all.',
  ]);
});
