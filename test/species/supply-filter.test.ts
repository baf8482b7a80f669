import { describe, expect, test } from 'vitest';
import type { BalancedVentilation } from '../../src/home/devices.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { SPECIES } from '../../src/species/species-table.ts';
import { supplyFilterOf } from '../../src/species/supply-filter.ts';
import { readingProblems } from '../scenario/problems-of.ts';
import { readOnce } from '../scenario/read-once.ts';

describe('classes of ISO 16890', () => {
  test.each([
    ['ePM1 50 %', 'ePM1', 0.5],
    ['ISO ePM2,5 65%', 'ePM2.5', 0.65],
    ['epm10 70 %', 'ePM10', 0.7],
    ['ePM10 100 %', 'ePM10', 1],
    ['coarse', 'coarse', 0],
    ['ISO Coarse 60 %', 'coarse', 0],
    ['none', 'none', 0],
  ])('%s', (written, group, efficiency) => {
    expect(supplyFilterOf(written)).toEqual({ group, efficiency });
  });

  test('a group takes half of its particles at least', () => {
    for (const text of ['ePM1 45 %', 'ePM1 101 %', 'ePM1', 'ePM4 50 %', 'F7', '', '50 %']) {
      expect(supplyFilterOf(text)).toBeNull();
    }
  });
});

const CLASSES = [
  'none',
  'coarse',
  'ePM10 50 %',
  'ePM10 80 %',
  'ePM2.5 65 %',
  'ePM1 50 %',
  'ePM1 80 %',
];

describe.each(SPECIES.filter(({ supplyFilter }) => supplyFilter !== undefined))(
  '$name in the supply air',
  ({ supplyFilter }) => {
    test('no class holds more than a finer one, and each lies in its range', () => {
      const held = CLASSES.map((text) => supplyFilter!.held(supplyFilterOf(text)!));
      const values = held.map(({ value }) => value);
      expect(values[0]).toBe(0);
      expect(values).toEqual(values.toSorted((a, b) => a - b));
      for (const { value, low, high } of held) {
        expect(low).toBeGreaterThanOrEqual(0);
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
        expect(high).toBeLessThanOrEqual(1);
      }
    });
  },
);

test('fine particles by the classes that trade tables set side by side', () => {
  const held = (text: string) =>
    SPECIES.find(({ name }) => name === 'pm25')!.supplyFilter!.held(supplyFilterOf(text)!).value;
  // as quoted of Eurovent 4/23: ePM1 40 to 65 % with 65 to 75 % under 2.5 µm, 65 to 90 with 75 to 95
  expect(held('ePM1 50 %')).toBeCloseTo(0.65, 9);
  expect(held('ePM1 65 %')).toBeCloseTo(0.755, 9);
  expect(held('ePM1 90 %')).toBeCloseTo(0.93, 9);
  expect(held('ePM2.5 65 %')).toBe(0.65);
  // ePM10 40 to 80 % with 10 to 50, by a straight line
  expect(held('ePM10 50 %')).toBeCloseTo(0.2, 9);
  expect(held('ePM10 70 %')).toBeCloseTo(0.4, 9);
  // what holds less than half under 2.5 µm is named after coarser particles
  expect(held('ePM10 95 %')).toBe(0.5);
});

test('a class may hold less where air passes the filter by, and hardly more', () => {
  const range = (text: string) => {
    const { low, high } = SPECIES.find(({ name }) => name === 'pm25')!.supplyFilter!.held(
      supplyFilterOf(text)!,
    );
    return [low, high].map((share) => Number(share.toFixed(3)));
  };
  expect(range('ePM2.5 65 %')).toEqual([0.5, 0.7]);
  expect(range('ePM1 50 %')).toEqual([0.4, 0.7]);
  expect(range('ePM10 60 %')).toEqual([0.1, 0.45]);
});

test('grains by the group of the class, as the model says', () => {
  const held = (text: string) =>
    SPECIES.find(({ name }) => name === 'pollen')!.supplyFilter!.held(supplyFilterOf(text)!).value;
  expect(['ePM1 50 %', 'ePM2.5 50 %', 'ePM10 90 %', 'coarse'].map(held)).toEqual([
    ...[0.98, 0.98, 0.95, 0.8],
  ]);
});

const text = (filter: string) => `title: A
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
home: { rooms: { den: { floor area: 12 }, bath: { use: bathroom, floor area: 5 } } }
devices: { unit: { kind: balanced ventilation, supplies: { den: 30 }, extracts: { bath: 30 }${filter} } }
air: { species: [pollen], own species: { smell: { unit: µg/m3, outdoors: 1, supply filter share: 0.2 } } }
`;
const prepared = (filter: string) => {
  const scenario = readOnce(text(filter), 'a.yaml');
  const { home, assumed } = preparePlan(scenario, { plan: 'as-lived', set: [], files: new Map() });
  const does = home.devices[0]!.does as BalancedVentilation;
  const { held } = does;
  const told = assumed.filter(({ path }) => /filter|held/.test(path));
  return {
    does,
    held: Object.fromEntries(home.species.map(({ name }, s) => [name, held![s]])),
    told: told.map(({ path, value }) => [path, value]),
  };
};

describe('the filter of a ventilation unit', () => {
  test('is a coarse one where nobody says, and shares are listed by its class', () => {
    const { held, told } = prepared('');
    expect({ held, told }).toEqual({
      held: { co2: 0, tvoc: 0, pollen: 0.8, pm25: 0.1, smell: 0.2 },
      told: [
        ['/devices/unit/filter', 'coarse'],
        ['/devices/unit/pollen held', 0.8],
        ['/devices/unit/particles held', 0.1],
      ],
    });
  });

  test('is that of its class, or what was measured of it', () => {
    const { held, told } = prepared(', filter: ePM2.5 70 %, pollen held: 0.9');
    expect(held).toMatchObject({ pollen: 0.9, pm25: 0.7 });
    expect(told).toEqual([['/devices/unit/particles held', 0.7]]);
    const none = { held: { pollen: 0, pm25: 0, smell: 0 }, told: [] };
    expect(prepared(', filter: none')).toMatchObject(none);
    expect(prepared(', filter: none, particles held: 0')).toMatchObject(none);
  });

  test('costs neither flow nor electricity, as the limits of the model say', () => {
    const without = (filter: string) => {
      const { held: _, ...rest } = prepared(filter).does;
      return rest;
    };
    expect(without(', filter: ePM1 80 %')).toEqual(without(', filter: none'));
    expect(without('').power).toBeGreaterThan(0);
  });

  test('that is none holds nothing', () => {
    expect(readingProblems(text(', filter: none, pollen held: 0.5'))).toEqual([
      'h.yaml:5:109: devices.unit.pollen held: expected nothing beside "filter: none", got 0.5',
    ]);
  });

  test('that nobody knows is refused, with a word on classes that were withdrawn', () => {
    const words =
      'expected none, coarse, or a class of ISO 16890: ePM1, ePM2.5 or ePM10 with 50 % or more, such as ePM1 50 %';
    expect(readingProblems(text(', filter: ePM1 40 %'))).toEqual([
      `h.yaml:5:103: devices.unit.filter: ${words}, got "ePM1 40 %"`,
    ]);
    expect(readingProblems(text(', filter: F7'))).toEqual([
      `h.yaml:5:103: devices.unit.filter: ${words}, got "F7" (classes of EN 779 were withdrawn in 2018: G4 is about coarse, M5 ePM10 50 %, F7 ePM1 50 %, F9 ePM1 80 %)`,
    ]);
  });
});
