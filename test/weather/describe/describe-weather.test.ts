import { describe, expect, test } from 'vitest';
import { describeWeather } from '../../../src/weather/describe/describe-weather.ts';
import { compare } from '../../reference/compare.ts';
import { someWeather } from '../some-weather.ts';

const sine = Array.from({ length: 8760 }, (_, k) => 5.1 + 5 * Math.sin((2 * Math.PI * k) / 24));
const year = someWeather(sine, {
  periodic: true,
  windDirection: new Float64Array(8760).fill(250),
  diffuseHorizontal: new Float64Array(8760).fill(100),
  sun: 'measured',
});

describe('describeWeather', () => {
  const figures = describeWeather(year);

  test('means and extremes', () => {
    expect(figures.temperature.mean_c).toBeCloseTo(5.1, 9);
    expect(figures.temperature.lowest_c).toBeCloseTo(0.1, 9);
    expect(figures.temperature.highest_c).toBeCloseTo(10.1, 9);
    expect(figures.temperature.highest_at.slice(11)).toBe('06:00Z');
    expect(figures).toMatchObject({
      from: '2023-01-01T00:00Z',
      to: '2024-01-01T00:00Z',
      hours: 8760,
      step_minutes: 60,
      typical: true,
      wind: { mean_m_per_s: 3, highest_m_per_s: 3, prevailing: 'west' },
      sun: { origin: 'measured', global_kwh_per_m2: 876, direct_share: 0 },
    });
  });

  test('degree-days three ways', () => {
    const [british, american] = figures.degree_days;
    expect(british!.base_c).toBe(15.5);
    for (const way of Object.values(british!.heating)) expect(way).toBeCloseTo(365 * 10.4, 6);
    expect(american!.base_c).toBe(18.33);
    for (const way of Object.values(american!.cooling)) expect(way).toBe(0);
  });

  test('months add up to the year', () => {
    expect(figures.months.map(({ month }) => month).join(' ')).toBe(
      '01 02 03 04 05 06 07 08 09 10 11 12',
    );
    expect(figures.months.reduce((sum, { hours }) => sum + hours, 0)).toBe(8760);
    const sum = figures.months.reduce((total, month) => total + month.heating_degree_days, 0);
    expect(sum).toBeCloseTo(figures.degree_days[0]!.heating.by_daily_mean, 6);
    expect(figures.months[0]!.global_kwh_per_m2_day).toBeCloseTo(2.4, 9);
  });

  test('water in the air', () => {
    const steady = describeWeather(
      someWeather(new Array<number>(48).fill(20), {
        humidityRatio: new Float64Array(48).fill(0.00726),
      }),
    );
    compare({
      topic: 'Weather files',
      what: 'vapour pressure of humidity ratio 0.00726 at 101325 Pa',
      unit: 'Pa',
      source:
        'half of the saturation pressure at 20 °C, 2338.8 Pa (ASHRAE Fundamentals 2017, ch. 1)',
      mark: 'published arithmetic',
      expected: 1169.4,
      got: steady.humidity.mean_vapour_pressure_pa,
      tolerance: { relative: 0.001 },
      because: 'humidity ratio given to three digits',
    });
    expect(steady.humidity.mean_relative_humidity_pct).toBeCloseTo(50, 1);
    expect(steady.humidity.mean_vapour_density_g_per_m3).toBeCloseTo(8.64, 1);
  });

  test('a typical year west of Greenwich begins with January, though its first hours are of December there', () => {
    const west = someWeather(sine, { periodic: true, longitude: -97 });
    expect(describeWeather(west).months.map(({ month }) => Number(month))).toEqual(
      Array.from({ length: 12 }, (_, k) => k + 1),
    );
  });

  test('a measured stretch names its months with the year', () => {
    const months = describeWeather(someWeather(sine.slice(0, 24 * 40))).months;
    expect(months.map(({ month }) => month)).toEqual(['2023-01', '2023-02']);
  });

  test('says it in words', () => {
    expect(figures.words).toEqual([
      'a test: 8760 hours in steps of 60 minutes from 2023-01-01T00:00Z, a typical year that closes on itself.',
      `Mean 5.1 °C; lowest 0.1 °C at ${figures.temperature.lowest_at}, highest 10.1 °C at ${figures.temperature.highest_at}; 0 hours below 0 °C.`,
      '3796 K d of heating below 15.5 °C by daily means (3796 by highest and lowest, 3796 by the hour).',
      expect.stringMatching(
        /^Mean relative humidity 9\d %; least water in month \d\d, 6\.\d g of water/,
      ),
      'Wind 3.0 m/s on average, mostly from the west; at most 3.0.',
      'Sun 876 kWh/m2 on the horizontal, 0 % of it direct (direct and diffuse as in the file).',
    ]);
    const dark = describeWeather(someWeather([1, 2, 3]));
    expect(dark.words.at(-1)).toBe('No sun in the file: rooms will get none.');
    expect(dark.wind.prevailing).toBe(null);
  });
});
