import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { compare } from '../../reference/compare.ts';
import { homeWith, readingProblems } from '../problems-of.ts';

const prepared = (more: string) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), { plan: null, set: [], files: new Map() });

describe('what the air carries', () => {
  test('carbon dioxide, organic vapours and fine particles, with levels outdoors', () => {
    const { species } = prepared('air: { outdoors: { tvoc: 0.03 mg/m3 } }').home;
    expect(species.map(({ name, unit, outdoor }) => [name, unit, outdoor])).toEqual([
      ['co2', 'ppm', 420],
      ['tvoc', 'µg/m3', 30],
      ['pm25', 'µg/m3', 8],
    ]);
    expect(species.map(({ penetration }) => penetration)).toEqual([1, 1, 0.8]);
  });

  test('windows hold back what a scenario says, of pollen what is assumed', () => {
    const { home, assumed } = prepared(
      'air: { species: [pollen], window penetration: { pm25: 40 % } }',
    );
    expect(home.species.map((s) => s.windowPenetration)).toEqual([undefined, undefined, 1, 0.4]);
    expect(assumed.map(({ path }) => path)).toContain('/air/window penetration/pollen');
    const words = 'air.window penetration.pm25: expected a share of 1 from 0 to 1, got 1.2';
    expect(readingProblems(homeWith('air: { window penetration: { pm25: 1.2 } }'))[0]).toContain(
      words,
    );
  });

  test('levels by month, and their mean', () => {
    const months = [12, 12, 9, 6, 6, 6, 6, 6, 6, 9, 9, 9];
    const { species } = prepared(`air: { outdoors: { pm25: [${months.join(', ')}] } }`).home;
    expect(species[2]).toMatchObject({ outdoor: 8, outdoorByMonth: months });
    expect(species[0]).not.toHaveProperty('outdoorByMonth');
  });

  test('settles by the hour, in a room of its own faster', () => {
    const text = homeWith('air: { deposition: { pm25: 0.36 } }').replace(
      'bedroom: { floor area: 12 }',
      'bedroom: { floor area: 12, deposition: { pm25: 0.72, tvoc: 0.1 } }',
    );
    const { rooms } = preparePlan(readScenario(text, 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map() },
    }).home;
    expect(rooms[0]!.deposition).toEqual([0, 0, 0.36 / 3600]);
    expect(rooms[1]!.deposition).toEqual([0, 0.1 / 3600, 0.72 / 3600]);
  });

  test('particles come in and stay as in homes that were measured', () => {
    const { home } = prepared('');
    const settling = home.rooms[0]!.deposition[2]! * 3600;
    compare({
      topic: 'Presets',
      what: 'particles of outdoors that stay indoors at 0.5 air changes an hour, P a/(a + k)',
      unit: '-',
      source: 'Handbook of Indoor Air Quality 2021: infiltration factor of PM2.5 about 0.50',
      mark: 'published',
      expected: 0.5,
      got: (home.species[2]!.penetration * 0.5) / (0.5 + settling),
      tolerance: { absolute: 0.05 },
      because: '"about 0.50"',
    });
  });

  test('bands for each, with the hours they are a mean over', () => {
    const { species } = prepared('bands: { pm25: { high: 10 } }').bands[0]!;
    expect(species['pm25']).toMatchObject({ high: 10, hours: 24, reason: 'set in the scenario' });
    expect(species['tvoc']).toMatchObject({ high: 1000, hours: 0 });
  });
});

describe('what people give off and do', () => {
  test('bodies, cooking, candles: each time so many milligrams', () => {
    const { household } = prepared(`household:
  people: [{ who: adult }]
  bodies: { awake: { tvoc: 720 } }
  activities: [{ what: cooking, lasts: 30 min, particles: 9 mg, tvoc: 36 mg }, { what: candles, number: 3, particles: 10 }, { what: fridge }]`);
    expect(household.people[0]!.awake.species[1]).toBeCloseTo(0.2, 12);
    expect(household.people[0]!.awake.species[2]).toBe(0);
    const [cooking, candles, fridge] = household.activities;
    expect(cooking!.species).toEqual([0, 20, 5]);
    expect(candles!.species[2]! * 7200).toBeCloseTo(30_000, 6);
    expect(fridge!.species).toEqual([0, 0, 0]);
    expect([cooking, candles, fridge].map((a) => a!.stopsFor)).toEqual([
      'an empty home',
      'an empty home',
      undefined,
    ]);
  });

  test('paint gives off all of its amount in two parts', () => {
    const { household } = prepared(
      'household: { paint: [{ room: bedroom, on: 03-15, tvoc: 7 g }] }',
    );
    const parts = household.decaying!;
    expect(parts.map(({ room, from }) => [room, from])).toEqual([
      [1, 315],
      [1, 315],
    ]);
    const all = parts.reduce(
      (sum, { species, timeConstant }) => sum + species[1]! * timeConstant,
      0,
    );
    expect(all).toBeCloseTo(7e6, 3);
    expect(prepared('').household).not.toHaveProperty('decaying');
  });

  test('irregular days and holidays, each person’s own beside those of all', () => {
    const { people } = prepared(`household:
  holidays: [{ from: 12-24, to: 01-02 }]
  people:
    - { irregular: { spread: 1 h, days out: 10 % } }
    - { holidays: [{ from: 08-01, to: 08-14 }] }`).household;
    expect(people[0]!.irregular).toEqual({ minutes: 60, asSunday: 0.04, out: 0.1 });
    expect(people[0]!.holidays).toEqual([{ from: 1224, to: 102 }]);
    expect(people[1]).not.toHaveProperty('irregular');
    expect(people[1]!.holidays).toEqual([
      { from: 1224, to: 102 },
      { from: 801, to: 814 },
    ]);
  });
});

describe('heat sources', () => {
  const source = (words: string) => prepared(`heating: { ${words} }`).home.sources[0]!;

  test('power and water by the weather, backup, who goes short', () => {
    expect(
      source(
        'source: heat pump, power: [{ outdoor: -7, power: 5 kW }, { outdoor: 7, power: 7000 }], backup: 3 kW, sharing: first come, water temperature: [{ outdoor: -5, water: 50 }, { outdoor: 15, water: 30 }]',
      ),
    ).toMatchObject({
      power: 7000,
      powerCurve: { outdoor: [-7, 7], value: [5000, 7000] },
      backup: 3000,
      sharing: 'first come',
      waterTemperature: 50,
      waterCurve: { outdoor: [-5, 15], value: [50, 30] },
    });
  });

  test('a COP table of several waters is read along the water that is asked for', () => {
    const table =
      'cop: [{ outdoor: -7, water: 35, cop: 2.8 }, { outdoor: -7, water: 55, cop: 2.0 }, { outdoor: 7, water: 35, cop: 4.4 }, { outdoor: 7, water: 55, cop: 3.0 }]';
    const led = (water: string) => {
      const { conversion } = source(`source: heat pump, ${table}, water temperature: ${water}`);
      return conversion;
    };
    expect(led('45')).toMatchObject({ by: 'cop', outdoor: [-7, 7] });
    const { cop } = led('45') as { cop: readonly number[] };
    expect(cop[0]).toBeCloseTo(2.4, 12);
    expect(cop[1]).toBeCloseTo(3.7, 12);
    const bent = led('[{ outdoor: -7, water: 55 }, { outdoor: 7, water: 35 }]') as {
      readonly cop: readonly number[];
    };
    expect(bent.cop).toEqual([2, 4.4]);
    // Half-way between 2.8 and 4.4, at 35 °C.
    const kinked = led(
      '[{ outdoor: -7, water: 55 }, { outdoor: 0, water: 35 }, { outdoor: 7, water: 35 }]',
    ) as { readonly cop: readonly number[] };
    expect(kinked.cop).toHaveLength(3);
    expect(kinked.cop[1]).toBeCloseTo(3.6, 12);
  });

  test('the usual heat pump does better with cooler water, and as usual with the usual', () => {
    const cop = (more: string) =>
      (source(`source: heat pump${more}`).conversion as { readonly cop: readonly number[] }).cop;
    expect(cop('')).toEqual(cop(', water temperature: 42'));
    const [warm, cool] = [cop(', water temperature: 50'), cop(', water temperature: 35')];
    cop('').forEach((usual, k) => {
      expect(cool[k]).toBeGreaterThan(usual);
      expect(warm[k]).toBeLessThan(usual);
    });
    // Ideal COP at 0 °C outdoors: 315.15/42 with water of 42 °C, 308.15/35 with 35 °C.
    expect(cool[1]! / cop('')[1]!).toBeCloseTo(308.15 / 35 / (315.15 / 42), 9);
  });
});
