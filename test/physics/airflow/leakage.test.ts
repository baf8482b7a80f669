import { describe, expect, test } from 'vitest';
import { leakageAreaFromAch50 } from '../../../src/physics/airflow/blower-door.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { ach } from '../../reference/physics/airflow/air-changes.ts';
import { infiltrationByAch50Over20 } from '../../reference/physics/airflow/infiltration-by-rule.ts';
import { leakageCoefficients } from '../../reference/physics/airflow/leakage-coefficients.ts';
import { leakageFlow } from '../../reference/physics/airflow/leakage-flow.ts';
import {
  stackCoefficient,
  stackFactor,
  windFactor,
} from '../../reference/physics/airflow/sherman-grimsrud.ts';

const TOPIC = 'Infiltration';
const BASIC = 'ASHRAE Fundamentals ch. 16, basic model';

describe('leakageFlow', () => {
  const house = { area: 0.05, ...leakageCoefficients(2, 3) };

  test('the handbook works out a house in Nebraska', () => {
    const flow = leakageFlow(house, 39, 6.7);
    compare({
      topic: TOPIC,
      what: 'leakage of a two-storey house, 39 K and 6.7 m/s',
      unit: 'm3/s',
      source: `${BASIC}, worked example`,
      mark: 'from memory',
      expected: 0.0736,
      got: flow,
      tolerance: { relative: 0.01 },
      because: 'computed there in feet and from rounded conversions',
    });
    compare({
      topic: TOPIC,
      what: 'air changes of that house (340 m3)',
      unit: '1/h',
      source: `${BASIC}, worked example`,
      mark: 'from memory',
      expected: 0.78,
      got: ach(flow, 340),
      tolerance: { relative: 0.01 },
      because: 'computed there in feet and from rounded conversions',
    });
  });

  test('has nothing to drive it in still air of one temperature', () => {
    expect(leakageFlow(house, 0, 0)).toBe(0);
  });

  test('is the same whichever side is warmer, and grows with warmth, wind and hole', () => {
    expect(leakageFlow(house, -12, 3)).toBe(leakageFlow(house, 12, 3));
    expect(leakageFlow(house, 13, 3)).toBeGreaterThan(leakageFlow(house, 12, 3));
    expect(leakageFlow(house, 12, 4)).toBeGreaterThan(leakageFlow(house, 12, 3));
    const twice = leakageFlow({ ...house, area: 0.1 }, 12, 3);
    expect(twice).toBeCloseTo(2 * leakageFlow(house, 12, 3), 12);
  });

  test('adds warmth and wind in quadrature', () => {
    const together = leakageFlow(house, 20, 5);
    expect(Math.hypot(leakageFlow(house, 20, 0), leakageFlow(house, 0, 5))).toBeCloseTo(
      together,
      12,
    );
  });

  test.each([
    ['no temperature', () => leakageFlow(house, Number.NaN, 1)],
    ['no wind', () => leakageFlow(house, 1, Number.NaN)],
    ['wind from behind zero', () => leakageFlow(house, 1, -1)],
    ['no area', () => leakageFlow({ ...house, area: Number.NaN }, 1, 1)],
    ['coefficients in litres', () => leakageFlow({ ...house, stack: 145 }, 1, 1)],
    ['no coefficient', () => leakageFlow({ ...house, wind: Number.NaN }, 1, 1)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});

describe('leakageCoefficients', () => {
  // The same tables in inch-pound units, cfm2/(in4 °F) and cfm2/(in4 mph2), come from elsewhere in
  // the handbook; one cfm a square inch is 0.07315 L/s a square centimetre.
  const CFM = (0.471947 / 6.4516) ** 2;
  test.each([
    [1, 0.015],
    [2, 0.0299],
    [3, 0.0449],
  ])('%s storeys have the stack coefficient of the inch-pound table', (storeys, inchPound) => {
    compare({
      topic: TOPIC,
      what: `stack coefficient, ${storeys} storeys, beside the inch-pound table`,
      unit: '(L/s)2/(cm4 K)',
      source: `${BASIC}, inch-pound edition`,
      mark: 'from memory',
      expected: inchPound * CFM * 1.8,
      got: leakageCoefficients(storeys, 3).stack,
      tolerance: { relative: 0.007 },
      because: 'three digits in each of two tables',
    });
  });

  test.each([
    [1, [0.0119, 0.0157, 0.0184]],
    [2, [0.0092, 0.0121, 0.0143]],
    [3, [0.0065, 0.0086, 0.0101]],
    [4, [0.0039, 0.0051, 0.006]],
    [5, [0.0012, 0.0016, 0.0018]],
  ])('shelter class %s has the wind coefficients of the inch-pound table', (shelter, row) => {
    row.forEach((inchPound, i) => {
      compare({
        topic: TOPIC,
        what: `wind coefficient, class ${shelter}, ${i + 1} storeys, beside the inch-pound table`,
        unit: '(L/s)2/(cm4 (m/s)2)',
        source: `${BASIC}, inch-pound edition`,
        mark: 'from memory',
        expected: (inchPound * CFM) / 0.44704 ** 2,
        got: leakageCoefficients(i + 1, shelter).wind,
        tolerance: { absolute: 0.5e-4 * (CFM / 0.44704 ** 2) + 0.5e-6 },
        because: 'half the last digit of each of the two tables',
      });
    });
  });

  test('runs straight between whole storeys', () => {
    const [one, half, two] = [1, 1.5, 2].map((s) => leakageCoefficients(s, 4));
    expect(half?.stack).toBeCloseTo(((one?.stack ?? 0) + (two?.stack ?? 0)) / 2, 12);
    expect(half?.wind).toBeCloseTo(((one?.wind ?? 0) + (two?.wind ?? 0)) / 2, 12);
  });

  test('more storeys catch more, more shelter less', () => {
    for (let shelter = 1; shelter <= 5; shelter++) {
      expect(leakageCoefficients(3, shelter).wind).toBeGreaterThan(
        leakageCoefficients(2, shelter).wind,
      );
      if (shelter < 5) {
        expect(leakageCoefficients(2, shelter + 1).wind).toBeLessThan(
          leakageCoefficients(2, shelter).wind,
        );
      }
    }
  });

  test('refuses other classes and heights in words', () => {
    for (const shelter of [0, 6, 2.5, Number.NaN]) {
      expect(() => leakageCoefficients(2, shelter)).toThrow(
        `leakageCoefficients: shelter class must be 1, 2, 3, 4 or 5, got ${shelter}`,
      );
    }
    for (const storeys of [0, 4, Number.NaN]) {
      expect(() => leakageCoefficients(storeys, 3)).toThrow(
        `leakageCoefficients: storeys must be between 1 and 3, got ${storeys}`,
      );
    }
  });
});

describe('blower door', () => {
  test('ach50 of 5 stands for 0.25 air changes', () => {
    compare({
      topic: TOPIC,
      what: 'mean infiltration of a home of ach50 5 by the rule of a twentieth',
      unit: '1/h',
      source: 'A. Meier, Home Energy, Jan./Feb. 1994',
      mark: 'published',
      expected: 0.25,
      got: infiltrationByAch50Over20(5),
      tolerance: { absolute: 1e-12 },
      because: 'a division',
    });
  });

  test('the leakage model divides ach50 by what has been found to divide it', () => {
    for (const [storeys, shelter] of [
      [1, 3],
      [2, 3],
      [2, 4],
      [3, 3],
    ] as const) {
      const leakage = {
        area: leakageAreaFromAch50(10, 250),
        ...leakageCoefficients(storeys, shelter),
      };
      compareBand({
        topic: TOPIC,
        what: `ach50 over infiltration, ${storeys} storeys, shelter class ${shelter}, 12 K and 4 m/s`,
        unit: '-',
        source: 'web pages that quote the Lawrence Berkeley correction of the rule',
        mark: 'published',
        low: 10,
        high: 30,
        got: 10 / ach(leakageFlow(leakage, 12, 4), 250),
        because: 'the range of divisors over climates and heights; ordinary winter weather here',
      });
    }
  });

  test('the area leaks at 4 Pa what the exponent says', () => {
    const area = leakageAreaFromAch50(7, 250);
    const flow = area * Math.sqrt((2 * 4) / 1.2041);
    expect(ach(flow, 250)).toBeCloseTo(7 * (4 / 50) ** 0.65, 10);
  });

  test.each([
    ['a negative result', () => leakageAreaFromAch50(-1, 250)],
    ['no result', () => leakageAreaFromAch50(Number.NaN, 250)],
    ['no volume', () => leakageAreaFromAch50(5, 0)],
    ['no ach50', () => infiltrationByAch50Over20(Number.NaN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});

describe('Sherman and Grimsrud', () => {
  test('the stack factor of evenly spread leaks is 0.4167 and makes the one-storey coefficient', () => {
    const factor = stackFactor(0.5, 0);
    compare({
      topic: TOPIC,
      what: 'stack factor, half the leaks in floor and ceiling, evenly',
      unit: '-',
      source: 'Sherman and Grimsrud 1980',
      mark: 'closed form',
      expected: 0.4167,
      got: factor,
      tolerance: { absolute: 5e-5 },
      because: 'half the last digit printed',
    });
    compare({
      topic: TOPIC,
      what: 'one-storey stack coefficient from its factor, 2.5 m',
      unit: '(L/s)2/(cm4 K)',
      source: BASIC,
      mark: 'from memory',
      expected: leakageCoefficients(1, 3).stack,
      got: stackCoefficient(factor, 2.5, 21.85),
      tolerance: { relative: 0.01 },
      because: 'three digits, and a height that the table does not say',
    });
  });

  test('leaks at one height only make the least of warmth', () => {
    expect(stackFactor(0.5, 0)).toBeGreaterThan(stackFactor(0.5, 0.3));
    expect(stackFactor(0.5, 0.3)).toBe(stackFactor(0.5, -0.3));
    expect(stackFactor(1, 1)).toBe(0);
  });

  test('twice the height raises the wind coefficient by the power law of the terrain', () => {
    const [low, high] = [3, 6].map((height) => windFactor(3, 0.5, { height, terrain: 3 }));
    expect(((high ?? 0) / (low ?? 1)) ** 2).toBeCloseTo(2 ** (2 * 0.2), 10);
  });

  test('a weather station beside the home leaves only shielding', () => {
    const stand = { height: 6, terrain: 4 };
    expect(windFactor(2, 0, stand, stand)).toBeCloseTo(0.285, 12);
  });

  test.each([
    ['an imbalance beyond the leaks', () => stackFactor(0.2, 0.3)],
    ['no share', () => stackFactor(Number.NaN, 0)],
    ['no height', () => stackCoefficient(0.4, Number.NaN, 20)],
    ['a sixth shielding', () => windFactor(6, 0.5, { height: 3, terrain: 3 })],
    ['a sixth terrain', () => windFactor(3, 0.5, { height: 3, terrain: 6 })],
    ['no height in the wind', () => windFactor(3, 0.5, { height: Number.NaN, terrain: 3 })],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});
