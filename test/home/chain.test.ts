import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainFromLayers, chainFromUValue, chainUValue } from '../../src/home/chain.ts';
import type { Chain } from '../../src/home/home.ts';
import { type Layer, layerCapacity, layerResistance } from '../../src/physics/heat/layer.ts';
import {
  periodicTransfer,
  periodicTransferOfChain,
} from '../../src/physics/heat/periodic-transfer.ts';
import { compare } from '../reference/compare.ts';

const DAY = 86_400;
const OUTER_WALL = { inner: 0.13, outer: 0.04 };
const PARTITION = { inner: 0.13, outer: 0.13, bothFaces: true };

const plaster = layer(0.013, 0.5, 1300, 1000);
const brick = layer(0.22, 0.77, 1700, 800);
const block = layer(0.1, 0.51, 1400, 1000);
const wool = layer(0.1, 0.035, 30, 1030);
const board = layer(0.0125, 0.25, 900, 1000);
const gap = { resistance: 0.18 };

const WALLS: readonly (readonly [string, readonly Layer[], number])[] = [
  ['solid brick', [plaster, brick], 4],
  ['insulated cavity', [plaster, block, wool, layer(0.105, 0.77, 1700, 800)], 5],
  ['empty cavity', [plaster, block, gap, layer(0.105, 0.77, 1700, 800)], 5],
  ['timber frame', [board, layer(0.14, 0.035, 30, 1030), layer(0.011, 0.13, 650, 1700), gap], 5],
  ['half a metre of stone', [plaster, layer(0.5, 2.3, 2600, 1000)], 5],
  ['brick insulated inside', [board, layer(0.06, 0.03, 30, 1400), brick], 4],
  ['loft', [board, layer(0.27, 0.04, 20, 1030)], 5],
];

describe.each(WALLS)('%s', (name, layers, nodes) => {
  const chain = chainFromLayers(layers, OUTER_WALL);
  const exact = periodicTransfer(layers, DAY, OUTER_WALL);
  const got = periodicTransferOfChain(chain.resistance, chain.capacity, DAY);
  const row = {
    topic: 'Building dynamics',
    source: 'ISO 13786, exact periodic solution of the layers, 24 h',
    mark: 'closed form',
    because: 'the chain promises 5 %',
  } as const;

  test('answers the day as the exact wall does', () => {
    compare({
      ...row,
      what: `admittance, ${name}, ${chain.capacity.length} nodes`,
      unit: 'W/(m2 K)',
      expected: Math.hypot(...exact.innerAdmittance),
      got: Math.hypot(...got.innerAdmittance),
      tolerance: { relative: 0.05 },
    });
    compare({
      ...row,
      what: `areal heat capacity inside, ${name}, ${chain.capacity.length} nodes`,
      unit: 'kJ/(m2 K)',
      expected: exact.innerCapacity / 1000,
      got: got.innerCapacity / 1000,
      tolerance: { relative: 0.05 },
    });
    compare({
      ...row,
      what: `decrement factor, ${name}, ${chain.capacity.length} nodes`,
      unit: '-',
      expected: exact.decrement,
      got: got.decrement,
      tolerance: { absolute: 0.05 },
    });
    const advance = (a: readonly [number, number]): number => Math.atan2(a[1], a[0]);
    compare({
      ...row,
      what: `time by which the flow inside leads, ${name}`,
      unit: 'h',
      expected: (advance(exact.innerAdmittance) * 24) / (2 * Math.PI),
      got: (advance(got.innerAdmittance) * 24) / (2 * Math.PI),
      tolerance: { absolute: (0.05 * 24) / (2 * Math.PI) },
      because: 'the chain promises 5 % of the complex figure, a twentieth of a radian',
    });
  });

  test('with few nodes, and no heat or resistance lost', () => {
    expect(chain.capacity).toHaveLength(nodes);
    keepsTotals(chain, layers, 0.17);
  });

  test('as a partition both faces answer', () => {
    const both = chainFromLayers(layers, PARTITION);
    const seen = periodicTransferOfChain(both.resistance, both.capacity, DAY).outerAdmittance;
    const truth = periodicTransfer(layers, DAY, PARTITION).outerAdmittance;
    const off = Math.hypot(seen[0] - truth[0], seen[1] - truth[1]);
    expect(off).toBeLessThanOrEqual(0.05 * Math.hypot(...truth));
    keepsTotals(both, layers, 0.26);
  });
});

test('a wall without end', () => {
  const granite = layer(2, 2.1, 2300, 1000);
  const chain = chainFromLayers([granite], { inner: 0, outer: 0 });
  const got = periodicTransferOfChain(chain.resistance, chain.capacity, DAY);
  compare({
    topic: 'Building dynamics',
    what: `admittance of two metres of granite, ${chain.capacity.length} nodes`,
    unit: 'W/(m2 K)',
    source: 'half-space: sqrt(2 pi k C/T), MacKay box E.19',
    mark: 'closed form',
    expected: Math.sqrt((2 * Math.PI * 2.1 * 2.3e6) / DAY),
    got: Math.hypot(...got.innerAdmittance),
    tolerance: { relative: 0.05 },
    because: 'the chain promises 5 %',
  });
});

test('whatever the layers, the day is right and nothing is lost', () => {
  const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  const material = fc // dense materials conduct: at least 0.02 W/(m K) and 0.02 more per 100 kg/m3
    .tuple(between(0.005, 0.5), between(1, 4), between(15, 2800), between(700, 2000))
    .map(([thick, times, density, heat]) =>
      layer(thick, times * (0.02 + 0.0002 * density), density, heat),
    );
  const anything = fc.oneof(material, material, fc.record({ resistance: between(0.05, 3) }));
  fc.assert(
    fc.property(fc.array(anything, { minLength: 1, maxLength: 4 }), (layers) => {
      const chain = chainFromLayers(layers, OUTER_WALL);
      const exact = periodicTransfer(layers, DAY, OUTER_WALL).innerAdmittance;
      const got = periodicTransferOfChain(chain.resistance, chain.capacity, DAY).innerAdmittance;
      const off = Math.hypot(got[0] - exact[0], got[1] - exact[1]);
      const film = (2 * Math.PI * 100) / DAY;
      expect(off).toBeLessThanOrEqual(0.05 * Math.hypot(...exact) + 2 * film);
      expect(chain.resistance).toHaveLength(chain.capacity.length + 1);
      expect(Math.min(...chain.capacity)).toBeGreaterThanOrEqual(100 * (1 - 1e-9));
      expect(Math.min(...chain.resistance)).toBeGreaterThanOrEqual(0);
      const held = layers.reduce((sum, l) => sum + layerCapacity(l), 0);
      if (held > 2000) keepsTotals(chain, layers, 0.17); // less than that may be all film
    }),
    { seed: 9, numRuns: 200 },
  );
});

test('first and last node on the faces: a bare board has two, half its heat in each', () => {
  const { resistance, capacity } = chainFromLayers([board], OUTER_WALL);
  expect(resistance).toEqual([0.13, 0.05, 0.04]);
  expect(capacity[0]!).toBeCloseTo(5625, 9);
  expect(capacity[1]!).toBeCloseTo(5625, 9);
});

test('faces without mass of their own get a film, taken from the mass', () => {
  const { capacity } = chainFromLayers([{ resistance: 1 }, brick], OUTER_WALL);
  expect(Math.min(...capacity)).toBeGreaterThanOrEqual(100);
  expect(capacity.reduce((sum, c) => sum + c, 0)).toBeCloseTo(0.22 * 1700 * 800, 6);
  expect(chainFromLayers([{ resistance: 1 }], OUTER_WALL).capacity).toEqual([100, 100]);
});

describe('from a U-value', () => {
  test.each(['inside', 'middle', 'outside', 'even'] as const)(
    'mass %s keeps both totals',
    (where) => {
      const chain = chainFromUValue(0.3, 150_000, OUTER_WALL, where);
      expect(chainUValue(chain)).toBeCloseTo(0.3, 12);
      expect(chain.capacity.reduce((sum, c) => sum + c, 0)).toBeCloseTo(150_000, 6);
      expect(chain.resistance).toHaveLength(chain.capacity.length + 1);
    },
  );

  test('mass nearer the room stores more of its day', () => {
    const inside = (where: 'inside' | 'even' | 'middle' | 'outside'): number => {
      const chain = chainFromUValue(0.3, 150_000, OUTER_WALL, where);
      return periodicTransferOfChain(chain.resistance, chain.capacity, DAY).innerCapacity;
    };
    expect(inside('inside')).toBeGreaterThan(inside('even'));
    expect(inside('even')).toBeGreaterThan(inside('middle'));
    expect(inside('middle')).toBeGreaterThan(inside('outside'));
  });

  test('an uninsulated wall is even wherever its mass is said to be', () => {
    const even = chainFromUValue(2.1, 450_000, OUTER_WALL, 'even');
    expect(chainFromUValue(2.1, 450_000, OUTER_WALL, 'outside')).toEqual(even);
  });

  test('a wall without mass is one resistance between two films', () => {
    expect(chainUValue(chainFromUValue(1.8, 0, OUTER_WALL, 'inside'))).toBeCloseTo(1.8, 12);
  });

  test.each([1, 100, 500, 999])(
    'as little mass as %s J/(m2 K) is kept, on films at least',
    (mass) => {
      for (const uValue of [0.02, 1.8, 5.5]) {
        const chain = chainFromUValue(uValue, mass, OUTER_WALL, 'even');
        expect(chainUValue(chain)).toBeCloseTo(uValue, 12);
        const kept = chain.capacity.reduce((sum, c) => sum + c, 0);
        const films = 100 * chain.capacity.length;
        expect(kept).toBeGreaterThanOrEqual(Math.max(mass, films) - 1e-9);
        expect(kept).toBeLessThanOrEqual(mass + films + 1e-9);
      }
    },
  );

  test('a U-value above what the surfaces allow is refused in words', () => {
    expect(() => chainFromUValue(6, 1e5, OUTER_WALL, 'even')).toThrow(
      /^chainFromUValue: U-value must be between 0\.01 and 5\.87\d* W\/\(m2 K\), got 6 W\/\(m2 K\)$/,
    );
    expect(() => chainFromUValue(Number.NaN, 1e5, OUTER_WALL, 'even')).toThrow(RangeError);
  });
});

test('the chain of a wall is the same each time, and another between other surfaces', () => {
  const wall = chainFromLayers([plaster, brick], OUTER_WALL);
  expect(chainFromLayers([plaster, { ...brick }], { ...OUTER_WALL })).toEqual(wall);
  const sheltered = chainFromLayers([plaster, brick], { ...OUTER_WALL, outer: 0.13 });
  expect(sheltered.resistance.at(-1)).toBe(0.13);
  expect(chainFromLayers([plaster, brick], OUTER_WALL).resistance.at(-1)).toBe(0.04);
});

test('layers no builder has are refused in words', () => {
  expect(() => chainFromLayers([], OUTER_WALL)).toThrow(
    'chainFromLayers: number of layers must be between 1 and 30 layers, got 0 layers',
  );
  expect(() => chainFromLayers([{ ...brick, thickness: 0 }], OUTER_WALL)).toThrow(
    'chainFromLayers: thickness must be between 0.0001 and 5 m, got 0 m',
  );
  expect(() => chainFromLayers([{ resistance: -1 }], OUTER_WALL)).toThrow(RangeError);
  expect(() => chainFromLayers([brick], { inner: Number.NaN, outer: 0.04 })).toThrow(
    /inner surface resistance/,
  );
});

function keepsTotals(chain: Chain, layers: readonly Layer[], surfaces: number): void {
  const resistance = layers.reduce((sum, l) => sum + layerResistance(l), surfaces);
  const capacity = layers.reduce((sum, l) => sum + layerCapacity(l), 0);
  expect(chainUValue(chain)).toBeCloseTo(1 / resistance, 10);
  expect(chain.capacity.reduce((sum, c) => sum + c, 0) / capacity).toBeCloseTo(1, 10);
}

function layer(thickness: number, conductivity: number, density: number, specificHeat: number) {
  return { thickness, conductivity, density, specificHeat };
}
