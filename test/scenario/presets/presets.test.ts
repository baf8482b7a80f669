import { describe, expect, test } from 'vitest';
import { AGES, WALLS } from '../../../src/scenario/choices.ts';
import { ACTIVITIES } from '../../../src/scenario/presets/activities.ts';
import type { Age, Wall } from '../../../src/scenario/presets/fabric.ts';
import {
  ageOf,
  exposedFloorUValue,
  GLAZING,
  roofUValue,
  wallUValue,
} from '../../../src/scenario/presets/fabric.ts';
import { ACH50 } from '../../../src/scenario/presets/leakage.ts';
import { STAYS } from '../../../src/scenario/presets/patterns.ts';
import { ASLEEP, AWAKE } from '../../../src/scenario/presets/people.ts';
import { compare, compareBand } from '../../reference/compare.ts';

const TOPIC = 'Presets';
const PRINTED = { tolerance: { absolute: 0.001 }, because: 'a table is carried over as printed' };
const U_VALUE = { topic: TOPIC, unit: 'W/(m2 K)', mark: 'published', ...PRINTED } as const;

test('walls as built have the U-values of the published table', () => {
  const source = 'Scottish Government, EPC supplementary notes, wall U-values by age band';
  const rows: readonly [Wall, Age, number][] = [
    ['solid brick', '1976-1982', 1],
    ['solid brick', '1983-1990', 0.6],
    ['cavity', 'before 1900', 2.1],
    ['cavity', '1950-1966', 1.6],
    ['cavity', '1991-1995', 0.45],
    ['timber frame', 'before 1900', 2.5],
    ['timber frame', '1930-1949', 1.9],
    ['timber frame', '1976-1982', 0.5],
    ['granite', '1950-1966', 1.7],
    ['sandstone', '1950-1966', 1.5],
    ['system built', '1967-1975', 1.7],
    ['solid brick', '2003-2006', 0.3],
    ['solid brick', '2007 on', 0.25],
  ];
  for (const [wall, age, expected] of rows) {
    const got = wallUValue(wall, age).value;
    const what = `wall, ${wall}, ${age}`;
    compare({ ...U_VALUE, what, source, expected, got });
  }
});

test.each(['before 1900', '1900-1929', '1967-1975'] as const)(
  'a solid wall of brick, %s, has the measured U-value, well below that of tables',
  (age) => {
    compare({
      ...U_VALUE,
      what: `wall, solid brick, ${age}`,
      source: 'F. Li and others, Solid-wall U-values: heat flux measurements, 2015: 58 walls',
      ...{ expected: 1.3, got: wallUValue('solid brick', age).value },
    });
    expect(wallUValue('solid brick', age)).toMatchObject({ low: 0.9, high: 2.1 });
  },
);

test('windows have the published U-values', () => {
  const source = 'D. MacKay, Sustainable Energy - without the hot air, 2008, table E.2';
  for (const [kind, expected] of [
    ['single', 5],
    ['double', 2.9],
  ] as const) {
    const got = GLAZING[kind].uValue.value;
    const what = `window, ${kind}`;
    compare({ ...U_VALUE, what, source, expected, got });
  }
});

test('windows have the g-values of the UK assessment', () => {
  const source = 'SAP 10, table 6b';
  const rows = [
    ['single', 0.85],
    ['double', 0.76],
    ['double low-e', 0.63],
    ['triple', 0.57],
  ] as const;
  for (const [kind, expected] of rows) {
    const got = GLAZING[kind].gValue.value;
    const what = `g-value, ${kind}`;
    compare({
      topic: TOPIC,
      what,
      unit: '-',
      source,
      mark: 'from memory',
      expected,
      got,
      ...PRINTED,
    });
  }
});

test('the range of a solid wall holds what was measured', () => {
  const { low, high } = wallUValue('solid brick', '1900-1929');
  expect(low).toBeLessThanOrEqual(1.3 - 0.4);
  expect(high).toBeGreaterThanOrEqual(1.3 + 0.4);
});

describe('water', () => {
  const source =
    'four lists: solar housing handbook, NZ roofing code, cold-climate list, council leaflet';
  const band = (what: string, unit: string, low: number, high: number, got: number) =>
    compareBand({
      topic: TOPIC,
      what,
      unit,
      source,
      mark: 'published',
      low,
      high,
      got,
      because: 'the lists differ; the preset lies between them',
    });

  test('of bodies and habits lies within the published lists', () => {
    band('water of a person asleep', 'g/h', 40, 60, ASLEEP.water.value);
    band('water of a person awake', 'g/h', 40, 120, AWAKE.water.value);
    band('a shower of ten minutes', 'L', 0.4, 1.14, ACTIVITIES.shower.water.value);
    band('a dinner', 'L', 0.45, 1.5, ACTIVITIES.cooking.water.value);
    band('a load of laundry', 'L', 2, 5, ACTIVITIES['laundry dried indoors'].water.value);
    band('a plant, a day', 'L', 0.168, 0.36, ACTIVITIES.plants.water.value);
  });
});

test('floors over open air have the U-values of the UK assessment', () => {
  const source = 'UK assessment of existing homes (reduced data), exposed upper floors';
  const rows: readonly [Age, number][] = [
    ['before 1900', 1.2],
    ['1983-1990', 1.2],
    ['1991-1995', 0.51],
    ['1996-2002', 0.51],
    ['2003-2006', 0.25],
    ['2007 on', 0.22],
  ];
  for (const [age, expected] of rows) {
    const { value: got, low, high } = exposedFloorUValue(age);
    const what = `floor over open air, ${age}`;
    compare({
      topic: TOPIC,
      what,
      unit: 'W/(m2 K)',
      source,
      mark: 'from memory',
      expected,
      got,
      ...PRINTED,
    });
    expect(low).toBeLessThan(got);
    expect(high).toBeGreaterThan(got);
  }
});

test('every wall of every age loses less the younger it is, within its range', () => {
  for (const wall of WALLS) {
    const values = AGES.map((age) => wallUValue(wall, age));
    values.forEach(({ value, low, high }, k) => {
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
      if (k > 0) expect(value).toBeLessThanOrEqual(values[k - 1]!.value);
    });
  }
});

test('more wool loses less, and the draughtier the leakier', () => {
  for (let loft = 0; loft < 400; loft += 10) {
    expect(roofUValue(loft + 10).value).toBeLessThan(roofUValue(loft).value);
  }
  const ach = (['very tight', 'tight', 'average', 'leaky', 'very leaky'] as const).map(
    (w) => ACH50[w].value,
  );
  expect(ach).toEqual(ach.toSorted((a, b) => a - b));
});

test('a year has the age band it lies in', () => {
  expect([1850, 1899, 1900, 1911, 1929, 1930, 1975, 2002, 2003, 2007, 2024].map(ageOf)).toEqual([
    'before 1900',
    'before 1900',
    '1900-1929',
    '1900-1929',
    '1900-1929',
    '1930-1949',
    '1967-1975',
    '1996-2002',
    '2003-2006',
    '2007 on',
    '2007 on',
  ]);
});

test('nobody of any pattern is in two places at once', () => {
  const twice: string[] = [];
  for (const [pattern, stays] of Object.entries(STAYS)) {
    const taken = new Set<number>();
    for (const { days, from, to } of stays) {
      for (let day = 0; day < 7; day++) {
        if (((days >> day) & 1) === 0) continue;
        for (let m = from; m < to; m++) {
          const minute = (day * 1440 + m) % 10_080;
          if (taken.has(minute)) twice.push(`${pattern}, minute ${minute}`);
          taken.add(minute);
        }
      }
    }
  }
  expect(twice).toEqual([]);
});

test('everybody sleeps between six and sixteen hours a day', () => {
  for (const stays of Object.values(STAYS)) {
    const asleep = stays
      .filter((stay) => stay.asleep)
      .reduce(
        (sum, { days, from, to }) =>
          sum + (to - from) * [...days.toString(2)].filter((b) => b === '1').length,
        0,
      );
    expect(asleep / 7 / 60).toBeGreaterThan(6);
    expect(asleep / 7 / 60).toBeLessThan(16);
  }
});
