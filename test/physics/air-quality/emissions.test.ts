import { describe, expect, test } from 'vitest';
import { decayingSource } from '../../../src/physics/air-quality/decaying-source.ts';
import { ACTIVITIES } from '../../../src/scenario/presets/activities.ts';
import { PAINT_PARTS } from '../../../src/scenario/presets/air.ts';
import { FINE_PARTICLES } from '../../../src/species/fine-particles.ts';
import { ORGANIC_VAPOURS } from '../../../src/species/organic-vapours.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { steadyConcentration } from '../../reference/physics/air-quality/concentration.ts';
import { cleanAirOfFilter } from '../../reference/physics/air-quality/purifier.ts';

const TOPIC = 'Air quality';
const NAN = Number.NaN;
const DAY = 86_400;

describe('what sources give', () => {
  const LIST = 'list of 19 activities, Indoor Air 2023, article 8857446, table 1';
  const particles = FINE_PARTICLES.sources.activity.usual;
  test.each([
    ['candles', 0.04, 0.91, '0.04 plain, 0.91 with oil in it'],
    ['light meal', 0.033, 0.33, 'toast, one figure, 0.11; a factor of three'],
    ['cooking', 0.11, 1.33, '0.11 electric, 1.33 with burning'],
  ] as const)('fine particles of %s', (what, low, high, because) => {
    const minutes = ACTIVITIES[what].lasts.value;
    compareBand({
      topic: TOPIC,
      what: `usual fine particles of ${what}`,
      unit: 'mg/min',
      source: LIST,
      mark: 'published',
      low,
      high,
      got: particles[what].value / minutes,
      because,
    });
    expect(Math.abs(particles[what].low / minutes / low - 1)).toBeLessThan(0.1);
    expect(Math.abs(particles[what].high / minutes / high - 1)).toBeLessThan(0.1);
  });

  test('vapours of a person', () => {
    compare({
      topic: TOPIC,
      what: 'volatile organic compounds of a person, whole body',
      unit: 'µg/h',
      source: 'He, Zou and Yang 2019, doi 10.1016/j.buildenv.2019.02.031, 14 people',
      mark: 'published',
      expected: 742.8,
      got: ORGANIC_VAPOURS.sources.body.awake.value,
      tolerance: { absolute: 0.5 },
      because: 'ours is in whole micrograms; people differ by 465 either way',
    });
  });

  test('an hour after cleaning a room of 50 m3', () => {
    const passed = -Math.expm1(-0.5) / 0.5; // mean over an hour of what was there at once
    const band = (mass: number): number => ((1000 * mass) / 50) * passed;
    const { cleaning } = ORGANIC_VAPOURS.sources.activity.usual;
    compareBand({
      topic: TOPIC,
      what: 'hour after cleaning, 50 m3, 0.5 1/h, usual figure',
      unit: 'µg/m3',
      source: 'Singer and others, Indoor Air 16(3), 2006: undiluted cleaners but pine oil',
      mark: 'published',
      low: 300,
      high: 6000,
      got: band(cleaning.value),
      because: 'the lowest and the highest of the products; our range was worked back from them',
    });
    expect(band(cleaning.high)).toBeCloseTo(6000, -2);
  });

  test('days with a stove beside days without', () => {
    const puffs = 5 * 1000 * FINE_PARTICLES.sources.refuelling.usual.value;
    const room = { outdoor: 0, source: puffs / DAY, flow: 40 / 3600, volume: 40 };
    compareBand({
      topic: TOPIC,
      what: 'fine particles a stove adds to the mean of a day, 40 m3, 1 1/h, five refuellings',
      unit: 'µg/m3',
      source:
        "Chakraborty and others 2020, Atmosphere 11(12) 1326: 12.21 with, 196.23 % above days without, 4.12 (authors' summary, spark.adobe.com/page/IXMsfspVKUP3e)",
      mark: 'published',
      low: 8.09 / 2,
      high: 8.09 * 2,
      got: steadyConcentration(room),
      because: 'our figure was worked back from this one; rooms and numbers of logs were not given',
    });
  });
});

describe('decayingSource', () => {
  test('gives the whole amount, in whatever steps', () => {
    for (const step of [600, 7777, DAY]) {
      let sum = 0;
      for (let t = 0; t < 40 * DAY; t += step) sum += decayingSource(8e6, DAY, t, t + step) * step;
      expect(sum / 8e6).toBeCloseTo(1, 12);
    }
  });

  test('halves in 0.69 time constants', () => {
    compare({
      topic: TOPIC,
      what: 'half-life of a drying source of one day',
      unit: 'd',
      source: 'first-order decay',
      mark: 'closed form',
      expected: 0.5,
      got: decayingSource(1, DAY, 0, Math.LN2 * DAY) * Math.LN2 * DAY,
      tolerance: { relative: 1e-12 },
      because: 'an identity',
    });
  });

  test.each([
    [PAINT_PARTS[0], 3, 4, 'steel: emissions short lived, 3 to 4 days'],
    [PAINT_PARTS[1], 200, 260, 'plasterboard: emissions lasted over 200 days'],
  ])('paint is 95 %% gone when the tests saw it gone ($2 days)', (part, low, high, because) => {
    compareBand({
      topic: TOPIC,
      what: `time until 95 % of a part of a paint's vapours are out, ${low} days or more`,
      unit: 'd',
      source: 'Sparks and others, Indoor Air 9(1), 1999',
      mark: 'published',
      low,
      high,
      got: part.days * Math.log(20),
      because: `${because}; "gone" is taken as 95 %, which the paper does not say`,
    });
  });

  test('gives nothing before it is applied, and less each day', () => {
    expect(decayingSource(1e6, DAY, -600, 0)).toBe(0);
    expect(decayingSource(1e6, DAY, -600, 600)).toBeCloseTo(
      decayingSource(1e6, DAY, 0, 600) / 2,
      9,
    );
    for (let t = 0; t < 5; t++) {
      expect(decayingSource(1e6, DAY, (t + 1) * DAY, (t + 2) * DAY)).toBeLessThan(
        decayingSource(1e6, DAY, t * DAY, (t + 1) * DAY),
      );
    }
  });

  test.each([
    ['no amount', () => decayingSource(NAN, DAY, 0, 1)],
    ['a negative amount', () => decayingSource(-1, DAY, 0, 1)],
    ['no time constant', () => decayingSource(1, 0, 0, 1)],
    ['no beginning', () => decayingSource(1, DAY, NAN, 1)],
    ['no end', () => decayingSource(1, DAY, 0, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));

  test('refuses a while that ends before it begins, in words', () => {
    expect(() => decayingSource(1, DAY, 60, 0)).toThrow(
      'decayingSource: a while must end after it begins, got 60 to 0 s',
    );
    expect(() => decayingSource(1, DAY, 60, 60)).toThrow('got 60 to 60 s');
  });
});

describe('cleanAirOfFilter', () => {
  test('is the flow of a perfect filter, and none for what passes', () => {
    expect(cleanAirOfFilter(0.08, 1)).toBe(0.08);
    expect(cleanAirOfFilter(0.08, 0)).toBe(0);
    expect(cleanAirOfFilter(0.16, 0.5)).toBe(0.08);
    for (const caught of [NAN, -0.1, 99]) {
      expect(() => cleanAirOfFilter(0.08, caught)).toThrow(RangeError);
    }
    expect(() => cleanAirOfFilter(NAN, 1)).toThrow(RangeError);
  });

  test.each([
    [600, 1019],
    [850, 1444],
  ])('%s cubic feet a minute are %s m3/h', (feet, expected) => {
    compare({
      topic: TOPIC,
      what: `clean air of a home-made filter box, ${feet} ft3/min`,
      unit: 'm3/h',
      source: 'reported in both units on a web page',
      mark: 'published arithmetic',
      expected,
      got: cleanAirOfFilter((feet * 0.3048 ** 3) / 60, 1) * 3600,
      tolerance: { absolute: 0.5 },
      because: 'printed in whole cubic metres',
    });
  });
});
