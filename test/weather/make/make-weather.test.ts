import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { readRecipe } from '../../../src/cli/load/read-recipe.ts';
import { seededRandom } from '../../../src/units/seeded-random.ts';
import { meanCosZenith } from '../../../src/weather/complete/mean-cos-zenith.ts';
import { describeWeather } from '../../../src/weather/describe/describe-weather.ts';
import { checkRecipe } from '../../../src/weather/make/check-recipe.ts';
import { makeWeather } from '../../../src/weather/make/make-weather.ts';
import { persistentSeries } from '../../../src/weather/make/persistent-series.ts';
import type { WeatherRecipe } from '../../../src/weather/make/recipe.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { writeOwnCsv } from '../../../src/weather/write-own-csv.ts';
import { compareBand } from '../../reference/compare.ts';

const file = (name: string) =>
  readFileSync(new URL(`../../../weather/${name}`, import.meta.url), 'utf8');
const recipe = readRecipe(file('saltmere-typical.recipe.yaml'), 'saltmere-typical.recipe.yaml');
const csv = file('saltmere-typical.csv');

describe('the demonstration year', () => {
  test('is what its recipe makes, byte for byte', () => {
    expect(writeOwnCsv(makeWeather(recipe)) === csv).toBe(true);
  });

  test('reads without a word of complaint, as a typical year', () => {
    const weather = readWeather(csv, 'saltmere-typical.csv');
    expect(weather).toMatchObject({
      count: 8760,
      step: 3600,
      periodic: true,
      sun: 'invented',
      notes: [],
    });
    expect(csv.length).toBeLessThan(700_000);
  });

  test('is as cold as a mild western coast', () => {
    const figures = describeWeather(readWeather(csv, 'saltmere-typical.csv'));
    compareBand({
      topic: 'Weather made',
      what: 'heating degree-days of the demonstration year, base 15.5 °C, by daily means',
      unit: 'K d',
      source: 'around the UK 20-year average of 2463, vesma.com/ddd/std-year.htm',
      mark: 'published',
      low: 2300,
      high: 2700,
      got: figures.degree_days[0]!.heating.by_daily_mean,
      because: 'the range that the demonstration is meant to lie in',
    });
  });
});

describe.each([1, 2, 77])('a made year, seed %i', (seed) => {
  const weather = makeWeather(recipe, seed);
  const figures = describeWeather({ ...weather, longitude: 0 }); // months by UTC, as the maker counts

  test('has the monthly means of its recipe', () => {
    figures.months.forEach((month, k) => {
      expect(month.mean_c).toBeCloseTo(recipe.temperature.mean[k]!, 6);
      expect(month.mean_wind_m_per_s).toBeCloseTo(recipe.wind.mean[k]!, 6);
      expect(month.mean_relative_humidity_pct).toBeCloseTo(recipe.relativeHumidity[k]!, 3);
    });
  });

  test('has the sun of its recipe', () => {
    describeWeather(weather).months.forEach((month, k) => {
      expect(month.global_kwh_per_m2_day).toBeCloseTo(recipe.sun.global![k]!, 4);
    });
  });

  test('has the daily range of its recipe', () => {
    // The maker counts the range of UTC days, and so does this.
    let k = 0;
    for (const [month, range] of recipe.temperature.dailyRange.entries()) {
      const days = new Date(Date.UTC(2023, month + 1, 0)).getUTCDate();
      let sum = 0;
      for (let day = 0; day < days; day++, k += 24) {
        const hours = weather.temperature.subarray(k, k + 24);
        sum += Math.max(...hours) - Math.min(...hours);
      }
      expect(sum / days).toBeCloseTo(range, 1);
    }
  });

  test('is possible: no more vapour than saturated, sun only by day, wind from somewhere', () => {
    const again = readWeather(writeOwnCsv(weather), 'made.csv'); // every range is checked there
    expect(again.notes).toEqual([]);
    for (let k = 0; k < 24; k++) {
      const night = k < 3 || k > 21;
      if (night) expect(weather.directNormal[k]! + weather.diffuseHorizontal[k]!).toBe(0);
    }
    expect(Math.max(...weather.directNormal)).toBeLessThan(1000);
  });

  test('relative humidity falls on warm afternoons', () => {
    const rows = writeOwnCsv(weather)
      .split('\n')
      .filter((row) => row.startsWith('2023-06'));
    const at = (hour: number) =>
      rows
        .filter((row) => row.slice(11, 13) === String(hour).padStart(2, '0'))
        .map((row) => Number(row.split(',')[2]));
    const mean = (values: readonly number[]) => values.reduce((a, b) => a + b) / values.length;
    expect(mean(at(4)) - mean(at(15))).toBeGreaterThan(10);
  });

  test('closes on itself: the last hour leads into the first', () => {
    const { temperature } = weather;
    const steps = temperature.map((t, k) => Math.abs(t - temperature[(k + 1) % 8760]!)).sort();
    expect(Math.abs(temperature[8759]! - temperature[0]!)).toBeLessThanOrEqual(steps.at(-1)!);
  });

  test('its days hang together', () => {
    const daily = Array.from({ length: 365 }, (_, day) =>
      weather.temperature.subarray(24 * day, 24 * day + 24).reduce((a, b) => a + b / 24, 0),
    );
    // Neighbouring days are more alike than days a week apart.
    const change = daily.reduce((sum, t, day) => sum + (t - daily[(day + 1) % 365]!) ** 2, 0);
    const week = daily.reduce((sum, t, day) => sum + (t - daily[(day + 7) % 365]!) ** 2, 0);
    expect(change).toBeLessThan(week);
  });
});

test('the same seed makes the same year, another one another', () => {
  const made = makeWeather(recipe, 5);
  expect(isDeepStrictEqual(makeWeather(recipe, 5), made)).toBe(true); // each of 80,000 numbers
  expect(made.temperature).not.toEqual(makeWeather(recipe, 6).temperature);
});

test('sun may be given as clearness, and the south has its summer in January', () => {
  const turned = (values: readonly number[]) => values.map((_, k) => values[(k + 6) % 12]!);
  const southern: WeatherRecipe = {
    ...recipe,
    latitude: -40,
    temperature: { ...recipe.temperature, mean: turned(recipe.temperature.mean) },
    sun: { clearness: new Array<number>(12).fill(0.45), persistence: 0.4 },
  };
  const { months } = describeWeather(makeWeather(southern));
  expect(months[0]!.global_kwh_per_m2_day).toBeGreaterThan(2.5 * months[5]!.global_kwh_per_m2_day);
});

describe('persistentSeries', () => {
  test('has mean 0, deviation 1 and the correlation asked for', () => {
    const n = 20_000;
    for (const persistence of [0, 0.5, 0.9]) {
      const x = persistentSeries(seededRandom(3), n, persistence);
      const mean = x.reduce((a, b) => a + b) / n;
      const variance = x.reduce((a, b) => a + b * b, 0) / n;
      const lag = x.reduce((a, b, k) => a + b * x[(k + 1) % n]!, 0) / n / variance;
      // Four standard errors; a persistent series counts as n (1 - r)/(1 + r) independent ones.
      const error = 4 / Math.sqrt((n * (1 - persistence)) / (1 + persistence));
      expect(Math.abs(mean)).toBeLessThan(error);
      expect(Math.abs(variance - 1)).toBeLessThan(1.5 * error);
      expect(Math.abs(lag - persistence)).toBeLessThan(4 / Math.sqrt(n));
    }
  });
});

describe('a wrong recipe', () => {
  test('everything at once, in the words of the file', () => {
    const wrong = {
      ...recipe,
      title: 7,
      latitude: 80,
      temperature: {
        ...recipe.temperature,
        mean: [...recipe.temperature.mean.slice(0, 11), '4 degrees'],
        dailyRange: [5, 6],
        persistence: 1,
      },
      relativeHumidity: undefined,
      sun: { global: recipe.sun.global, clearness: recipe.sun.global, persistence: Number.NaN },
    } as unknown as WeatherRecipe;
    expect(() => checkRecipe(wrong, 'r.yaml')).toThrow(
      [
        'r.yaml: latitude: expected -66 to 66 degrees north, got 80',
        'r.yaml: temperature.mean, December: expected -50 to 45 °C, got "4 degrees"',
        'r.yaml: temperature.daily range: expected twelve numbers, each 0.5 to 30 K, got a list of 2',
        'r.yaml: temperature.persistence: expected 0 to 0.95, got 1',
        'r.yaml: relative humidity: expected twelve numbers, each 5 to 98 %, got nothing',
      ].join('\n'),
    );
  });

  test('sun given twice, and not at all', () => {
    const { global } = recipe.sun;
    const both = {
      ...recipe,
      sun: { persistence: 0, global: global!, clearness: global!.map(() => 0.4) },
    };
    expect(() => checkRecipe(both)).toThrow(
      'recipe: sun: expected either global or clearness, got both',
    );
    expect(() => checkRecipe({ ...recipe, sun: { persistence: 0 } })).toThrow('got neither');
  });

  test('more sun than a clear sky has', () => {
    const bright = {
      ...recipe,
      sun: { persistence: 0, global: recipe.sun.global!.map((v) => 1.9 * v) },
    };
    expect(() => makeWeather(bright)).toThrow(
      /^recipe: sun.global, January: expected at most 1\.04 kWh\/m2 a day, nearly always clear sky, got 1\.10 kWh\/m2 a day$/m,
    );
  });

  test('what is said to be the most is taken', () => {
    const north = { ...recipe, latitude: 63.4 };
    const december = (kWh: number) => ({
      ...north,
      sun: { persistence: 0, global: [...recipe.sun.global!.slice(0, 11).map(() => 0.1), kWh] },
    });
    const said = (kWh: number): number => {
      try {
        makeWeather(december(kWh));
      } catch (error) {
        return Number(/December: expected at most ([\d.]+) /.exec((error as Error).message)![1]);
      }
      throw new Error('it was taken');
    };
    const most = said(1);
    expect(() => makeWeather(december(most))).not.toThrow();
    expect(said(most + 0.01)).toBe(most);
  });

  test('but not the sun of a desert, which it meets', () => {
    // A desert at 33° north, as solar tables have it (from memory).
    const global = [3.2, 4.3, 5.5, 7.1, 8.0, 8.4, 7.6, 7.1, 6.1, 4.9, 3.6, 3.0];
    const { directNormal, diffuseHorizontal, ...made } = makeWeather({
      ...{ ...recipe, latitude: 33.4, longitude: -112, sun: { persistence: 0.45, global } },
    });
    const june = Array.from({ length: 720 }, (_, k) => 151 * 24 + k);
    const sum = june.reduce((all, k) => {
      const cos = meanCosZenith(made.start + k * 3600, 3600, 33.4, -112);
      return all + diffuseHorizontal[k]! + directNormal[k]! * Math.max(0, cos);
    }, 0);
    expect(sum / 30_000).toBeCloseTo(8.4, 1);
  });
});
