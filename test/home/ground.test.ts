import { expect, test } from 'vitest';
import { chainUValue } from '../../src/home/chain.ts';
import {
  type GroundFloor,
  groundElement,
  groundTemperature,
  groundUValue,
  SOILS,
} from '../../src/home/ground.ts';
import { compare } from '../reference/compare.ts';

const FLOOR: GroundFloor = {
  layers: [{ thickness: 0.15, conductivity: 1.6, density: 2300, specificHeat: 1000 }],
  area: 50,
  exposedPerimeter: 20,
  wallThickness: 0.3,
  soil: SOILS.clay,
};

test.each([
  [0.1, 0.22],
  [0.2, 0.37],
  [0.4, 0.6],
  [1, 1.05],
])('an uninsulated solid floor with %s m of edge a square metre', (edge, expected) => {
  compare({
    topic: 'Heat through the fabric',
    what: `U-value of a solid uninsulated floor on clay, ${edge} m of edge a square metre`,
    unit: 'W/(m2 K)',
    source:
      'CIBSE Guide A, table of solid floors by perimeter over area (EN ISO 13370, 0.3 m walls)',
    mark: 'from memory',
    expected,
    got: groundUValue({ ...FLOOR, layers: [], exposedPerimeter: FLOOR.area * edge }),
    tolerance: { absolute: 0.005 },
    because: 'printed to two places',
  });
});

test('the chain has the U-value, soil and all', () => {
  for (const insulation of [0, 1, 5]) {
    const layers = [...FLOOR.layers, { resistance: insulation }];
    const { chain, uValue } = groundElement({ ...FLOOR, layers });
    expect(chainUValue(chain)).toBeCloseTo(uValue, 10);
    expect(chain.resistance[0]).toBe(0.17);
    for (const r of chain.resistance) expect(r).toBeGreaterThanOrEqual(0);
    expect(chain.capacity.length).toBeLessThanOrEqual(6);
  }
});

test('the two formulas meet where the floor resists as much as the soil', () => {
  const k = FLOOR.soil.conductivity;
  const dimension = FLOOR.area / (FLOOR.exposedPerimeter / 2);
  const needed = (dimension - FLOOR.wallThickness) / k - 0.21;
  const slightly = (more: number): number =>
    groundUValue({ ...FLOOR, layers: [{ resistance: needed + more }] });
  // ISO 13370 joins them to within 1 %
  expect(slightly(1e-6) / slightly(-1e-6)).toBeCloseTo(1, 2);
});

test('more insulation, more soil between and less edge all lose less', () => {
  const u = groundUValue(FLOOR);
  expect(groundUValue({ ...FLOOR, layers: [...FLOOR.layers, { resistance: 2 }] })).toBeLessThan(u);
  expect(groundUValue({ ...FLOOR, exposedPerimeter: 8 })).toBeLessThan(u);
  expect(groundUValue({ ...FLOOR, soil: SOILS.rock })).toBeGreaterThan(u);
  expect(groundUValue({ ...FLOOR, exposedPerimeter: 0 })).toBeLessThan(0.02);
});

test('part of the year arrives, less under a floor without edge', () => {
  const { damping } = groundElement(FLOOR);
  expect(damping).toBeGreaterThan(0.1);
  expect(damping).toBeLessThan(0.9);
  expect(groundElement({ ...FLOOR, exposedPerimeter: 5 }).damping).toBeLessThan(damping);
});

test.each([1, 23, 10_000])('a floor of %s m2 without edge loses next to nothing', (area) => {
  const { chain, uValue, damping } = groundElement({ ...FLOOR, area, exposedPerimeter: 0 });
  expect(chainUValue(chain)).toBeCloseTo(uValue, 10);
  // 2 k / (pi B + d) ln(pi B / d + 1) falls to 0 as B = A / (P / 2) grows; here P is 0.1 m.
  const [dimension, d] = [area / 0.05, 0.3 + 1.5 * (0.21 + 0.15 / 1.6)];
  const written = ((2 * 1.5) / (Math.PI * dimension + d)) * Math.log((Math.PI * dimension) / d + 1);
  expect(uValue).toBeCloseTo(written, 12);
  expect(uValue * area).toBeLessThan(1); // [W/K]
  expect(damping).toBe(0);
});

test('the ground is coldest on its day and warmest half a year later', () => {
  expect(groundTemperature(10, 6, 0.5, 40, 40)).toBe(7);
  expect(groundTemperature(10, 6, 0.5, 40 + 365.25 / 2, 40)).toBeCloseTo(13, 12);
  expect(groundTemperature(10, 6, 0, 200, 40)).toBe(10);
});

test('floors that no home has are refused in words', () => {
  expect(() => groundUValue({ ...FLOOR, area: 0 })).toThrow(
    'groundUValue: floor area must be between 1 and 100000 m2, got 0 m2',
  );
  expect(() => groundElement({ ...FLOOR, wallThickness: Number.NaN })).toThrow(RangeError);
});
