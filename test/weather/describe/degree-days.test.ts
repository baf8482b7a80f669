import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dailyTemperatures } from '../../../src/weather/describe/daily-temperatures.ts';
import {
  degreeDayByMaxMin,
  degreeDaysByMaxMin,
} from '../../../src/weather/describe/degree-days-by-max-min.ts';
import { degreeDaysByMean } from '../../../src/weather/describe/degree-days-by-mean.ts';
import { degreeDaysHourly } from '../../../src/weather/describe/degree-days-hourly.ts';
import { compare } from '../../reference/compare.ts';
import { hitchinDegreeDays } from '../../reference/physics/heating/hitchin-degree-days.ts';
import { someWeather } from '../some-weather.ts';

const TOPIC = 'Degree-days';
const SEATTLE = 'Seattle City Light, "Degree Day", normals 1981-2010, seattle.gov/light/ddays.html';
const fahrenheit = (f: number) => (f - 32) / 1.8;
const BASE_65 = fahrenheit(65);

/** A series of some days of one temperature. */
const days = (mean: number, count: number) => ({ mean: new Float64Array(count).fill(mean) });

describe('by daily means', () => {
  // [month, days, mean in °F that the published figure implies, published °F-days]
  test.each([
    ['January', 31, 42.1, 711],
    ['February', 28.25, 43.6, 605],
    ['March', 31, 46.5, 574],
    ['April', 30, 50.3, 440],
    ['November', 30, 45.5, 586],
    ['December', 31, 40.6, 755],
  ])('Seattle, %s', (month, count, mean, published) => {
    const whole = Math.floor(count);
    const got = (degreeDaysByMean(days(fahrenheit(mean), whole), BASE_65) * count) / whole;
    compare({
      topic: TOPIC,
      what: `heating degree-days of constant days, Seattle ${month}, base 65 °F`,
      unit: '°F d',
      source: SEATTLE,
      mark: 'published arithmetic',
      expected: published,
      got: got * 1.8,
      tolerance: { relative: 0.01 },
      because: 'means rounded to 0.1 °F',
    });
  });

  // Hourly normals smooth out the days, so only months whose every normal day lies below the base.
  test.each([
    [1, 711, 1],
    [2, 605, 28.25 / 28],
    [3, 574, 1],
    [11, 586, 1],
    [12, 755, 1],
  ])('Seattle, month %i from hourly normals of the same station', (month, published, longer) => {
    const hourly = seattleNormals();
    const weather = someWeather(hourly, {
      start: Date.UTC(2010, 0, 1, 8) / 1000,
      longitude: -122.3,
      periodic: true,
    });
    const all = dailyTemperatures(weather);
    expect(all.mean.length).toBe(365);
    const ofMonth = (_: number, day: number) =>
      new Date((all.start[day]! - 8 * 3600) * 1000).getUTCMonth() === month - 1;
    // The national practice behind the published figure: the middle of highest and lowest.
    const mean = all.highest.map((high, day) => (high + all.lowest[day]!) / 2).filter(ofMonth);
    expect(Math.max(...mean)).toBeLessThan(BASE_65);
    compare({
      topic: TOPIC,
      what: `heating degree-days from hourly normals, Seattle, month ${month}, base 65 °F`,
      unit: 'K d',
      source: `${SEATTLE}; hourly normals of NOAA in the package vega-datasets`,
      mark: 'published',
      expected: published / 1.8,
      got: degreeDaysByMean({ mean }, BASE_65) * longer,
      tolerance: { absolute: 0.3 * mean.length },
      because:
        '0.3 K a day: hours rounded to 0.1 K, and the extremes of a mean day are not the mean of extremes',
    });
  });

  test('Aztec Ruins, January: every day below every base', () => {
    const source = 'Western Regional Climate Center, Aztec Ruins NM, period of record';
    for (const [base, published] of [
      [65, 1104],
      [60, 949],
      [57, 856],
      [55, 794],
      [50, 639],
    ] as const) {
      compare({
        topic: TOPIC,
        what: `heating degree-days of January at a mean of 29.4 °F, base ${base} °F`,
        unit: '°F d',
        source,
        mark: 'published arithmetic',
        expected: published,
        got: degreeDaysByMean(days(fahrenheit(29.4), 31), fahrenheit(base)) * 1.8,
        tolerance: { absolute: 31 * 0.05 + 0.5 },
        because: 'mean rounded to 0.1 °F, result to 1 °F d',
      });
    }
  });

  test('the rule printed with those tables', () => {
    const source = 'Western Regional Climate Center, rule under its degree-day tables';
    const rule = (what: string, highest: number, lowest: number, base: number, expected: number) =>
      compare({
        topic: TOPIC,
        what,
        unit: '°F d',
        source,
        mark: 'published arithmetic',
        expected,
        got:
          1.8 *
          degreeDaysByMean(
            days(fahrenheit((highest + lowest) / 2), 1),
            fahrenheit(base),
            what.startsWith('heating') ? 'heating' : 'cooling',
          ),
        tolerance: { absolute: 1e-9 },
        because: 'exact',
      });
    rule('heating degree-days of one day, 65 and 31 °F, base 50 °F', 65, 31, 50, 2);
    rule('cooling degree-days of one day, 95 and 51 °F, base 60 °F', 95, 51, 60, 13);
  });

  test('simple statements', () => {
    compare({
      topic: TOPIC,
      what: '18 °C inside, 8 °C outside, for a week',
      unit: 'K d',
      source: 'D. MacKay, Sustainable Energy, chapter E',
      mark: 'published',
      expected: 70,
      got: degreeDaysByMean(days(8, 7), 18),
      tolerance: { absolute: 1e-9 },
      because: 'exact',
    });
  });
});

describe('by highest and lowest', () => {
  const SOURCE = 'Irish meteorological service, "Degree days", met.ie: the four cases, worked out';

  test.each([
    [22, 16, 0, 3.5],
    [20, 12, 0.875, 1.375],
    [18, 10, 2.125, 0.625],
    [12, 4, 7.5, 0],
  ])('%d and %d °C, base 15.5 °C', (highest, lowest, heating, cooling) => {
    for (const [kind, expected] of [
      ['heating', heating],
      ['cooling', cooling],
    ] as const) {
      compare({
        topic: TOPIC,
        what: `${kind} degree-day of ${highest} and ${lowest} °C, base 15.5 °C`,
        unit: 'K d',
        source: SOURCE,
        mark: 'published arithmetic',
        expected,
        got: degreeDayByMaxMin(highest, lowest, 15.5, kind),
        tolerance: { absolute: 1e-9 },
        because: 'exact',
      });
    }
  });

  test('neighbouring cases meet: no step at the lowest, the mean or the highest', () => {
    const temperature = fc.double({ min: -30, max: 40, noNaN: true });
    const width = fc.double({ min: 0.01, max: 25, noNaN: true });
    fc.assert(
      fc.property(temperature, width, fc.constantFrom('heating', 'cooling'), (low, range, kind) => {
        for (const base of [low, low + range / 2, low + range]) {
          const below = degreeDayByMaxMin(low + range, low, base - 1e-9, kind);
          const above = degreeDayByMaxMin(low + range, low, base + 1e-9, kind);
          expect(Math.abs(above - below)).toBeLessThan(1e-8);
        }
      }),
    );
  });

  test('heating less cooling is base less mean, whatever the case', () => {
    const t = fc.double({ min: -30, max: 40, noNaN: true });
    fc.assert(
      fc.property(t, t, t, (a, b, base) => {
        const high = Math.max(a, b);
        const low = Math.min(a, b);
        const heating = degreeDayByMaxMin(high, low, base);
        const cooling = degreeDayByMaxMin(high, low, base, 'cooling');
        expect(heating - cooling).toBeCloseTo(base - (high + low) / 2, 9);
      }),
    );
  });

  test('adds up the days', () => {
    const two = { highest: Float64Array.of(18, 12), lowest: Float64Array.of(10, 4) };
    expect(degreeDaysByMaxMin(two, 15.5)).toBeCloseTo(2.125 + 7.5, 12);
  });

  test('refuses a highest below the lowest, and nonsense', () => {
    expect(() => degreeDayByMaxMin(4, 12, 15.5)).toThrow(
      'degreeDayByMaxMin: highest must be at least the lowest, got 4 and 12 °C, base 15.5 °C',
    );
    expect(() => degreeDayByMaxMin(Number.NaN, 12, 15.5)).toThrow(RangeError);
    expect(() => degreeDayByMaxMin(14, 12, Number.NaN)).toThrow(RangeError);
  });
});

describe('by the hour', () => {
  test('7.5 °C for 48 h, base 15.5 °C', () => {
    compare({
      topic: TOPIC,
      what: '7.5 °C for 48 h, base 15.5 °C, hour by hour',
      unit: 'K d',
      source: 'degree-day fact sheet, mojacarnet.com',
      mark: 'published',
      expected: 16,
      got: degreeDaysHourly(someWeather(new Array<number>(48).fill(7.5)), 15.5),
      tolerance: { absolute: 1e-9 },
      because: 'exact',
    });
  });

  test('a line through the base counts only its cold side', () => {
    // 10 to 20 °C in one hour, base 15: a triangle of 5 K over half an hour; then 20 °C is held.
    const weather = someWeather([10, 20]);
    expect(degreeDaysHourly(weather, 15)).toBeCloseTo((5 * 0.5 * 0.5) / 24, 12);
    expect(degreeDaysHourly(weather, 15, 'cooling')).toBeCloseTo((5 * 0.5 * 0.5 + 5) / 24, 12);
  });

  test('a sine about the base gives its amplitude over pi', () => {
    const sine = Array.from({ length: 240 }, (_, k) => 15 + 6 * Math.sin((2 * Math.PI * k) / 24));
    compare({
      topic: TOPIC,
      what: 'ten days of a 6 K sine about the base, hour by hour',
      unit: 'K d',
      source: 'amplitude over pi, times (h/2)/tan(h/2) for straight lines between hours of phase h',
      mark: 'closed form',
      expected: ((10 * 6) / Math.PI) * (Math.PI / 24 / Math.tan(Math.PI / 24)),
      got: degreeDaysHourly(someWeather(sine, { periodic: true }), 15),
      tolerance: { relative: 1e-12 },
      because: 'exact but for rounding',
    });
  });

  test('is at least that by daily means, by the inequality of Jensen', () => {
    const hourly = Array.from({ length: 24 * 30 }, (_, k) => 12 + 5 * Math.sin(k / 4) + (k % 7));
    const weather = someWeather(hourly, { periodic: true });
    const byMean = degreeDaysByMean(dailyTemperatures(weather), 15.5);
    expect(degreeDaysHourly(weather, 15.5)).toBeGreaterThanOrEqual(byMean);
  });
});

describe('by the mean of a month (Hitchin)', () => {
  const TABLE = {
    18.5: [488, 426, 390, 319, 235, 148, 88, 100, 162, 268, 359, 439],
    15.5: [395, 342, 297, 233, 151, 77, 42, 45, 83, 177, 275, 346],
    10: [226, 189, 134, 96, 39, 9, 4, 5, 10, 48, 124, 176],
  };
  const LENGTHS = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const SOURCE = '20-year average degree-days of the UK, vesma.com/ddd/std-year.htm';

  test.each([
    [15.5, 0.02],
    [10, 0.05],
  ] as const)('a year at base %d °C from the one at 18.5 °C', (base, relative) => {
    const predicted = TABLE[18.5].map((count, month) => {
      const length = LENGTHS[month]!;
      return hitchinDegreeDays(base, meanFor(count, length), length);
    });
    compare({
      topic: TOPIC,
      what: `UK degree-days of the year at base ${base} °C, carried over from 18.5 °C`,
      unit: 'K d',
      source: SOURCE,
      mark: 'published',
      expected: TABLE[base].reduce((a, b) => a + b),
      got: predicted.reduce((a, b) => a + b),
      tolerance: { relative },
      because: 'accuracy of the formula, whose constant is fitted to British stations',
    });
  });

  test.each([15.5, 10] as const)('January at base %d °C', (base) => {
    compare({
      topic: TOPIC,
      what: `UK degree-days of January at base ${base} °C, carried over from 18.5 °C`,
      unit: 'K d',
      source: SOURCE,
      mark: 'published',
      expected: TABLE[base][0]!,
      got: hitchinDegreeDays(base, meanFor(488, 31), 31),
      tolerance: { absolute: 1 },
      because: 'both printed to 1 K d',
    });
  });

  test('has the limit of its formula where mean and base meet, and no step there', () => {
    expect(hitchinDegreeDays(15.5, 15.5, 30)).toBeCloseTo(30 / 0.71, 9);
    const near = hitchinDegreeDays(15.5, 15.5 + 1e-7, 30);
    expect(near).toBeCloseTo(hitchinDegreeDays(15.5, 15.5 - 1e-7, 30), 4);
  });

  test('falls as the month gets warmer', () => {
    for (let t = -20; t < 40; t++) {
      expect(hitchinDegreeDays(15.5, t + 1, 30)).toBeLessThan(hitchinDegreeDays(15.5, t, 30));
    }
  });

  test('refuses nonsense in words', () => {
    expect(() => hitchinDegreeDays(15.5, Number.NaN, 30)).toThrow(
      'hitchinDegreeDays: base less mean must be between -200 and 200 K, got NaN K',
    );
    expect(() => hitchinDegreeDays(15.5, 5, 0)).toThrow(RangeError);
  });

  /** The mean at which the formula gives these degree-days at base 18.5 °C. */
  function meanFor(count: number, length: number): number {
    let low = -30;
    let high = 60;
    for (let k = 0; k < 100; k++) {
      const middle = (low + high) / 2;
      if (hitchinDegreeDays(18.5, middle, length) > count) low = middle;
      else high = middle;
    }
    return low;
  }
});

describe('dailyTemperatures', () => {
  test('cuts days at the midnight of the place and drops broken ones', () => {
    const hourly = Array.from({ length: 60 }, (_, k) => k);
    const east = dailyTemperatures(someWeather(hourly, { longitude: 31 })); // two hours ahead
    expect([...east.start]).toEqual([Date.UTC(2023, 0, 1, 22) / 1000]);
    expect([...east.lowest]).toEqual([22]);
    expect([...east.highest]).toEqual([45]);
    expect(east.mean[0]).toBeCloseTo(34, 12); // of the line from 22 to 46
  });

  test('a series that ends before its first midnight has no day', () => {
    const morning = { ...someWeather([3, 4, 5]), start: Date.UTC(2023, 0, 1, 10) / 1000 };
    expect(dailyTemperatures(morning).mean).toEqual(new Float64Array(0));
    expect(degreeDaysByMean(dailyTemperatures(morning), 15.5)).toBe(0);
  });

  test('a year that closes on itself loses no day', () => {
    const weather = someWeather(new Array<number>(8760).fill(5), { longitude: 8, periodic: true });
    expect(dailyTemperatures(weather).mean.length).toBe(365);
  });

  test('takes steps of any length', () => {
    for (const step of [300, 1800, 10_800]) {
      const perDay = 86_400 / step;
      const weather = someWeather(
        Array.from({ length: 2 * perDay }, (_, k) => (k < perDay ? 4 : 6)),
        { step },
      );
      expect(dailyTemperatures(weather).lowest).toEqual(Float64Array.of(4, 6));
    }
  });
});

/** Hourly normals of the station, one year from local midnight; the file begins an hour late. [°C] */
function seattleNormals(): number[] {
  const path = new URL(
    '../../../node_modules/vega-datasets/data/seattle-weather-hourly-normals.csv',
    import.meta.url,
  );
  const rows = readFileSync(path, 'utf8').trim().split('\n').slice(1);
  const hourly = rows.map((row) => Number(row.split(',')[2]));
  return [hourly[0]!, ...hourly];
}
