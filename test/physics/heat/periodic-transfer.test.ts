import { expect, test } from 'vitest';
import type { MassiveLayer } from '../../../src/physics/heat/layer.ts';
import {
  periodicTransfer,
  periodicTransferOfChain,
} from '../../../src/physics/heat/periodic-transfer.ts';
import {
  inSeries,
  matrixOfLayer,
  matrixOfResistance,
} from '../../../src/physics/heat/transfer-matrix.ts';
import { compare } from '../../reference/compare.ts';
import { penetrationDepth } from '../../reference/physics/moisture/penetration-depth.ts';

const DAY = 86_400;
const YEAR = 365.25 * DAY;
const BARE = { inner: 0, outer: 0 };
const TOPIC = 'Building dynamics';
const BOX = 'MacKay, Sustainable Energy without the hot air, box E.19';

test.each([
  ['granite', 2.1, 2.3e6, 3.0, 8.1],
  ['concrete', 1.28, 1.94e6, 2.6, 5.8],
  ['still water', 0.57, 4.18e6, 1.2, 5.7],
  ['dry sand', 0.3, 1.28e6, 1.5, 2.3],
])('the year in deep %s', (name, conductivity, capacity, depth, flux) => {
  const row = { topic: TOPIC, source: BOX, mark: 'published arithmetic' } as const;
  compare({
    ...row,
    what: `penetration depth of the year in ${name}`,
    unit: 'm',
    expected: depth,
    got: penetrationDepth(conductivity / capacity, YEAR),
    tolerance: { absolute: 0.05 },
    because: 'printed to a tenth',
  });
  const [re, im] = periodicTransfer([deep(conductivity, capacity)], YEAR, BARE).innerAdmittance;
  compare({
    ...row,
    what: `flux amplitude of a year of 8.3 K into ${name}`,
    unit: 'W/m2',
    expected: flux,
    got: 8.3 * Math.hypot(re, im),
    tolerance: { absolute: 0.1 },
    because: 'printed to a tenth from properties printed to two or three figures',
  });
  expect(Math.atan2(im, re)).toBeCloseTo(Math.PI / 4, 6); // an eighth of a year ahead
});

test('the day in granite', () => {
  compare({
    topic: TOPIC,
    what: 'penetration depth of the day in granite',
    unit: 'm',
    source: BOX,
    mark: 'published arithmetic',
    expected: 0.16,
    got: penetrationDepth(2.1 / 2.3e6, DAY),
    tolerance: { absolute: 0.005 },
    because: 'printed to a hundredth',
  });
});

test.each([1, 2, 3])('what is left of a swing %s penetration depths down', (depths) => {
  const depth = penetrationDepth(2.1 / 2.3e6, DAY);
  const whole = deep(2.1, 2.3e6, DAY);
  const flow = periodicTransfer([whole], DAY, BARE).innerAdmittance;
  const z = matrixOfLayer({ ...whole, thickness: depths * depth }, DAY);
  const re = z[0] + z[2] * flow[0] - z[3] * flow[1];
  const im = z[1] + z[2] * flow[1] + z[3] * flow[0];
  const row = {
    topic: TOPIC,
    source: 'periodic solution in a half-space (Carslaw and Jaeger 1959, section 2.6)',
    mark: 'closed form',
    tolerance: { relative: 1e-6 },
    because: 'exact',
  } as const;
  compare({
    ...row,
    what: `amplitude left at ${depths} penetration depths`,
    unit: '-',
    expected: Math.exp(-depths),
    got: Math.hypot(re, im),
  });
  compare({
    ...row,
    what: `lag at ${depths} penetration depths`,
    unit: 'rad',
    expected: depths,
    got: -Math.atan2(im, re),
  });
});

test('ever finer lumps come to the exact layer, the error falling with the square', () => {
  const brick = { thickness: 0.22, conductivity: 0.77, density: 1700, specificHeat: 800 };
  const exact = periodicTransfer([brick], DAY, { inner: 0.13, outer: 0.04 });
  const errors = [10, 20, 40].map((n) => {
    const chain = evenChain(brick, n);
    const got = periodicTransferOfChain(chain.resistance, chain.capacity, DAY);
    return Math.hypot(
      got.innerAdmittance[0] - exact.innerAdmittance[0],
      got.innerAdmittance[1] - exact.innerAdmittance[1],
    );
  });
  expect(errors[2]!).toBeLessThan(2e-3);
  const { resistance, capacity } = evenChain(brick, 40);
  const { decrement } = periodicTransferOfChain(resistance, capacity, DAY);
  expect(Math.abs(decrement / exact.decrement - 1)).toBeLessThan(2e-3);
  for (const k of [0, 1]) expect(Math.log2(errors[k]! / errors[k + 1]!)).toBeCloseTo(2, 1);
});

test('a thin sheet that conducts well and is shielded outside shows its whole capacity inside', () => {
  const sheet = { thickness: 0.002, conductivity: 200, density: 2700, specificHeat: 900 };
  const { innerCapacity, outerCapacity } = periodicTransfer([sheet], DAY, {
    inner: 0.01,
    outer: 5,
  });
  expect(innerCapacity / (0.002 * 2700 * 900)).toBeCloseTo(1, 1);
  expect(outerCapacity).toBeLessThan(innerCapacity);
});

test('a very slow swing passes as through the steady wall', () => {
  const wall = [{ thickness: 0.1, conductivity: 0.5, density: 1000, specificHeat: 1000 }];
  const slow = periodicTransfer(wall, 1e10, { inner: 0.13, outer: 0.04 });
  expect(slow.decrement).toBeCloseTo(1, 6);
  expect(slow.transmittance[0]).toBeCloseTo(1 / 0.37, 4);
  expect(slow.innerAdmittance[0]).toBeCloseTo(1 / 0.37, 4);
});

test('a wall turned round swaps its faces and passes as much', () => {
  const layers = [
    { thickness: 0.1, conductivity: 0.5, density: 1400, specificHeat: 1000 },
    { resistance: 2 },
    { thickness: 0.05, conductivity: 0.1, density: 500, specificHeat: 1600 },
  ];
  const one = periodicTransfer(layers, DAY, { inner: 0.13, outer: 0.04 });
  const other = periodicTransfer(layers.toReversed(), DAY, { inner: 0.04, outer: 0.13 });
  expect(other.outerAdmittance[0]).toBeCloseTo(one.innerAdmittance[0], 10);
  expect(other.outerCapacity).toBeCloseTo(one.innerCapacity, 6);
  expect(other.transmittance[1]).toBeCloseTo(one.transmittance[1], 10);
});

test('matrices have determinant 1', () => {
  const brick = { thickness: 0.3, conductivity: 0.77, density: 1700, specificHeat: 800 };
  const [a, ai, b, bi, c, ci, d, di] = inSeries(
    matrixOfResistance(0.13),
    matrixOfLayer(brick, DAY),
  );
  expect(a * d - ai * di - b * c + bi * ci).toBeCloseTo(1, 9);
  expect(a * di + ai * d - b * ci - bi * c).toBeCloseTo(0, 9);
});

test('what no building has is refused in words', () => {
  expect(() => periodicTransfer([], 0, BARE)).toThrow(
    'periodicTransfer: period must be between 60 and 32000000000 s, got 0 s',
  );
  expect(() => periodicTransfer([{ ...deep(2, 2e6), thickness: 1e4 }], DAY, BARE)).toThrow(
    /thickness must be between 0 and 150 penetration depths/,
  );
});

/** Twelve penetration depths of a swing. */
function deep(conductivity: number, capacity: number, period = YEAR): MassiveLayer {
  const thickness = 12 * Math.sqrt((conductivity * period) / (Math.PI * capacity));
  return { thickness, conductivity, density: capacity / 1000, specificHeat: 1000 };
}

function evenChain({ thickness, conductivity, density, specificHeat }: MassiveLayer, n: number) {
  const whole = thickness * density * specificHeat;
  const slice = thickness / conductivity / n;
  return {
    resistance: [0.13, ...Array.from({ length: n }, () => slice), 0.04],
    capacity: Array.from({ length: n + 1 }, (_, k) => whole / n / (k % n === 0 ? 2 : 1)),
  };
}
