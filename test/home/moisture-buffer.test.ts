import { expect, test } from 'vitest';
import { bufferFromValue, bufferingSurface } from '../../src/home/moisture-buffer.ts';
import { moistureEffusivity } from '../../src/physics/moisture/moisture-effusivity.ts';
import { compare } from '../reference/compare.ts';

const TEST_CHAMBER = 2811; // saturation at 23 °C [Pa]
const FILM = 2e-8; // [kg/(m2 s Pa)]
const HOURS = 3600;

/** The node of a square metre, without the film of air before it. */
function node(value: number) {
  const { capacity, conductance } = bufferFromValue(value, 0, 1);
  return { capacity: capacity / TEST_CHAMBER, conductance: 1 / (1 / conductance - 1 / FILM) };
}

test('one node answers the daily swing of a thick material exactly', () => {
  const { capacity, conductance } = node(0.8);
  const effusivity = moistureEffusivity(0.8, TEST_CHAMBER);
  const w = (2 * Math.PI) / (24 * HOURS);
  const x = (w * capacity) / conductance;
  const row = {
    topic: 'Moisture buffering',
    source: 'half-space: effusivity times sqrt(w), an eighth of a turn ahead',
    mark: 'closed form',
    because: 'exact at this one period',
  } as const;
  compare({
    ...row,
    what: 'flow into the buffer per pascal of daily swing, 0.8 g/(m2 %RH)',
    unit: 'ng/(m2 s Pa)',
    expected: effusivity * Math.sqrt(w) * 1e12,
    got: ((conductance * x) / Math.sqrt(1 + x * x)) * 1e12,
    tolerance: { relative: 1e-9 },
  });
  compare({
    ...row,
    what: 'lead of that flow',
    unit: 'h',
    expected: 3,
    got: (Math.atan(1 / x) * 24) / (2 * Math.PI),
    tolerance: { absolute: 1e-9 },
  });
});

test.each([
  [6, 0.686],
  [48, 0.894],
  [168, 0.529],
])('other swings are answered too weakly: %s h', (hours, expected) => {
  const { capacity, conductance } = node(0.8);
  const w = (2 * Math.PI) / (hours * HOURS);
  const x = (w * capacity) / conductance;
  const flow = (conductance * x) / Math.sqrt(1 + x * x);
  compare({
    topic: 'Moisture buffering',
    what: `flow into the one node at a swing of ${hours} h, as a share of a thick material's`,
    unit: '-',
    source: 'sqrt(2 x/(1 + x2)), x being 24 h over the period',
    mark: 'closed form',
    expected,
    got: flow / (moistureEffusivity(0.8, TEST_CHAMBER) * Math.sqrt(w)),
    tolerance: { absolute: 0.001 },
    because: 'worked out to three places; shows what matching at one period costs',
  });
});

test('in the chamber of the test method it takes up most of its own buffer value', () => {
  const { capacity, conductance } = node(1);
  const tau = capacity / conductance / HOURS;
  const gone = (h: number): number => 1 - Math.exp(-h / tau);
  const swing = (gone(8) * gone(16)) / gone(24);
  compare({
    topic: 'Moisture buffering',
    what: 'uptake of the one node over 8 h at 75 % and 16 h at 33 %, as a share of the buffer value',
    unit: '-',
    source:
      'first-order answer to a square wave; time constant 24 h / 2 pi, matched at the daily sine',
    mark: 'closed form',
    expected: 0.86,
    got: (swing * capacity * TEST_CHAMBER * 1000) / 100,
    tolerance: { absolute: 0.005 },
    because: 'worked out to two places; the missing 14 % is what a single node cannot do',
  });
});

test('twice the area holds and exchanges twice as much; no value, nothing', () => {
  const one = bufferFromValue(0.5, 4.6, 10);
  const two = bufferFromValue(0.5, 4.6, 20);
  expect(two.capacity).toBeCloseTo(2 * one.capacity, 12);
  expect(two.conductance).toBeCloseTo(2 * one.conductance, 18);
  expect(two.deep.capacity).toBeCloseTo(2 * one.deep.capacity, 12);
  expect(two.deep.conductance).toBeCloseTo(2 * one.deep.conductance, 18);
  expect(bufferFromValue(0, 4.6, 10)).toEqual({
    ...{ capacity: 0, conductance: 0 },
    deep: { capacity: 0, conductance: 0 },
  });
});

test('the stores are those of the depth model of the same material', () => {
  // Vapour resistance factor 50 and 80 kg/m3 (as softwood), at 23 °C; air passes 2e-10 kg/(m s Pa).
  const [permeability, held] = [2e-10 / 50, 80];
  const depth = (days: number): number =>
    Math.sqrt((((permeability * TEST_CHAMBER) / held) * days * 24 * HOURS) / Math.PI);
  const [near, far] = [depth(1), depth(21)];
  const effusivity = Math.sqrt((permeability * held) / TEST_CHAMBER);
  const value = 1000 * 0.00568 * TEST_CHAMBER * effusivity * Math.sqrt(24 * HOURS);
  const { capacity, conductance, deep } = bufferFromValue(value, Math.sqrt(21), 1);
  const row = {
    topic: 'Moisture buffering',
    source: 'Woods, Winkler and Christensen 2013, surface and deep layer by penetration depth',
    mark: 'from memory',
    because: 'the same model in other letters',
    tolerance: { relative: 1e-9 },
  } as const;
  for (const [what, unit, expected, got] of [
    ['surface layer holds', 'kg/m2', held * near, capacity],
    ['deep layer holds', 'kg/m2', held * far, deep.capacity],
    [
      'film and half the surface layer',
      'm2 s Pa/kg',
      1 / FILM + near / (2 * permeability),
      1 / conductance,
    ],
    [
      'middle of surface to middle of deep layer',
      'm2 s Pa/kg',
      (near + far) / (2 * permeability),
      1 / deep.conductance,
    ],
  ] as const) {
    compare({ ...row, what: `softwood-like: ${what}`, unit, expected, got });
  }
});

test('a furnished room of 16 m2 has some kilograms in what answers within a day', () => {
  const { capacity } = bufferFromValue(0.5, 4.6, bufferingSurface(16, 2.4));
  expect(capacity).toBeGreaterThan(2);
  expect(capacity).toBeLessThan(6);
});

test('out of range is refused in words', () => {
  expect(() => bufferFromValue(-1, 4.6, 10)).toThrow(
    'bufferFromValue: moisture buffer value must be between 0 and 20 g/(m2 %RH), got -1 g/(m2 %RH)',
  );
  expect(() => bufferFromValue(1, -1, 10)).toThrow(
    'bufferFromValue: deep over surface store must be between 0 and 50 -, got -1 -',
  );
  expect(() => bufferingSurface(Number.NaN, 2.4)).toThrow(RangeError);
});
