import { expect, test } from 'vitest';
import { leakageFromAch50, leakageFromArea, leakageFromRate } from '../../src/home/leakage.ts';
import { leakageFlow } from '../../src/physics/airflow/leakage-flow.ts';
import { compare } from '../reference/compare.ts';

const SITE = { storeys: 2, shelterClass: 3 };
const SHELL = { volume: 340, exposed: [60, 40] };

test("the handbook's house", () => {
  const { how } = leakageFromArea(0.05, SHELL, SITE);
  if (how.by !== 'area') throw new Error('expected an area');
  compare({
    topic: 'Infiltration',
    what: 'two storeys, 500 cm2, shelter class 3, 39 K, 6.7 m/s, as a home is built from its area',
    unit: '1/h',
    source: 'ASHRAE Fundamentals, basic model, Lincoln example',
    mark: 'from memory',
    expected: 0.78,
    got: (leakageFlow(how, 39, 6.7) * 3600) / 340,
    tolerance: { relative: 0.01 },
    because: 'printed to two places',
  });
});

test('a rate is shared by envelope and knows no blower door', () => {
  const leakage = leakageFromRate(0.5, SHELL);
  expect(leakage).toEqual({
    how: { by: 'rate', flow: 170 / 3600 },
    share: [0.6, 0.4],
    ach50: null,
  });
});

test('blower door and area undo each other', () => {
  const tested = leakageFromAch50(7, SHELL, SITE);
  if (tested.how.by !== 'area') throw new Error('expected an area');
  expect(tested.ach50).toBe(7);
  expect(leakageFromArea(tested.how.area, SHELL, SITE).ach50).toBeCloseTo(7, 9);
});

test('vents add area where they are, but are shut in a blower-door test', () => {
  const shut = leakageFromAch50(7, SHELL, SITE);
  const open = leakageFromAch50(7, { ...SHELL, vents: [0, 0.01] }, SITE);
  if (shut.how.by !== 'area' || open.how.by !== 'area') throw new Error('expected areas');
  expect(open.how.area - shut.how.area).toBeCloseTo(0.0061, 9);
  expect(open.ach50).toBe(7);
  expect(open.share[1]!).toBeGreaterThan(shut.share[1]!);
  expect(open.share[0]! + open.share[1]!).toBeCloseTo(1, 12);
  const onlyVents = leakageFromAch50(0, { ...SHELL, vents: [0, 0.01] }, SITE);
  expect(onlyVents.share).toEqual([0, 1]);
});

test('a shell without envelope leaks evenly', () => {
  expect(leakageFromRate(0.5, { volume: 100, exposed: [0, 0] }).share).toEqual([0.5, 0.5]);
});

test('what no home leaks is refused in words', () => {
  expect(() => leakageFromRate(-0.1, SHELL)).toThrow(
    'leakageFromRate: rate must be between 0 and 20 1/h, got -0.1 1/h',
  );
  expect(() => leakageFromAch50(Number.NaN, SHELL, SITE)).toThrow(RangeError);
  expect(() => leakageFromArea(0.05, { ...SHELL, volume: 0 }, SITE)).toThrow(
    'leakageFromArea: volume must be between 1 and 100000 m3, got 0 m3',
  );
  expect(() => leakageFromAch50(7, { ...SHELL, vents: [-1] }, SITE)).toThrow(/vent area/);
  expect(() => leakageFromRate(0.5, { volume: 100, exposed: [] })).toThrow(/number of rooms/);
});
