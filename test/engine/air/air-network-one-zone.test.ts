import { describe, expect, test } from 'vitest';
import { compare, compareBand } from '../../reference/compare.ts';
import { flowOf, leftIn, solved } from './a-network.ts';
import { type airIn, holesOf, lawsOf, NORMAL, pressureByBisection, waysOf } from './one-zone.ts';

const TOPIC = 'Air by pressures';
const HOUSE = '250 m3, 8 /h at 50 Pa, normal shelter';

/** Pressure of the house [Pa] and outdoor air [m3/h] as the network finds them. */
function networkOf(weather: Parameters<typeof airIn>[1], holes = NORMAL) {
  const inside = pressureByBisection(holes, weather);
  const given = [-(weather.fan ?? 0) / 3600];
  const ways = waysOf(holes, weather, inside);
  const net = solved(ways, [20], 20 - weather.warmer, { given, passing: 1 });
  expect(Math.abs(leftIn(net, 0))).toBeLessThan(1e-15);
  const into = holes.reduce((sum, _, p) => sum + Math.max(0, flowOf(net, p)), 0);
  return { pressure: net.pressure[0]!, air: 3600 * into };
}

test('a house balances under wind and warmth', () => {
  const rows = [
    [0, 20, -2.94193, 77.9432],
    [3, 0, -1.55789, 105.0873],
    [3, 20, -4.27448, 130.1912],
    [5, 20, -7.46, 228.2107],
  ] as const;
  for (const [wind, warmer, pressure, air] of rows) {
    const got = networkOf({ wind, warmer });
    const shared = {
      topic: TOPIC,
      source: 'five power laws balanced by bisection elsewhere',
      mark: 'closed form',
      tolerance: { relative: 4e-4 },
      because: 'worked out with 9.81 m/s2 and a gas constant that differs in its fifth digit',
    } as const;
    const what = `${HOUSE}, ${wind} m/s and ${warmer} K`;
    compare({
      ...shared,
      what: `${what}: pressure at the floor`,
      unit: 'Pa',
      expected: pressure,
      got: got.pressure,
    });
    compare({ ...shared, what: `${what}: outdoor air`, unit: 'm3/h', expected: air, got: got.air });
  }
});

test('shelter tells as it should', () => {
  for (const [name, holes, expected] of [
    ['open', holesOf(0.5, -0.7, -0.6), 158.6578],
    ['shielded', holesOf(0.05, -0.3, -0.4), 110.6676],
  ] as const) {
    compare({
      topic: TOPIC,
      what: `that house, ${name}, 3 m/s and 20 K: outdoor air`,
      unit: 'm3/h',
      source: 'five power laws balanced by bisection elsewhere',
      mark: 'closed form',
      expected,
      got: networkOf({ wind: 3, warmer: 20 }, holes).air,
      tolerance: { relative: 4e-4 },
      because: 'worked out with 9.81 m/s2 and a gas constant that differs in its fifth digit',
    });
  }
});

test('a twentieth of the blower-door figure lies within what shelter makes of it', () => {
  // n50/20 is a rule of thumb (common practice) for an average of houses and weathers.
  const rule = 8 / 20; // 1/h
  expect(networkOf({ wind: 0, warmer: 20 }).air / 250).toBeLessThan(rule);
  expect(networkOf({ wind: 5, warmer: 20 }).air / 250).toBeGreaterThan(rule);
});

describe('an extract fan in a leaky house, 3 m/s and 20 K', () => {
  const natural = networkOf({ wind: 3, warmer: 20 }).air;
  // Fan, air that comes in, error of quadrature, half-fan rule; in m3/h.
  const rows = [
    [20, 141.54, -0.069, 140.19],
    [50, 157.37, -0.114, 155.19],
    [108, 184.57, -0.083, 184.19],
    [200, 232.09, 0.028, 230.19],
    [400, 400, 0.052, 400],
  ] as const;

  test('brings what root finding says', () => {
    for (const [fan, expected] of rows) {
      compare({
        topic: TOPIC,
        what: `${HOUSE}, with a fan of ${fan} m3/h: outdoor air`,
        unit: 'm3/h',
        source: 'power laws and the fan balanced by bisection elsewhere',
        mark: 'closed form',
        expected,
        got: networkOf({ wind: 3, warmer: 20, fan }).air,
        tolerance: { relative: 4e-4 },
        because: 'worked out with 9.81 m/s2 and a gas constant that differs in its fifth digit',
      });
    }
  });

  test('is off quadrature both ways, and near the half-fan rule', () => {
    // A weak fan takes half of its air from what would have left anyway; quadrature lets it take nearly
    // all from there. A strong one stops all outflow, and quadrature still counts some.
    for (const [fan, , off, rule] of rows) {
      const exact = networkOf({ wind: 3, warmer: 20, fan }).air;
      expect(Math.hypot(natural, fan) / exact - 1).toBeCloseTo(off, 3);
      const half = fan < 2 * natural ? natural + fan / 2 : fan;
      expect(half).toBeCloseTo(rule, 0);
      expect(Math.abs(half / exact - 1)).toBeLessThan(0.02);
    }
  });
});

describe('quadratic laws in place of the power law', () => {
  // Air that comes in, in m3/h, by the power law, as above.
  const rows = [
    [0, 20, 77.9432],
    [3, 0, 105.0873],
    [3, 20, 130.1912],
    [5, 20, 228.2107],
  ] as const;
  test.each([
    // What each law differs by from 0.5 to 10 Pa, exponent 0.667, in per cent.
    [4, 50, -33.3, 5.6],
    [1, 10, -8.4, 4.6],
  ])('matched at %s and %s Pa', (low, high, least, most) => {
    for (const [wind, warmer, exact] of rows) {
      const ways = lawsOf(NORMAL, { wind, warmer }, low, high);
      const net = solved(ways, [20], 20 - warmer, { passing: 1 });
      const into = ways.reduce((sum, _, p) => sum + Math.max(0, flowOf(net, p)), 0);
      compareBand({
        ...{ topic: TOPIC, unit: '%', source: 'five power laws balanced by bisection elsewhere' },
        what: `${HOUSE}, ${wind} m/s and ${warmer} K, laws matched at ${low} and ${high} Pa: error`,
        ...{ mark: 'closed form', low: least, high: most, got: 100 * ((3600 * into) / exact - 1) },
        because: 'each crack is off by no more, between 0.5 and 10 Pa',
      });
    }
  });
});
