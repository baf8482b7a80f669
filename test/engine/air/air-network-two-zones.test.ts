import { expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import { densityAt, flowOf, leftIn, solved, touching, type Way } from './a-network.ts';

/** Ground floor 20 °C, upper floor 18 °C, outdoors 5 °C, 4 m/s; cracks with exponent 0.65, open stairs. */
const OUTDOORS = densityAt(5);
const DYNAMIC = 0.5 * OUTDOORS * 4 * 4;
const WARMTH = [20, 18] as const;
const PRESSURES = [-4.61576, -4.42668] as const;
const CRACKS = [
  { to: 0, c: 20, height: 1.25, coefficient: 0.25, flow: 66.5532 },
  { to: 0, c: 20, height: 1.25, coefficient: -0.5, flow: -23.2014 },
  { to: 1, c: 20, height: 3.75, coefficient: 0.25, flow: 56.0425 },
  { to: 1, c: 20, height: 3.75, coefficient: -0.5, flow: -38.4541 },
  { to: 1, c: 30, height: 5, coefficient: -0.5, flow: -66.8284 },
] as const;
const STAIRS = { c: 400, height: 2.5, flow: 46.9409 };

const above = (room: 0 | 1, height: number): number =>
  PRESSURES[room] + 9.80665 * (OUTDOORS - densityAt(WARMTH[room])) * height;

function ways(): Way[] {
  const cracks = CRACKS.map(({ to, c, height, coefficient }): Way => {
    const wind = DYNAMIC * coefficient;
    const dp = wind - above(to, height);
    const source = dp > 0 ? OUTDOORS : densityAt(WARMTH[to]);
    return { to, height, wind, law: touching(c / 3600, 0.65, dp, source) };
  });
  const dp = above(0, STAIRS.height) - above(1, STAIRS.height);
  const stairs = touching(STAIRS.c / 3600, 0.5, dp, densityAt(20));
  return [...cracks, { to: 1, from: 0, height: STAIRS.height, law: stairs }];
}

test('two floors and stairs between them', () => {
  const net = solved(ways(), WARMTH, 5);
  const shared = {
    topic: 'Air by pressures',
    source: 'power laws solved by Newton elsewhere',
    mark: 'closed form',
    tolerance: { relative: 1e-3 },
    because: 'worked out with 9.81 m/s2; laws touch at pressures of six digits',
  } as const;
  PRESSURES.forEach((expected, room) => {
    const what = `two floors, pressure ${room === 0 ? 'below' : 'above'}`;
    compare({ ...shared, what, unit: 'Pa', expected, got: net.pressure[room]! });
  });
  const volumes = CRACKS.map(({ to }, p) => {
    const flow = flowOf(net, p);
    return (3600 * flow) / (flow > 0 ? OUTDOORS : densityAt(WARMTH[to]));
  });
  CRACKS.forEach(({ flow }, p) => {
    compare({
      ...shared,
      what: `two floors, crack ${p + 1}`,
      unit: 'm3/h',
      expected: flow,
      got: volumes[p]!,
    });
  });
  const up = (3600 * flowOf(net, 5)) / densityAt(20);
  compare({
    ...shared,
    what: 'two floors, up the stairs',
    unit: 'm3/h',
    expected: STAIRS.flow,
    got: up,
  });
  const into = (from: number): number =>
    volumes.slice(from).reduce((sum, flow) => sum + Math.max(0, flow), 0);
  compare({
    ...shared,
    ...{ what: 'two floors, share of outdoor air that enters above', unit: '%' },
    ...{ expected: 45.71, got: (100 * into(2)) / into(0) },
  });
  expect(Math.abs(leftIn(net, 0))).toBeLessThan(1e-15);
  expect(Math.abs(leftIn(net, 1))).toBeLessThan(1e-15);
});
