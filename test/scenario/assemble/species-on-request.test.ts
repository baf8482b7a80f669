import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { compare } from '../../reference/compare.ts';
import { homeWith, readingProblems } from '../problems-of.ts';

const prepared = (more: string) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), { plan: null, set: [], files: new Map() });

describe('species on request', () => {
  test('pollen by its season, nitrogen dioxide at one level', () => {
    const { home, assumed } = prepared('air: { species: [no2, pollen] }');
    expect(home.species.map(({ name }) => name)).toEqual(['co2', 'tvoc', 'pollen', 'no2', 'pm25']);
    expect(home.species[2]).toMatchObject({
      ...{ unit: 'grains/m3', outdoor: 9, penetration: 0.2 },
      outdoorByMonth: [0, 0, 0, 0, 10, 50, 40, 8, 0, 0, 0, 0],
    });
    expect(home.rooms[0]!.deposition.slice(2, 4)).toEqual([4 / 3600, 0.9 / 3600]);
    expect(assumed.map(({ path }) => path)).toContain('/air/outdoors/pollen');
  });

  test.each([
    ['air: { outdoors: { no2: 20 } }', 'air.outdoors.no2'],
    ['air: { window penetration: { no2: 50 % } }', 'air.window penetration.no2'],
    [
      'devices: { cleaner: { kind: purifier, room: bedroom, pollen share: 0.9 } }',
      'devices.cleaner.pollen share',
    ],
    ['household: { activities: [{ what: cooking, no2: 5 mg }] }', 'household.activities #1.no2'],
    ['bands: { pollen: { high: 20 } }', 'bands.pollen'],
    ['sensors: { no2: none }', 'sensors.no2'],
    ['sensors: { rooms: { bedroom: { no2: none } } }', 'sensors.rooms.bedroom.no2'],
    [
      'household: { airing: [{ room: bedroom, when: [{ room: outdoors, reading: pollen, under: 9 }] }] }',
      'household.airing #1.when #1.reading',
    ],
    [
      'household: { airing: [{ room: bedroom, when: [{ room: outdoors, reading: temperature, over: 9 }], until: [{ room: outdoors, reading: pollen, over: 9 }] }] }',
      'household.airing #1.until #1.reading',
    ],
    [
      'rules: [{ name: a, when: [{ room: bedroom, reading: no2, over: 200 }], response: [{ tell: air }] }]',
      'rules #1.when #1.reading',
    ],
  ])('one that is not listed is refused: %s', (text, where) => {
    const name = text.includes('pollen') ? 'pollen' : 'no2';
    const words = `${where}: expected a species that air.species lists, got ${name}`;
    expect(readingProblems(homeWith(text)).join('\n')).toContain(words);
    const right = text.startsWith('air: {')
      ? text.replace('air: {', 'air: { species: [no2],')
      : `${text}\nair: { species: [no2, pollen] }`;
    expect(readingProblems(homeWith(right))).toEqual([]);
  });

  test.each([
    ['air: { species: [ozone] }', 'one of: pollen, no2'],
    ['air: { species: [no2], outdoors: { no2: 2 ppm } }', 'µg/m3'],
    ['air: { species: [pollen], outdoors: { pollen: 2 µg/m3 } }', 'grains'],
    ['air: { species: [no2], deposition: { no2: -1 } }', 'from 0 to 20'],
    ['air: { species: [pollen], outdoors: { pollen: [1, 2] } }', 'twelve, January first'],
  ])('wrong input: %s', (text, words) => {
    expect(readingProblems(homeWith(text)).join('\n')).toContain(words);
  });
});

describe('flames', () => {
  const activity = (what: string) =>
    prepared(`air: { species: [no2] }
household: { activities: [{ what: ${what} }] }`).household.activities[0]!;
  const row = { topic: 'Air quality', because: 'printed to four digits' } as const;

  test('a kilowatt of gas for an hour, besides the water of the food', () => {
    const { species, electricity, heat, vapour } = activity(
      'cooking, at: "18:00", lasts: 1 h, gas: 1 kWh, water: 0',
    );
    expect(electricity).toBe(0);
    compare({
      ...{ ...row, what: 'NO2 of a gas hob, 1 kWh', unit: 'mg', mark: 'published' },
      ...{ source: 'Lebel and others 2022: 7.8 ng/J', expected: 7.8 * 3.6 },
      ...{ got: species[2]! * 3.6, tolerance: { absolute: 0.01 } },
    });
    compare({
      ...{ ...row, what: 'CO2 of 1 kWh of methane, gross', unit: 'L', mark: 'closed form' },
      ...{ source: '1 mol a mol of 802.3 kJ net, 24.055 L at 20 °C; gross 890.3 kJ' },
      ...{ expected: (3600 / 890.3) * 24.055, got: species[0]! * 3.6 },
      tolerance: { relative: 0.003 },
    });
    compare({
      ...{ ...row, what: 'water of 1 kWh of methane, gross', unit: 'g', mark: 'closed form' },
      ...{ source: '2 mol of 18.015 g a mol of 890.3 kJ', got: vapour * 3.6e6 },
      ...{ expected: (3600 / 890.3) * 2 * 18.015, tolerance: { relative: 0.003 } },
    });
    // Net over gross of methane, 802.3 over 890.3, is 0.901; latent heat is taken at 20 °C.
    expect(heat / 1000).toBeCloseTo(0.901, 2);
  });

  test('its gas is bought: a hob of 1 kWh a day in a home without other gas', () => {
    const { household, prices, assumed } = prepared(`heating: { source: none }
household: { activities: [{ what: cooking, at: "18:00", lasts: 30 min, gas: 1 kWh }] }`);
    expect(household.activities[0]!.gas).toBe(2000);
    expect(Object.keys(prices.fuels)).toEqual(['gas', 'electricity']);
    expect(assumed.map(({ path }) => path)).toContain('/money/gas/price');
    expect(activity('cooking').gas).toBeUndefined();
  });

  test('a candle of paraffin, C25H52', () => {
    const { species, heat, vapour } = activity('candles, number: 2, at: "20:00"');
    compare({
      ...{ ...row, what: 'CO2 of a candle of 5 g/h', unit: 'L/h', mark: 'closed form' },
      ...{ source: '25 mol a mol of 352.7 g, 24.055 L a mol', got: (species[0]! * 3.6) / 2 },
      ...{ expected: ((5 * 25) / 352.7) * 24.055, tolerance: { relative: 0.01 } },
    });
    expect(heat / 2).toBeCloseTo(60, 6); // 43 MJ/kg of 5 g/h
    expect((vapour / 2) * 3.6e6).toBeCloseTo(6.5, 6); // 13 g over two hours
  });
});
