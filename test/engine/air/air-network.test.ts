import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setDrives } from '../../../src/engine/air/air-drives.ts';
import { solvePressures } from '../../../src/engine/air/air-network.ts';
import { type AirNetwork, layOutAirNetwork } from '../../../src/engine/air/lay-out-air-network.ts';
import type { PathPlan } from '../../../src/engine/air/path-plan.ts';
import { LINK, PATH, PRESSURE_COUNT } from '../../../src/engine/layout/state-layout.ts';
import { randomNumbers } from '../random-home.ts';
import { densityAt, flowOf, hole, leftIn, solved, touching, type Way } from './a-network.ts';

/** Rooms joined at random, by doors wide open or shut, with cracks, windows and wind. */
function drawn(rooms: number, seed: number): { ways: Way[]; warmth: number[]; given: number[] } {
  const random = randomNumbers(seed);
  const ways: Way[] = [];
  for (let to = 0; to < rooms; to++) {
    if (to > 0) {
      const from = Math.floor(random() * to);
      ways.push({ to, from, height: 6 * random(), law: hole(random() < 0.5 ? 0.01 : 1.6) });
    }
    if (to > 0 && random() < 0.3) continue;
    const law = touching(0.003 * random() + 1e-4, 0.65, 2, 1.2);
    ways.push({ to, height: 6 * random(), wind: 20 * random() - 10, law });
    if (random() < 0.3) ways.push({ to, height: 2, wind: 20 * random() - 10, law: hole(0.5) });
  }
  const last = rooms - 1;
  if (rooms > 2) ways.push({ to: 0, from: last, height: 2, law: hole(1) });
  const warmth = Array.from({ length: rooms }, () => 10 + 15 * random());
  const given = warmth.map(() => (random() < 0.3 ? 0.1 * random() - 0.05 : 0));
  return { ways, warmth, given };
}

/** Greatest pressure by which the flow of a path misses its own law, over that across it or a pascal. [-] */
function greatestMiss(net: AirNetwork): number {
  let worst = 0;
  for (let p = 0; p < net.pathCount; p++) {
    const at = p * PATH.stride;
    const to = net.links[p * LINK.stride + LINK.to]!;
    const from = net.links[p * LINK.stride + LINK.from]!;
    const flow = flowOf(net, p);
    const lightness = net.lightness[flow < 0 ? to : from < 0 ? net.roomCount : from]!;
    const [a, b] = [net.paths[at + PATH.friction]!, net.paths[at + PATH.inertia]!];
    const dp =
      net.paths[at + PATH.drive]! + (from < 0 ? 0 : net.pressure[from]!) - net.pressure[to]!;
    const needed = (a + b * Math.abs(flow)) * lightness * flow;
    worst = Math.max(worst, Math.abs(needed - dp) / Math.max(1, Math.abs(dp)));
  }
  return worst;
}

test('every room balances and every path follows its law, whatever the home', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 1e6 }), (rooms, seed) => {
      const { ways, warmth, given } = drawn(rooms, seed);
      const net = solved(ways, warmth, 5, { given, tolerance: 1e-9 });
      expect(net.counts[PRESSURE_COUNT.error]).toBeLessThanOrEqual(1e-9);
      // An error of 1e-9 allows 1e-8 Pa; as much again for rounding.
      expect(greatestMiss(net)).toBeLessThan(2e-8);
      const through = ways.reduce((sum, _, p) => sum + Math.abs(flowOf(net, p)), 0);
      for (let room = 0; room < rooms; room++) {
        expect(Math.abs(leftIn(net, room))).toBeLessThanOrEqual(1e-14 * through);
      }
    }),
    { numRuns: 200, seed: 5 },
  );
});

test('a step like the one before needs one system, and the next gust few', () => {
  const { ways, warmth, given } = drawn(7, 11);
  const net = solved(ways, warmth, 5, { given, tolerance: 1e-3 });
  const cold = net.counts[PRESSURE_COUNT.solved]!;
  expect(cold).toBeGreaterThan(1);
  solvePressures(net);
  expect(net.counts[PRESSURE_COUNT.solved]).toBe(cold + 1);
  for (let p = 0; p < net.pathCount; p++) net.paths[p * PATH.stride + PATH.drive]! *= 1.05;
  solvePressures(net);
  expect(net.counts[PRESSURE_COUNT.solved]! - cold - 1).toBeLessThanOrEqual(2);
  expect(net.counts[PRESSURE_COUNT.steps]).toBe(3);
});

describe('holes through a room', () => {
  const rho = densityAt(20);
  const blown = (first: number, second: number): number => {
    const net = solved(
      [
        { to: 0, wind: 10, law: hole(first) },
        { to: 0, law: hole(second) },
      ],
      [20],
      20,
    );
    return flowOf(net, 0) / rho;
  };

  test('in a row pass what one of 0.00894 m2 passes', () => {
    // 0.02 and 0.01 m2, 10 Pa: 0.6 x 0.00894427 x sqrt(20/rho), by hand; holes are straight near zero.
    const expected = 0.6 * 0.00894427 * Math.sqrt(20 / rho);
    expect(Math.abs(blown(0.02, 0.01) / expected - 1)).toBeLessThan(1e-3);
  });

  test('side by side add', () => {
    const net = solved(
      [
        { to: 0, wind: 10, law: hole(0.02) },
        { to: 0, wind: 10, law: hole(0.01) },
        { to: 0, law: hole(0.03) },
      ],
      [20],
      20,
    );
    expect(flowOf(net, 0) + flowOf(net, 1)).toBeCloseTo(-flowOf(net, 2), 12);
    expect(flowOf(net, 0) / flowOf(net, 1)).toBeCloseTo(2, 9);
    expect(-flowOf(net, 2) / rho).toBeCloseTo(blown(0.03, 0.03), 9);
  });
});

describe('what nobody joins to outdoors', () => {
  const law = { friction: 1, inertia: 1, height: 0 };
  const window: PathPlan = { to: 0, from: -1, ...law, side: 0, always: false };
  const door: PathPlan = {
    to: 2,
    from: 1,
    ...law,
    side: -1,
    always: true,
  };

  test('finds the air of its fan through a seam', () => {
    const net = layOutAirNetwork(3, [door], 0);
    net.given.set([0, -0.003, 0.001]);
    solvePressures(net);
    // A seam for room 0, and one for the rooms 1 and 2 together: they take in 2 g/s, and room 0 nothing.
    expect(net.pathCount).toBe(3);
    expect([1, 2].map((p) => flowOf(net, p))).toEqual([0, 0.002]);
    expect(flowOf(net, 0)).toBe(-0.001);
    expect(net.pressure[1]).toBeLessThan(0);
    expect(net.pressure[0]).toBe(0);
  });

  test('may have a window, and rests when it is shut', () => {
    const net = layOutAirNetwork(1, [window], 1);
    net.sides[0] = 5;
    setDrives(net);
    solvePressures(net);
    expect(flowOf(net, 0)).toBe(0);
    net.paths[PATH.open] = 1;
    solvePressures(net);
    // All that comes in by the window leaves by the seam of a square centimetre, which the wind spares:
    // 1e-4 x 0.6 x sqrt(2 x 5 x 1.204) kg/s, by hand.
    expect(flowOf(net, 0)).toBeCloseTo(2.08e-4, 6);
    expect(leftIn(net, 0)).toBe(0);
    net.paths[PATH.open] = 0;
    solvePressures(net);
    expect(flowOf(net, 0)).toBe(0);
    expect(net.pressure[0]).toBe(0);
  });
});

test('nothing moves without wind and warmth', () => {
  const { ways } = drawn(6, 3);
  const still = ways.map((way) => ({ ...way, wind: 0 }));
  const net = solved(still, [18, 18, 18, 18, 18, 18], 18);
  for (let p = 0; p < net.pathCount; p++) expect(flowOf(net, p)).toBeCloseTo(0, 15);
  expect(net.counts[PRESSURE_COUNT.solved]).toBe(1);
});

test('parts of a home that nothing joins do not know each other', () => {
  const [one, other] = [drawn(4, 5), drawn(5, 6)];
  const moved = other.ways.map((way) => ({
    ...way,
    to: way.to + 4,
    ...(way.from === undefined ? {} : { from: way.from + 4 }),
  }));
  const warmth = [...one.warmth, ...other.warmth];
  const given = [...one.given, ...other.given];
  const both = solved([...one.ways, ...moved], warmth, 5, { given, tolerance: 1e-12 });
  [one, other].forEach((part, k) => {
    const alone = solved(part.ways, part.warmth, 5, { given: part.given, tolerance: 1e-12 });
    const first = k === 0 ? 0 : one.ways.length;
    part.ways.forEach((_, p) => {
      expect(Math.abs(flowOf(both, first + p) - flowOf(alone, p))).toBeLessThan(1e-10);
    });
  });
});

test('the order of rooms and paths changes nothing', () => {
  for (const seed of [1, 2, 3, 4, 5]) {
    const { ways, warmth, given } = drawn(8, seed);
    const place = [5, 2, 7, 0, 3, 6, 1, 4];
    const turned = ways
      .map((way) => ({
        ...way,
        to: place[way.to]!,
        ...(way.from === undefined ? {} : { from: place[way.from]! }),
      }))
      .reverse();
    const arranged = (values: number[]): number[] => {
      const result: number[] = [];
      values.forEach((value, room) => {
        result[place[room]!] = value;
      });
      return result;
    };
    const options = { tolerance: 1e-12 };
    const net = solved(ways, warmth, 5, { given, ...options });
    const other = solved(turned, arranged(warmth), 5, { given: arranged(given), ...options });
    const into = ways.reduce((sum, _, p) => sum + Math.abs(flowOf(net, p)), 0);
    ways.forEach((_, p) => {
      const difference = flowOf(net, p) - flowOf(other, ways.length - 1 - p);
      expect(Math.abs(difference)).toBeLessThan(1e-9 * into);
    });
  }
});

test.each([
  ['ends in no room', { to: 2 }],
  ['ends in no room', { from: 2 }],
  ['ends in no room', { to: Number.NaN }],
  ['leads from a room to itself', { from: 0 }],
  ['must have friction above 0 and inertia of at least 0', { friction: 0 }],
  ['must have friction above 0 and inertia of at least 0', { inertia: Number.NaN }],
  ['is on no side', { side: 1 }],
] as const)('a path that %s is refused', (words, changed) => {
  const law = { friction: 1, inertia: 1, height: 0 };
  const crack: PathPlan = { to: 0, from: -1, ...law, side: 0, always: true };
  expect(() => layOutAirNetwork(2, [crack, { ...crack, ...changed }], 1)).toThrow(
    `layOutAirNetwork: path 1 ${words}`,
  );
});
