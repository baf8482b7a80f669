import { expect, test } from 'vitest';
import type { CrackPlace } from '../../src/home/crack-places.ts';
import type { Leakage } from '../../src/home/home.ts';
import {
  type LeakageShell,
  leakageFromAch50,
  leakageFromArea,
  leakageFromRate,
} from '../../src/home/leakage.ts';
import { compare } from '../reference/compare.ts';

const place = (room: number, weight: number, vents: boolean): CrackPlace => ({
  ...{ room, weight, vents, height: 1, azimuth: 180, pressureCoefficient: 0 },
});
const SHELL: LeakageShell = {
  ...{ volume: 340, rooms: 2 },
  places: [place(0, 30, false), place(0, 30, true), place(1, 40, true)],
};

/** Flow of all cracks and vents. [m3/s] */
function flowOf({ how }: Leakage, at: 'flowAt1' | 'flowAt10' = 'flowAt1'): number {
  if (how.by === 'rate') throw new Error('expected cracks');
  return how.cracks.reduce((sum, crack) => sum + crack[at], 0);
}

test('a leakage area is a hole of that size at 4 Pa', () => {
  // 500 cm2, discharge coefficient 1: 0.05 sqrt(8/1.2041) = 0.128879 m3/s at 4 Pa, by 4^0.65 at 1 Pa.
  compare({
    topic: 'Infiltration',
    what: 'flow at 1 Pa of 500 cm2 of leakage area',
    unit: 'm3/s',
    source: 'definition of the leakage area at 4 Pa, exponent 0.65',
    mark: 'closed form',
    expected: 0.128879 / 4 ** 0.65,
    got: flowOf(leakageFromArea(0.05, SHELL)),
    tolerance: { relative: 1e-5 },
    because: 'six digits',
  });
});

test('a rate is shared by envelope and knows no blower door', () => {
  expect(leakageFromRate(0.5, SHELL)).toEqual({
    how: { by: 'rate', flow: 170 / 3600 },
    share: [0.6, 0.4],
    ach50: null,
  });
});

test('a blower-door figure is carried down by the power law, spread by weight', () => {
  const tested = leakageFromAch50(7, SHELL);
  expect(tested.ach50).toBe(7);
  const at50 = (7 * 340) / 3600;
  expect(flowOf(tested, 'flowAt1')).toBeCloseTo(at50 / 50 ** 0.65, 12);
  expect(flowOf(tested, 'flowAt10')).toBeCloseTo(at50 / 5 ** 0.65, 12);
  expect(tested.share[0]).toBeCloseTo(0.6, 12);
  expect(tested.share[1]).toBeCloseTo(0.4, 12);
});

test('blower door and area undo each other', () => {
  // 7 air changes of 340 m3 at 50 Pa are 0.0497 m2 by leakageAreaFromAch50(7, 340).
  const tested = leakageFromAch50(7, SHELL);
  const at4 = flowOf(tested) * 4 ** 0.65;
  const area = at4 * Math.sqrt(1.2041 / 8);
  const given = leakageFromArea(area, SHELL);
  expect(given.ach50).toBeCloseTo(7, 9);
  expect(flowOf(given)).toBeCloseTo(flowOf(tested), 12);
});

test('what goes through party walls brings no outdoor air, but a blower door finds it', () => {
  const party = leakageFromAch50(7, { ...SHELL, partyShare: 0.3 });
  expect(party.ach50).toBe(7);
  expect(flowOf(party)).toBeCloseTo(0.7 * flowOf(leakageFromAch50(7, SHELL)), 12);
});

test('vents are holes where they are, but are shut in a blower-door test', () => {
  const shut = leakageFromAch50(7, SHELL);
  const open = leakageFromAch50(7, { ...SHELL, vents: 0.01 });
  // 0.61 x 0.01 m2 at 1 Pa: 0.61 x 0.01 x sqrt(2/1.2041), by hand.
  expect(flowOf(open) - flowOf(shut)).toBeCloseTo(0.0078616, 6);
  expect(open.ach50).toBe(7);
  expect(open.share[1]!).toBeGreaterThan(shut.share[1]!);
  expect(open.share[0]! + open.share[1]!).toBeCloseTo(1, 12);
  const onlyVents = leakageFromAch50(0, { ...SHELL, vents: 0.01 });
  expect(onlyVents.share[0]).toBeCloseTo(3 / 7, 12);
});

test('a shell without leaks shares what fans need by weight, one without envelope evenly', () => {
  const tight = leakageFromAch50(0, SHELL);
  expect(tight.how).toEqual({ by: 'pressure', cracks: [] });
  expect(tight.share).toEqual([0.6, 0.4]);
  expect(leakageFromRate(0.5, { volume: 100, rooms: 2, places: [] }).share).toEqual([0.5, 0.5]);
});

test('what no home leaks is refused in words', () => {
  expect(() => leakageFromRate(-0.1, SHELL)).toThrow(
    'leakageFromRate: rate must be between 0 and 20 1/h, got -0.1 1/h',
  );
  expect(() => leakageFromAch50(Number.NaN, SHELL)).toThrow(RangeError);
  expect(() => leakageFromArea(0.05, { ...SHELL, volume: 0 })).toThrow(
    'leakageFromArea: volume must be between 1 and 100000 m3, got 0 m3',
  );
  expect(() => leakageFromAch50(7, { ...SHELL, vents: -1 })).toThrow(/background vents/);
  expect(() => leakageFromAch50(7, { ...SHELL, partyShare: 1.1 })).toThrow(/party walls/);
  expect(() => leakageFromRate(0.5, { volume: 100, rooms: 0, places: [] })).toThrow(
    /number of rooms/,
  );
});
