import { describe, expect, test } from 'vitest';
import { doorwayExchange } from '../../../src/physics/airflow/doorway-exchange.ts';
import { singleSidedAiring } from '../../../src/physics/airflow/single-sided-airing.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { ach, renewalTime } from '../../reference/physics/airflow/air-changes.ts';
import { combineUnbalanced } from '../../reference/physics/airflow/combine-unbalanced.ts';
import {
  singleSidedStackFlow,
  singleSidedWindFlow,
} from '../../reference/physics/airflow/single-sided-orifice.ts';

const TOPIC = 'Airing';
const NAN = Number.NaN;

describe('singleSidedAiring', () => {
  test.each([
    [1, 1.2, 0, 20, 551.9],
    [1, 1.2, 2, 20, 563.5],
    [1, 1.2, 1, 5, 322.0],
    [0.5, 1.0, 1, 15, 226.8],
  ])('%s m2, %s m high, %s m/s and %s K give %s m3/h', (area, height, wind, dT, expected) => {
    compare({
      topic: TOPIC,
      what: `window of ${area} m2, ${height} m high, ${wind} m/s, ${dT} K`,
      unit: 'm3/h',
      source: 'de Gids and Phaff 1982, computed independently',
      mark: 'closed form',
      expected,
      got: 3600 * singleSidedAiring(area, height, wind, dT),
      tolerance: { absolute: 0.05 },
      because: 'half the last digit printed',
    });
  });

  test('is the flow of the European standard, written otherwise', () => {
    for (const [area, height, wind, dT] of [
      [0.2, 0.4, 0, 0],
      [1.3, 1.4, 6, -17],
    ] as const) {
      compare({
        topic: TOPIC,
        what: `EN 16798-7 for ${area} m2, ${height} m high, ${wind} m/s, ${dT} K`,
        unit: 'm3/h',
        source: 'EN 16798-7:2017 (EN 15242:2007)',
        mark: 'from memory',
        expected:
          3.6 * 500 * area * Math.sqrt(0.01 + 0.001 * wind ** 2 + 0.0035 * height * Math.abs(dT)),
        got: 3600 * singleSidedAiring(area, height, wind, dT),
        tolerance: { relative: 1e-12 },
        because: 'an identity',
      });
    }
  });

  test('grows with everything, and turbulence alone still moves air', () => {
    const flow = singleSidedAiring(1, 1, 2, 10);
    expect(singleSidedAiring(1.1, 1, 2, 10)).toBeGreaterThan(flow);
    expect(singleSidedAiring(1, 1.1, 2, 10)).toBeGreaterThan(flow);
    expect(singleSidedAiring(1, 1, 2.1, 10)).toBeGreaterThan(flow);
    expect(singleSidedAiring(1, 1, 2, 10.1)).toBeGreaterThan(flow);
    expect(singleSidedAiring(1, 1, 2, -10)).toBe(flow);
    expect(singleSidedAiring(1, 1, 0, 0)).toBeCloseTo(0.05, 12);
    expect(singleSidedAiring(0, 1, 5, 10)).toBe(0);
  });

  test('gives no number without its arguments', () => {
    expect(singleSidedAiring(NAN, 1, 1, 1)).toBeNaN();
    expect(singleSidedAiring(1, NAN, 1, 1)).toBeNaN();
    expect(singleSidedAiring(1, 1, NAN, 1)).toBeNaN();
    expect(singleSidedAiring(1, 1, 1, NAN)).toBeNaN();
  });
});

describe('the orifice beside it', () => {
  test('warmth and wind each alone', () => {
    const source = 'Warren 1978 (CIBSE AM10), computed independently';
    compare({
      topic: TOPIC,
      what: 'orifice of 1.2 m2, 1.2 m high, 20 K around 283 K',
      unit: 'm3/s',
      source,
      mark: 'closed form',
      expected: 0.219,
      got: singleSidedStackFlow(1.2, 1.2, 20, 9.85),
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit printed',
    });
    compare({
      topic: TOPIC,
      what: 'orifice of 1.2 m2, wind of 2 m/s',
      unit: 'm3/s',
      source,
      mark: 'closed form',
      expected: 0.06,
      got: singleSidedWindFlow(1.2, 2),
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit printed',
    });
  });

  test('is warmth in an upright stream: four times the difference is twice the flow', () => {
    const flow = singleSidedStackFlow(1, 1.2, 5, 10);
    expect(singleSidedStackFlow(1, 1.2, 20, 10)).toBeCloseTo(2 * flow, 12);
    expect(singleSidedStackFlow(1, 1.2, -5, 10)).toBe(flow);
  });

  test.each([
    ['no temperature', () => singleSidedStackFlow(1, 1, NAN, 10)],
    ['kelvins', () => singleSidedStackFlow(1, 1, 10, 283)],
    ['no wind', () => singleSidedWindFlow(1, NAN)],
    ['negative wind', () => singleSidedWindFlow(1, -1)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});

describe('renewalTime', () => {
  const flow = (dT: number): number => singleSidedAiring(1.2, 1.2, 1, dT);

  test.each([
    [20, 8],
    [10, 11],
    [5, 14],
    [2, 18],
  ])('a room of 30 m3 is aired at %s K in %s min', (dT, minutes) => {
    compare({
      topic: TOPIC,
      what: `renewal of 95 % of 30 m3, window 1.0 x 1.2 m, 1 m/s, ${dT} K`,
      unit: 'min',
      source: 'de Gids and Phaff 1982, computed independently',
      mark: 'closed form',
      expected: minutes,
      got: renewalTime(30, flow(dT)) / 60,
      tolerance: { absolute: 0.5 },
      because: 'printed in whole minutes',
    });
  });

  test.each([
    [-5, 5],
    [5, 10],
    [15, 15],
  ])('at %s °C outside householders are told about %s min', (outside, minutes) => {
    compareBand({
      topic: TOPIC,
      what: `airing 30 m3 through 1.0 x 1.2 m, 1 m/s, 20 °C inside, ${outside} °C outside`,
      unit: 'min',
      source: 'German housing guidance: airing minutes by outdoor temperature',
      mark: 'published',
      low: minutes / 2,
      high: minutes * 2,
      got: renewalTime(30, flow(20 - outside)) / 60,
      because: 'the guidance names no room or window; a factor of two either way stands for that',
    });
  });

  test('95 % are three volumes, within 0.2 %', () => {
    expect(renewalTime(30, 0.1) / 300).toBeCloseTo(3, 2);
    expect(renewalTime(30, 0.1, 1 - Math.exp(-1))).toBeCloseTo(300, 9);
    expect(renewalTime(30, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(renewalTime(30, 0, 0)).toBe(0);
  });

  test('ach counts volumes', () => expect(ach(0.0125, 30)).toBeCloseTo(1.5, 12));

  test.each([
    ['all of the air', () => renewalTime(30, 0.1, 1)],
    ['no flow', () => renewalTime(30, NAN)],
    ['no volume', () => ach(0.1, 0)],
    ['a negative flow', () => ach(-0.1, 30)],
    ['no number', () => ach(NAN, 30)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});

describe('doorwayExchange', () => {
  test('a door between rooms 3 K apart', () => {
    const rows = [
      ['0.40 + 0.0045 dT', 0.0988, 0.00005, doorwayExchange(0.8, 2, 3, 19.85)],
      ['0.61', 0.146, 0.0005, (0.61 / 0.4135) * doorwayExchange(0.8, 2, 3, 19.85)],
    ] as const;
    for (const [coefficient, expected, absolute, got] of rows) {
      compare({
        topic: TOPIC,
        what: `doorway 0.8 x 2.0 m, 3 K around 293 K, coefficient ${coefficient}`,
        unit: 'm3/s',
        source: 'Brown and Solvason 1962, computed independently',
        mark: 'closed form',
        expected,
        got,
        tolerance: { absolute },
        because: 'half the last digit printed',
      });
    }
  });

  test('agrees with the handbook, which counts from the middle of the door', () => {
    // C A sqrt(2 g (H/2) dT/T) with A half the door is the same flow but for 2/3, which is the
    // mean of the speed from the middle (none) to the edge.
    const [width, height, dT, kelvin] = [0.9, 2.1, 4, 293.15];
    const edge = Math.sqrt((2 * 9.80665 * (height / 2) * dT) / kelvin);
    compare({
      topic: TOPIC,
      what: 'doorway 0.9 x 2.1 m, 4 K, speed averaged over half the door',
      unit: 'm3/s',
      source: 'ASHRAE Fundamentals (1997) p. 25.13 eqs. 37 and 38, as quoted on a web page',
      mark: 'published arithmetic',
      expected: ((0.4 + 0.0045 * dT) * ((width * height) / 2) * edge * 2) / 3,
      got: doorwayExchange(width, height, dT, kelvin - 273.15),
      tolerance: { relative: 1e-9 },
      because: 'an identity',
    });
  });

  test('needs a difference, and does not care which room is warmer', () => {
    expect(doorwayExchange(0.8, 2, 0, 20)).toBe(0);
    expect(doorwayExchange(0.8, 2, -3, 20)).toBe(doorwayExchange(0.8, 2, 3, 20));
    expect(doorwayExchange(0.8, 2, 4, 20)).toBeGreaterThan(doorwayExchange(0.8, 2, 3, 20));
  });

  test('gives no number without its arguments', () => {
    expect(doorwayExchange(NAN, 2, 3, 20)).toBeNaN();
    expect(doorwayExchange(0.8, NAN, 3, 20)).toBeNaN();
    expect(doorwayExchange(0.8, 2, NAN, 20)).toBeNaN();
    expect(doorwayExchange(0.8, 2, 3, NAN)).toBeNaN();
  });
});

describe('combineUnbalanced', () => {
  test('balanced fans add, others combine in quadrature', () => {
    expect(combineUnbalanced(0.03, 0, 0)).toBe(0.03);
    expect(combineUnbalanced(0.03, 0.02, 0)).toBeCloseTo(0.05, 12);
    expect(combineUnbalanced(0.03, 0, 0.04)).toBeCloseTo(0.05, 12);
    expect(combineUnbalanced(0.03, 0.02, 0.04)).toBeCloseTo(0.07, 12);
  });

  test('is never less than the fan and never more than all together', () => {
    for (const natural of [0, 0.01, 0.2]) {
      for (const fan of [0, 0.02, 0.1]) {
        const flow = combineUnbalanced(natural, 0.01, fan);
        expect(flow).toBeGreaterThanOrEqual(0.01 + Math.max(fan, natural));
        expect(flow).toBeLessThanOrEqual(0.01 + fan + natural + 1e-12);
      }
    }
  });

  test.each([
    [NAN, 0, 0],
    [0, NAN, 0],
    [0, 0, NAN],
    [-1, 0, 0],
  ])('refuses %s, %s, %s', (natural, balanced, unbalanced) => {
    expect(() => combineUnbalanced(natural, balanced, unbalanced)).toThrow(RangeError);
  });
});
