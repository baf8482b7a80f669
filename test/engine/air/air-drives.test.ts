import { expect, test } from 'vitest';
import { setWind, windTable } from '../../../src/engine/air/wind-on-sides.ts';
import { wallPressureCoefficient } from '../../../src/physics/airflow/wall-pressure-coefficient.ts';
import { stackPressure } from '../../reference/physics/airflow/stack-pressure.ts';
import { densityAt, flowOf, hole, leftIn, solved } from './a-network.ts';
import { solveStep, twoStoreys } from './two-storeys.ts';

const WARMTH = Float64Array.of(20, 19, 18, 17, 17.5, 18);

test('wind presses on a side by its own weight and the coefficient of the angle', () => {
  const net = solved([{ to: 0, law: hole(0.01) }], [20], 5);
  const table = windTable([{ azimuth: 90 }]);
  const dynamic = 0.5 * densityAt(5) * 4 * 4;
  for (const [degree, part] of [
    [90, 0],
    [270, 0],
    [0, 0.25],
    [359, 0.5],
  ] as const) {
    setWind(net, table, 4, degree, part);
    // Straight lines between whole degrees: an eighth of the curvature, which is at most 0.0011 a degree
    // squared beside the corner at 180 degrees.
    const expected = dynamic * wallPressureCoefficient(degree + part - 90);
    expect(Math.abs(net.sides[0]! - expected)).toBeLessThan(dynamic * 1.5e-4);
  }
  setWind(net, windTable([{ coefficient: -0.5 }]), 4, 123, 0.4);
  expect(net.sides[0]).toBeCloseTo(-0.5 * dynamic, 12);
});

test('a chimney of one room has the weight of its air across both holes together', () => {
  const ways = [
    { to: 0, law: hole(0.01) },
    { to: 0, height: 5, law: hole(0.01) },
  ];
  const net = solved(ways, [20], 0);
  const lower = -net.pressure[0]!;
  const upper = net.pressure[0]! + 5 * net.buoyancy[0]!;
  expect(lower + upper).toBeCloseTo(stackPressure(densityAt(0), densityAt(20), 5), 9);
  expect(lower).toBeGreaterThan(0);
  expect(upper).toBeGreaterThan(0);
});

test('a house turned with the wind breathes as before', () => {
  const [house, turned] = [twoStoreys(1e-10), twoStoreys(1e-10)];
  turned.table.set(windTable([{ azimuth: 70 }, { azimuth: 250 }, { coefficient: -0.4 }]));
  solveStep(house, { outdoor: 5, wind: 4, windFrom: 200 }, WARMTH, [3]);
  solveStep(turned, { outdoor: 5, wind: 4, windFrom: 270 }, WARMTH, [3]);
  for (let p = 0; p < house.net.pathCount; p++) {
    expect(Math.abs(flowOf(turned.net, p) - flowOf(house.net, p))).toBeLessThan(1e-11);
  }
});

test('as much air enters each room of a house as leaves it, with a fan and an open window', () => {
  const house = twoStoreys();
  solveStep(house, { outdoor: 5, wind: 4, windFrom: 200 }, WARMTH, [3], 0.02);
  for (let room = 0; room < house.net.roomCount; room++) {
    expect(leftIn(house.net, room)).toBeCloseTo(0, 15);
  }
});
