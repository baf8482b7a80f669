import { describe, expect, test } from 'vitest';
import { chainFromUValue } from '../../src/home/chain.ts';
import type { Home } from '../../src/home/home.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { anElement } from '../home/a-home.ts';
import { always, bareHome, bareRoom, ideallyHeated, NEW_YEAR, quietHousehold } from './homes.ts';
import { recordRun, runInput } from './record-run.ts';
import { lastDays, steadyDay } from './short-weather.ts';

const DAY = 86_400;
const WEEK = 7; // d
const turns = (t: number, days: number): number => Math.cos((2 * Math.PI * t) / (days * DAY));

/** A small room behind heavy walls, which remember some days. */
const heavy: Home = bareHome([bareRoom('room', 40)], {
  elements: [
    {
      ...anElement('wall', 30, 1),
      chain: chainFromUValue(1, 300_000, { inner: 0.13, outer: 0.04 }, 'inside'),
    },
  ],
  leakage: { how: { by: 'rate', flow: 0.002 }, share: [1], ach50: null },
});

function airOf(weather: Weather, spinUpDays: number, hours = WEEK * 24, home = heavy) {
  const household = quietHousehold(home, { setpoints: [always(home === heavy ? -Infinity : 20)] });
  const input = runInput({ home, weather }, { household, hours, spinUpDays: spinUpDays });
  return recordRun(input).room;
}

describe('the spin-up of a file of one week', () => {
  // A week that warms up from -2 to 8 °C with a daily swing of 8 K.
  const week = lastDays({ temperature: (t) => 3 - 5 * turns(t, 2 * WEEK) + 4 * turns(t, 1) }, WEEK);

  test('hardly shows in its last days, however long it is', () => {
    const long = airOf(week, 35).airTemperature[0]!;
    for (const spinUp of [8, 14, 28, 30]) {
      const air = airOf(week, spinUp).airTemperature[0]!;
      const off = air.slice(-2 * 144).map((t, k) => Math.abs(t - long[long.length - 288 + k]!));
      expect(Math.max(...off)).toBeLessThan(0.1);
    }
  });

  test('is the same for all lengths that hold whole weeks, once walls have forgotten', () => {
    const [four, five] = [28, 35].map((days) => airOf(week, days).airTemperature[0]!);
    const apart = four!.map((t, k) => Math.abs(t - five![k]!));
    expect(Math.max(...apart)).toBeLessThan(0.01);
  });

  test('brings the file’s own days: one day again and again is as if it had always been', () => {
    const course = { temperature: (t: number) => 5 + 6 * turns(t, 1) };
    const always = airOf(steadyDay(course, 3600), 30).airTemperature[0]!;
    const again = airOf(lastDays(course, WEEK), 30).airTemperature[0]!;
    // Between the file's last reading and its first there is nothing to interpolate: the last
    // holds for an hour, wrong by less than 0.3 K. Frozen at any reading it would be 6 K at noon.
    expect(Math.abs(again[0]! - always[0]!)).toBeLessThan(0.05);
    expect(Math.abs(again[143]! - always[143]!)).toBeLessThan(0.05);
  });

  test('does not stand still at the file’s first reading', () => {
    // Only the first reading is cold. Had it held for 30 days, the walls would be frozen.
    const once = lastDays({ temperature: (t) => (t < 3600 ? -20 : 15) }, WEEK);
    expect(airOf(once, 30, 24).airTemperature[0]![143]).toBeGreaterThan(13);
  });
});

test('a spin-up within the file takes the days before, not those of its beginning', () => {
  const cold = lastDays({ temperature: () => 2 }, 60, 3600, 50);
  const fallen = lastDays({ temperature: (t) => (t < 40 * DAY ? 18 : 2) }, 60, 3600, 50);
  expect(NEW_YEAR - fallen.start).toBe(50 * DAY);
  const home = ideallyHeated(heavy);
  const heat = (weather: Weather) => airOf(weather, 10, 24, home).heating[0]![0]!;
  expect(heat(fallen)).toBeCloseTo(heat(cold), 0);
});

describe('a file of part days', () => {
  /** 10 °C, but for -40 °C in the last hour but one and 60 °C in the last, so that the mean stays. */
  const mild = (days: number, begins: number, wildEnd: boolean): Weather => {
    const left = (t: number): number => Math.round((days * DAY - t) / 3600);
    const wild = (t: number): number => (left(t) === 1 ? 60 : left(t) === 2 ? -40 : 10);
    const course = { temperature: wildEnd ? wild : () => 10 };
    return { ...lastDays(course, days), start: NEW_YEAR - begins };
  };

  test.each([
    ['ends 18 h after its last whole day', 2.75, 0],
    ['begins at 18:00, so that a day of the spin-up begins between its own', 2, 6 * 3600],
    ['begins at 18:00 and ends with a part day', 3.5, 6 * 3600],
  ])('that %s lends no day that it does not hold', (_, days, begins) => {
    const [calm, wild] = [false, true].map(
      (wildEnd) => airOf(mild(days, begins, wildEnd), 12, 24).airTemperature[0]!,
    );
    // Held beyond the file, 60 °C would have warmed the walls for hours.
    expect(wild).toEqual(calm);
  });
});

test('a spin-up of half a day ends where the period begins', () => {
  // Through its leak alone, 0.002 m3/s into 40 m3, air follows a step of the weather with a time
  // constant of 20000 s. What comes after the step must not be in the first reading of the period.
  const bare: Home = { ...heavy, elements: [] };
  const step = lastDays({ temperature: (t) => (t < DAY + 3600 ? 15 : 0) }, 3, 3600, 1);
  const early = airOf(step, 1, 24, bare).airTemperature[0]![0]!;
  const late = airOf(step, 0.5, 24, bare).airTemperature[0]![0]!;
  expect(early).toBeGreaterThan(10);
  expect(late).toBeGreaterThan(10);
});
