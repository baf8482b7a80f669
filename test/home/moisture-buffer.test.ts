import { expect, test } from 'vitest';
import { bufferFromFurnishing, bufferFromValue } from '../../src/home/moisture-buffer.ts';
import { moistureEffusivity } from '../../src/physics/moisture/moisture-effusivity.ts';
import { compare } from '../reference/compare.ts';

const TEST_CHAMBER = 2811; // saturation at 23 °C [Pa]
const FILM = 2e-8; // [kg/(m2 s Pa)]
const HOURS = 3600;

/** The node of a square metre, without the film of air before it. */
function node(value: number) {
  const { capacity, conductance } = bufferFromValue(value, 1);
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
  const one = bufferFromValue(0.5, 10);
  const two = bufferFromValue(0.5, 20);
  expect(two.capacity).toBeCloseTo(2 * one.capacity, 12);
  expect(two.conductance).toBeCloseTo(2 * one.conductance, 18);
  expect(bufferFromValue(0, 10)).toEqual({ capacity: 0, conductance: 0 });
});

test('more furnishing holds more, and a furnished room some kilograms', () => {
  const rooms = (['bare', 'furnished', 'plenty'] as const).map((furnishing) =>
    bufferFromFurnishing(furnishing, 16, 2.4),
  );
  expect(rooms[0]!.capacity).toBeLessThan(rooms[1]!.capacity);
  expect(rooms[1]!.capacity).toBeLessThan(rooms[2]!.capacity);
  expect(rooms[1]!.capacity).toBeGreaterThan(2);
  expect(rooms[1]!.capacity).toBeLessThan(6);
});

test('out of range is refused in words', () => {
  expect(() => bufferFromValue(-1, 10)).toThrow(
    'bufferFromValue: moisture buffer value must be between 0 and 20 g/(m2 %RH), got -1 g/(m2 %RH)',
  );
  expect(() => bufferFromFurnishing('bare', Number.NaN, 2.4)).toThrow(RangeError);
});
