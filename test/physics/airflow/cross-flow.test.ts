import { describe, expect, test } from 'vitest';
import { singleSidedAiring } from '../../../src/physics/airflow/single-sided-airing.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { crossFlow } from '../../reference/physics/airflow/cross-flow.ts';

const TOPIC = 'Airing';
const NAN = Number.NaN;
const OPEN = Number.POSITIVE_INFINITY;

describe('crossFlow', () => {
  test('through equal windows it is the orifice at half the pressure each', () => {
    compare({
      topic: TOPIC,
      what: 'through-draught, two windows of 1 m2, 3 m/s, coefficient difference 0.4',
      unit: 'm3/s',
      source: 'two orifices in series, coefficient 0.61, worked out by hand',
      mark: 'closed form',
      expected: 0.61 * 1 * Math.sqrt((2 * (0.5 * 1.2 * 9 * 0.4)) / 2 / 1.2),
      got: crossFlow(1, 1, OPEN, 3, 0.4),
      tolerance: { relative: 1e-12 },
      because: 'an identity',
    });
  });

  test('the pressures over the openings add up to the whole', () => {
    const [windward, door, leeward, wind, difference] = [0.8, 1.6, 1.3, 4, 0.7];
    const q = crossFlow(windward, leeward, door, wind, difference);
    const drop = (area: number): number => (q / (0.61 * area)) ** 2 / wind ** 2;
    expect(drop(windward) + drop(door) + drop(leeward)).toBeCloseTo(difference, 12);
  });

  test('a flat between two streets changes its air as householders are told', () => {
    compareBand({
      topic: TOPIC,
      what: 'through-draught of 60 m3, windows of 1.2 m2, door of 1.6 m2, 2 m/s, sheltered (0.4)',
      unit: '1/h',
      source: 'airing guidance: about 40 air changes an hour in a through-draught',
      mark: 'published',
      low: 20,
      high: 80,
      got: (3600 * crossFlow(1.2, 1.2, 1.6, 2, 0.4)) / 60,
      because: 'no room, window or wind is named; a factor of two either way stands for that',
    });
  });

  test('wind straight onto windows opposite each other', () => {
    compareBand({
      topic: TOPIC,
      what: 'flow over inlet area and wind speed, windows opposite, difference 0.96 in the open',
      unit: '-',
      source: 'ASHRAE Fundamentals, effectiveness of openings, quoted by a textbook',
      mark: 'published',
      low: 0.25,
      high: 0.6,
      got: crossFlow(1, 1, OPEN, 1, 0.96),
      because: '0.5 to 0.6 for wind straight on, 0.25 to 0.35 (from memory) for slanting wind',
    });
  });

  test('a tilted window exchanges less than a through-draught', () => {
    expect(singleSidedAiring(1.2, 1.2, 3, 5)).toBeLessThan(crossFlow(1.2, 1.2, 1.6, 3, 0.4));
  });

  test('is no more than its narrowest part lets through, and does not mind the direction', () => {
    const flow = crossFlow(1, 2, 1.6, 3, 0.5);
    expect(crossFlow(2, 1, 1.6, 3, 0.5)).toBe(flow);
    expect(flow).toBeLessThan(0.61 * 1 * 3 * Math.sqrt(0.5));
    expect(crossFlow(1, 2, 1.7, 3, 0.5)).toBeGreaterThan(flow);
    expect(crossFlow(1.1, 2, 1.6, 3, 0.5)).toBeGreaterThan(flow);
    expect(crossFlow(1, 2, OPEN, 3, 0.5)).toBeGreaterThan(flow);
    expect(crossFlow(1, 2, 1.6, 6, 0.5)).toBeCloseTo(2 * flow, 12);
    expect(crossFlow(1, 2, 1.6, 3, 2)).toBeCloseTo(2 * flow, 12);
  });

  test('without one opening, door or wind nothing flows', () => {
    expect(crossFlow(0, 1, OPEN, 3, 0.5)).toBe(0);
    expect(crossFlow(1, 0, OPEN, 3, 0.5)).toBe(0);
    expect(crossFlow(1, 1, 0, 3, 0.5)).toBe(0);
    expect(crossFlow(1, 1, OPEN, 0, 0.5)).toBe(0);
    expect(crossFlow(1, 1, OPEN, 3, 0)).toBe(0);
  });

  test.each([
    ['no window', () => crossFlow(NAN, 1, 1, 1, 1)],
    ['a negative window', () => crossFlow(1, -1, 1, 1, 1)],
    ['no door', () => crossFlow(1, 1, NAN, 1, 1)],
    ['no wind', () => crossFlow(1, 1, 1, NAN, 1)],
    ['a pressure for a coefficient', () => crossFlow(1, 1, 1, 3, 5)],
    ['no coefficient', () => crossFlow(1, 1, 1, 3, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));

  test('says so in words', () => {
    expect(() => crossFlow(1, 1, 1, 3, 5)).toThrow(
      'crossFlow: pressure difference coefficient must be between 0 and 3, got 5',
    );
  });
});
