import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainUValue } from '../../src/home/chain.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { InputProblems } from '../../src/units/problem.ts';
import { compare } from '../reference/compare.ts';
import { homeWith, problemsOf } from './problems-of.ts';

const prepared = (text: string, files: Record<string, string> = {}) =>
  preparePlan(readScenario(text, 'h.yaml'), {
    plan: null,
    set: [],
    files: new Map(Object.entries(files)),
  });

describe('what nobody gave is filled in and listed', () => {
  const plan = prepared(homeWith(''));

  test('each with a value, a range around it and a source', () => {
    expect(plan.assumed.length).toBeGreaterThan(40);
    for (const { path, value, low, high, source } of plan.assumed) {
      expect(path).toMatch(/^\//);
      expect(source).not.toBe('');
      if (typeof value !== 'number') continue;
      expect(low, path).toBeLessThanOrEqual(value);
      expect(high, path).toBeGreaterThanOrEqual(value);
    }
  });

  test('once each', () => {
    const paths = plan.assumed.map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
  });

  test('what was given is not listed', () => {
    const given = prepared(homeWith('heating: { source: boiler, setpoint: 20, efficiency: 0.9 }'));
    const paths = given.assumed.map(({ path }) => path);
    expect(paths).not.toContain('/heating/setpoint');
    expect(paths).not.toContain('/heating/efficiency');
    expect(plan.assumed.map(({ path }) => path)).toContain('/heating/efficiency');
    expect(given.home.sources[0]?.conversion).toEqual({ by: 'efficiency', efficiency: 0.9 });
  });

  test('a word given still leaves its number assumed', () => {
    const draughty = prepared(homeWith('').replace('home:', 'home:\n  build: { draughts: leaky }'));
    expect(draughty.assumed.find(({ path }) => path === '/home/leakage/ach50')).toMatchObject({
      value: 14,
      low: 10,
      high: 18,
    });
  });
});

describe('a home', () => {
  test('lists one row of everything a room', () => {
    const { home, household, bands, mouldClasses } = prepared(homeWith(''));
    expect(home.rooms.map(({ name }) => name)).toEqual(['living', 'bedroom']);
    expect([bands.length, mouldClasses.length, household.setpoints.length]).toEqual([2, 2, 2]);
    expect(household.openings).toHaveLength(home.openings.length);
    expect(household.doorways).toHaveLength(home.doorways.length);
    expect(home.leakage.share.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    for (const room of home.rooms) expect(room.deposition).toHaveLength(home.species.length);
  });

  test('has walls, roof and floor where storey and shape put them', () => {
    const { home } = prepared(`title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, storeys: 2 }
home:
  build: { shape: detached, wall u-value: 2, roof u-value: 0.2, window u-value: 3 }
  rooms:
    living: { floor area: 25, height: 2, outer sides: 2, panes: [{ area: 4 }] }
    bedroom: { floor area: 25, height: 2, outer sides: 2, panes: [{ area: 2 }], over: living }`);
    const of = (kind: string) => home.elements.filter((element) => element.kind === kind);
    const area = (kind: string) => of(kind).reduce((sum, element) => sum + element.area, 0);
    // Two sides of 5 m by 2 m in each room, less the windows.
    expect(area('wall')).toBeCloseTo(2 * 20 - 6, 9);
    expect(of('roof').map(({ room, area: a }) => [room, a])).toEqual([[1, 25]]);
    expect(of('floor').map(({ room, far }) => [room, far.to])).toEqual([[0, 'ground']]);
    expect(of('partition').map(({ far }) => far)).toEqual([{ to: 'room', room: 0 }]);
    const u = 1 / of('wall')[0]!.chain.resistance.reduce((sum, r) => sum + r, 0);
    expect(u).toBeCloseTo(2, 9);
  });

  test('a floor over open air has a U-value of its own, listed where there is one', () => {
    const over = (build: string) =>
      prepared(`title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30 }
home:
  build: { ${build} }
  rooms: { den: { floor area: 16, below: outdoors }, hall: { floor area: 9 } }`);
    const assumed = over('age: 1960, loft: 300 mm');
    const path = '/home/build/exposed floor u-value';
    expect(assumed.assumed.find((each) => each.path === path)).toMatchObject({
      value: 1.2,
      low: 0.48,
      high: 2.04,
    });
    const floorOf = ({ home }: typeof assumed) =>
      home.elements.find(({ kind, far }) => kind === 'floor' && far.to === 'outdoors')!;
    expect(chainUValue(floorOf(assumed).chain)).toBeCloseTo(1.2, 9);
    const given = over('exposed floor u-value: 0.3');
    expect(chainUValue(floorOf(given).chain)).toBeCloseTo(0.3, 9);
    expect(given.assumed.map((each) => each.path)).not.toContain(path);
    expect(prepared(homeWith('')).assumed.map((each) => each.path)).not.toContain(path);
  });

  test('a room over another is a storey above it; leaks come in by walls and windows in full, by roof and lowest floor at half', () => {
    const { home } = prepared(`title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, storeys: 2 }
home:
  build: { shape: detached }
  background vents: 0
  rooms:
    low: { floor area: 25, height: 2, outer sides: 2, panes: [{ area: 4 }] }
    high: { floor area: 25, height: 2, outer sides: 2, panes: [{ area: 2 }], over: low }
    inner: { floor area: 9, outer sides: 0, above: room, panes: [] }`);
    expect(home.elements.filter(({ room, kind }) => room === 1 && kind === 'floor')).toEqual([]);
    const weights = [20 + 25 / 2, 20 + 25 / 2, 9 / 2];
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    home.leakage.share.forEach((share, k) => {
      expect(share).toBeCloseTo(weights[k]! / all, 9);
    });
  });

  test('given element by element has nothing added', () => {
    const { home } = prepared(`title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30 }
home:
  rooms:
    box:
      floor area: 20
      elements:
        - { kind: wall, area: 10, u-value: 1, heat capacity: 100, faces: west }
        - { kind: floor, area: 20, u-value: 0.5, to: { neighbour: 18 } }
        - { kind: roof, area: 20, layers: [{ thickness: 20 cm, conductivity: 1.3, density: 2000, specific heat: 1000 }] }
        - { kind: partition, area: 8, u-value: 2, to: nothing }
      panes: [{ area: 2, u-value: 1.4, g-value: 50 %, frame: 0.2, shading: 0, faces: S }]`);
    expect(home.elements.map(({ far }) => far)).toEqual([
      { to: 'outdoors', azimuth: 270, tilt: 90, absorptance: 0.6 },
      { to: 'neighbour', temperature: 18 },
      { to: 'outdoors', azimuth: 180, tilt: 0, absorptance: 0.6 },
      { to: 'nothing' },
    ]);
    expect(home.panes[0]).toMatchObject({
      uValue: 1.4,
      gValue: 0.5,
      frameShare: 0.2,
      unshaded: 1,
      azimuth: 180,
    });
  });

  test('with one blower-door figure leaks what that figure says', () => {
    const { home } = prepared(homeWith('').replace('home:', 'home:\n  leakage: { ach50: 7.5 }'));
    expect(home.leakage.ach50).toBe(7.5);
  });
});

test('a heat source of each kind', () => {
  const source = (heating: string) => prepared(homeWith(`heating: ${heating}`)).home.sources[0];
  expect(source('{ source: boiler, fuel: oil }')).toMatchObject({ fuel: 'oil' });
  expect(source('{ source: direct electric }')).toMatchObject({
    fuel: 'electricity',
    waterTemperature: Number.NaN,
    conversion: { by: 'efficiency', efficiency: 1 },
  });
  expect(source('{ source: heat pump, cop: 3 }')?.conversion).toEqual({
    by: 'cop',
    outdoor: [0],
    cop: [3],
  });
  expect(source('{ source: district heat }')?.fuel).toBe('district heat');
  expect(source('{ source: none }')).toBeUndefined();
});

describe('thermostats', () => {
  const lines = (heating: string) => prepared(homeWith(`heating: ${heating}`)).household.setpoints;
  const spell = (from: number, to: number, value: number, days = 127) => ({
    days,
    from,
    to,
    value,
  });

  test('always, by hours, by the clock, and off', () => {
    expect(lines('{ setpoint: 20 }')[0]).toEqual({ base: 20, spells: [] });
    expect(lines('{ setpoint: 20, hours: "06:00-09:00", setback: 16 }')[0]).toEqual({
      base: 16,
      spells: [spell(360, 540, 20)],
    });
    expect(
      lines('{ setpoint: [{ days: weekends, from: "08:00", to: "01:00", setpoint: 21 }] }')[0],
    ).toEqual({
      base: 5,
      spells: [spell(480, 1500, 21, 0b1100000)],
    });
    expect(lines('{ setpoint: 20, rooms: { bedroom: off } }')[1]).toEqual({ base: 5, spells: [] });
    expect(lines('{ source: none }')[0]?.base).toBe(Number.NEGATIVE_INFINITY);
  });

  test('a night setting lowers, and never raises', () => {
    const night = 'night: { setpoint: 15, from: "22:30", to: "06:00" }';
    expect(lines(`{ setpoint: 21, ${night} }`)[0]).toEqual({
      base: 21,
      spells: [spell(1350, 1800, 15)],
    });
    const schedule = lines(`{ setpoint: 21, hours: "05:00-23:00", setback: 12, ${night} }`)[0]!;
    const at = (minute: number) =>
      schedule.spells.findLast(({ from, to }) => minute >= from && minute < to)?.value ??
      schedule.base;
    expect([at(0), at(310), at(370), at(1360), at(1400)]).toEqual([12, 15, 21, 15, 12]);
  });

  test('months: a heating season, a warmer winter, and nights of the winter only', () => {
    const bits = (...names: number[]) => names.reduce((sum, m) => sum | (1 << (m - 1)), 0);
    const cold = bits(10, 11, 12, 1, 2, 3, 4);
    const season = '{ months: Oct-Apr, from: "00:00", to: "24:00" }';
    expect(lines(`{ setpoint: 20, hours: [${season}], setback: 12 }`)[0]).toEqual({
      base: 12,
      spells: [{ ...spell(0, 1440, 20), months: cold }],
    });
    const night = 'night: { setpoint: 15, months: Oct-Apr, from: "22:30", to: "06:00" }';
    expect(lines(`{ setpoint: 21, ${night} }`)[0]).toEqual({
      base: 21,
      spells: [{ ...spell(1350, 1800, 15), months: cold }],
    });
    const schedule = lines(`{ setpoint: 21, hours: "05:00-23:00", setback: 12, ${night} }`)[0]!;
    expect(schedule.base).toBe(12);
    expect(schedule.spells).toEqual([
      { ...spell(300, 360, 15), months: cold },
      { ...spell(360, 1350, 21), months: cold },
      { ...spell(1350, 1380, 15), months: cold },
      { ...spell(300, 1380, 21), months: 0xfff ^ cold },
    ]);
  });

  test('a room with its own setpoint keeps to the hours of the home', () => {
    const clock = 'setpoint: [{ from: "06:00", to: "09:00", setpoint: 21 }], setback: 14';
    expect(lines(`{ ${clock}, rooms: { bedroom: 17 } }`)[1]).toEqual({
      base: 14,
      spells: [spell(360, 540, 17)],
    });
  });
});

describe('people and what they do', () => {
  test('a litre an hour of CO2 is 0.278 ppm m3/s', () => {
    const { household } = prepared(
      homeWith('household: { people: [{ who: adult }], bodies: { awake: { co2: 0.02 } } }'),
    );
    compare({
      topic: 'Presets',
      what: 'CO2 of 20 L/h as a source',
      unit: 'ppm m3/s',
      source: '20e-3 m3/h, 3600 s, 1e6 ppm',
      mark: 'closed form',
      expected: (20e-3 / 3600) * 1e6,
      got: household.people[0]!.awake.species[0]!,
      tolerance: { relative: 1e-12 },
      because: 'rounding of the arithmetic',
    });
  });

  test('electricity of cooking ends as heat or leaves with the steam', () => {
    const { household } = prepared(
      homeWith(
        'household: { activities: [{ what: cooking, at: "18:00", lasts: 60 min, water: 0.5 L, energy: 1 kWh }] }',
      ),
    );
    const { heat, electricity, vapour } = household.activities[0]!;
    expect(electricity).toBeCloseTo(1000, 9);
    compare({
      topic: 'Presets',
      what: 'heat that half a litre of steam carries',
      unit: 'kWh/L',
      source:
        'Stull 1988, page 641: 2.501 - 0.00237 t MJ/kg at 20 °C, in the manual of the R package bigleaf: latent.heat.vaporization',
      mark: 'published',
      expected: 0.682,
      got: (electricity - heat) / 1000 / 0.5,
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit given here',
    });
    expect(vapour * 3600).toBeCloseTo(0.5, 12);
  });

  test('laundry takes its heat from the room: all of its water dries', () => {
    const { household } = prepared(
      homeWith(
        'household: { activities: [{ what: laundry dried indoors, lasts: 10 h, water: 3 L, at: "20:00" }] }',
      ),
    );
    const { vapour, drying, when } = household.activities[0]!;
    expect(vapour).toBe(0);
    expect(drying * 36_000).toBeCloseTo(3, 12);
    expect(when).toEqual([{ days: 127, from: 1200, to: 1800 }]);
  });

  test('airing opens what it names, for as long and as wide', () => {
    const { household, home } = prepared(
      homeWith(
        'household: { airing: [{ room: bedroom, at: ["07:00", "21:00"], lasts: 15, open share: 50 %, days: weekdays }] }',
      ),
    );
    const opened = household.openings.map(({ spells }) => spells.length);
    expect(opened).toEqual(home.openings.map(({ room }) => (room === 1 ? 2 : 0)));
    expect(household.openings.find(({ spells }) => spells.length > 0)?.spells[0]).toEqual({
      days: 0b0011111,
      from: 420,
      to: 435,
      value: 0.5,
    });
  });

  test('airing, activities and stays of some months only', () => {
    const { household } = prepared(
      homeWith(`household:
  people: [{ schedule: [{ room: living, months: all year, from: "08:00", to: "09:00" }] }]
  activities:
    - { what: plants, months: [May, Jun-Aug] }
    - { what: cooking, months: Nov-Feb, at: "18:00", lasts: 30 }
  airing: [{ room: living, months: sept, at: "07:00", lasts: 10 }]`),
    );
    expect(household.people[0]!.schedule[0]).not.toHaveProperty('months');
    expect(household.activities.map(({ when }) => when)).toEqual([
      [{ days: 127, months: 0b0000_1111_0000, from: 0, to: 1440 }],
      [{ days: 127, months: 0b1100_0000_0011, from: 1080, to: 1110 }],
    ]);
    expect(household.openings[0]!.spells.map(({ months }) => months)).toEqual([1 << 8]);
  });

  test('an infant sets the bands of the room it sleeps in', () => {
    const { bands } = prepared(
      homeWith('household: { people: [{ who: infant, sleeps in: bedroom, lives in: living }] }'),
    );
    expect([bands[1]!.temperature.low, bands[1]!.temperature.high]).toEqual([16, 20]);
    expect([bands[0]!.temperature.low, bands[0]!.temperature.high]).toEqual([18, 26]);
    // In mild weather, by the season that is usual in the country, whatever heats.
    expect(bands[1]!.temperature.mild).toEqual({ high: 26, from: 12, hours: 72 });
    expect(bands[0]!.temperature.mild).toBeUndefined();
  });

  test('an upper edge that is given holds in mild weather too', () => {
    const infant = 'household: { people: [{ who: infant, sleeps in: bedroom, lives in: living }] }';
    const of = (bands: string) =>
      prepared(homeWith(`bands: { temperature: ${bands} }\n${infant}`)).bands[1]!.temperature;
    expect(of('{ high: 22 }')).toEqual({ low: 16, high: 22, reason: 'set in the scenario' });
    expect(of('{ low: 17 }')).toMatchObject({ low: 17, high: 20, mild: { high: 26 } });
  });

  test('bands given for all give way to those of a room', () => {
    const text = homeWith(
      'bands: { humidity: { low: 50, high: 60 }, co2: { high: 1200 } }',
    ).replace(
      'bedroom: { floor area: 12 }',
      'bedroom: { floor area: 12, bands: { humidity: { high: 55 } } }',
    );
    const { bands } = prepared(text);
    expect(bands[1]!.humidity).toEqual({ low: 50, high: 55, reason: 'set in the scenario' });
    expect(bands[0]!.species['co2']?.high).toBe(1200);
  });
});

describe('prices', () => {
  const money = (text: string, files = {}) => prepared(homeWith(`money: ${text}`), files).prices;

  test('flat, by night, half-hourly, standing and carbon', () => {
    const prices = money(
      '{ currency: EUR, gas: 0.08, electricity: { day: 0.3, night: 0.2, night hours: "22:00-06:00", standing: 0.4, carbon: 350 g/kWh } }',
    );
    expect(prices.currency).toBe('EUR');
    expect(prices.fuels.gas?.tariff).toEqual({ by: 'flat', price: 0.08 });
    expect(prices.fuels.electricity).toMatchObject({
      tariff: { by: 'blocks', price: 0.3, blocks: [{ from: 1320, to: 360, price: 0.2 }] },
      standing: 0.4,
      carbon: 0.35,
    });
  });

  test('blocks with prices of their own', () => {
    const blocks =
      '[{ price: 0.4, days: weekdays, from: "16:00", to: "19:00" }, { price: 0.1, from: "23:00", to: "05:00" }]';
    const { fuels } = money(`{ electricity: { price: 0.25, blocks: ${blocks}, standing: 0.5 } }`);
    expect(fuels.electricity).toMatchObject({
      tariff: {
        ...{ by: 'blocks', price: 0.25 },
        blocks: [
          { from: 960, to: 1140, days: 0b0011111, price: 0.4 },
          { from: 1380, to: 300, price: 0.1 },
        ],
      },
      standing: 0.5,
    });
  });

  test.each([
    [
      '{ blocks: [{ price: 1, from: "16:00", to: "19:00" }] }',
      'expected blocks only beside a price',
    ],
    [
      '{ price: 1, blocks: [{ price: 1, from: "16:00", to: "19:00" }, { price: 2, from: "18:00", to: "20:00" }] }',
      'expected a time apart from that of #1, got both on ',
    ],
    [
      '{ price: 1, blocks: [{ price: 1, months: Mai, from: "16:00", to: "19:00" }] }',
      'expected all year, a span such as May-Sep, or month names such as [Jan, Feb], got "Mai"',
    ],
    [
      '{ price: 1, blocks: [{ price: 1, months: Oct-Mar, from: "16:00", to: "19:00" }, { price: 2, months: Mar-Apr, from: "18:00", to: "20:00" }] }',
      'expected a time apart from that of #1, got both on ',
    ],
    [
      '{ price: 1, blocks: [{ price: 1, months: Oct-Mar, from: "22:00", to: "06:00" }, { price: 2, months: Apr, from: "05:00", to: "07:00" }] }',
      'expected a time apart from that of #1, got both on ',
    ],
    [
      '{ price: 1, blocks: [{ price: 2, months: Oct-Mar }, { price: 3, months: Mar, from: "18:00" }] }',
      'expected a time apart from that of #1, got both on ',
    ],
    ['{ price: 1, blocks: [{ from: "16:00", to: "19:00" }] }', 'expected a number, got nothing'],
    [
      '{ day: 1, night: 1, night hours: "1:00-2:00", blocks: [] }',
      'expected blocks only beside a price',
    ],
  ])('%s is refused', (electricity, words) => {
    expect(() => money(`{ electricity: ${electricity} }`)).toThrow(words);
  });

  test('a block without hours holds all day, one with a start alone until midnight', () => {
    const blocks = '[{ price: 2, months: Oct-Mar }, { price: 3, months: Apr-Sep, from: "18:00" }]';
    const { fuels } = money(`{ gas: { price: 1, blocks: ${blocks} } }`);
    expect(fuels.gas!.tariff).toMatchObject({
      blocks: [
        { from: 0, to: 1440, price: 2 },
        { from: 1080, to: 1440, price: 3 },
      ],
    });
  });

  test('blocks and night hours of some months', () => {
    const winter = '{ price: 0.4, months: Oct-Mar, from: "16:00", to: "19:00" }';
    const summer = '{ price: 0.1, months: Apr-Sep, from: "16:00", to: "19:00" }';
    const { fuels } = money(`{ electricity: { price: 0.25, blocks: [${winter}, ${summer}] } }`);
    const [OCT_TO_MAR, APR_TO_SEP] = [0b1110_0000_0111, 0b0001_1111_1000];
    expect(fuels.electricity!.tariff).toMatchObject({
      blocks: [
        { from: 960, to: 1140, months: OCT_TO_MAR, price: 0.4 },
        { from: 960, to: 1140, months: APR_TO_SEP, price: 0.1 },
      ],
    });
    const nights = '[{ months: Apr-Sep, from: "00:00", to: "05:00" }]';
    const gas = money(`{ gas: { day: 0.1, night: 0.05, night hours: ${nights} } }`).fuels.gas!;
    expect(gas.tariff).toMatchObject({
      price: 0.1,
      blocks: [{ from: 0, to: 300, months: APR_TO_SEP, price: 0.05 }],
    });
  });

  test('night hours of some days', () => {
    const night =
      '[{ days: weekdays, from: "00:00", to: "07:00" }, { days: weekends, from: "00:00", to: "24:00" }]';
    const { prices } = prepared(
      homeWith(`money: { electricity: { day: 0.3, night: 0.1, night hours: ${night} } }`),
    );
    expect(prices.fuels.electricity?.tariff).toMatchObject({
      blocks: [
        { from: 0, to: 420, days: 0b0011111, price: 0.1 },
        { from: 0, to: 1440, days: 0b1100000, price: 0.1 },
      ],
    });
  });

  test('from a file', () => {
    const csv =
      'time,price\n2024-01-01T00:00Z,0.2\n2024-01-01T00:30Z,-0.01\n2024-01-01T01:00Z,0.3\n';
    const { tariff } = money('{ electricity: { prices: p.csv } }', { 'p.csv': csv }).fuels
      .electricity!;
    expect(tariff).toEqual({
      by: 'series',
      start: Date.UTC(2024, 0, 1) / 1000,
      step: 1800,
      prices: Float64Array.of(0.2, -0.01, 0.3),
    });
  });

  test('from a file with a price that no sum of a year could hold', () => {
    const csv = 'time,price\n2024-01-01T00:00Z,1e308\n2024-01-01T00:30Z,0.2\n';
    expect(problemsOf(() => money('{ electricity: { prices: p.csv } }', { 'p.csv': csv }))).toEqual(
      ['p.csv:2:19: price: expected a price of a kWh, got "1e308"'],
    );
  });

  test('from a file with mistakes, all of them placed', () => {
    const csv =
      'time,price\n2024-01-01T00:00Z,0.2\n2024-01-01 00:30,0.2\n2024-01-01T01:00Z,cheap\n2024-01-01T01:30Z\n2024-01-01T00:00Z,0.1\n';
    expect(problemsOf(() => money('{ electricity: { prices: p.csv } }', { 'p.csv': csv }))).toEqual(
      [
        'p.csv:3:1: time: expected a time with its distance from UTC, such as 2024-01-01T00:30Z, got "2024-01-01 00:30"',
        'p.csv:4:19: price: expected a price of a kWh, got "cheap"',
        'p.csv:5:1: row: expected a time and a price, got 1 cells',
        'p.csv:6:1: time: expected a later time than the row before, got "2024-01-01T00:00Z"',
      ],
    );
  });
});

describe('the place of the weather file is taken where the scenario gives none', () => {
  const text = 'title: T\nweather: w.csv\nhome: { rooms: { den: { floor area: 9 } } }';
  const weather = (latitude: number) => `# title: Made up
# latitude: ${latitude}
# longitude: -1.9
# elevation: 35
time,temperature,relative humidity,wind speed
${['10', '11', '12'].map((hour) => `2023-06-01T${hour}:00Z,14,70,3`).join('\n')}
`;
  const latitudeOf = (plan: ReturnType<typeof prepared>) =>
    plan.assumed.find(({ path }) => path === '/site/latitude')?.value;

  test('for every plan, also when the file is exchanged', () => {
    const scenario = readScenario(text, 'h.yaml');
    const files = new Map([['w.csv', weather(54.2)]]);
    const choice = { plan: null, set: [], files };
    expect(latitudeOf(preparePlan(scenario, choice))).toBe(54.2);
    expect(latitudeOf(preparePlan(scenario, choice))).toBe(54.2);
    files.set('w.csv', weather(-37));
    expect(latitudeOf(preparePlan(scenario, choice))).toBe(-37);
  });

  test('and asked for where there is no such file', () => {
    const asked =
      'h.yaml:1:1: site: expected latitude, longitude and elevation, or the weather file to take them from, got nothing';
    expect(problemsOf(() => prepared(text))).toEqual([asked]);
  });
});

test('the same scenario gives the same plan, key for key', () => {
  const text = homeWith('');
  expect(JSON.stringify(prepared(text))).toBe(JSON.stringify(prepared(text)));
});

test('whatever is set, the answer is a plan or problems in words', () => {
  const scenario = readScenario(homeWith(''), 'h.yaml');
  const paths = preparePlan(scenario, { plan: null, set: [], files: new Map() }).assumed.map(
    (row) => row.path,
  );
  const value = fc.oneof(
    fc.double({ min: -1e4, max: 1e4, noNaN: true }).map(String),
    fc.constantFrom(
      'null',
      'true',
      'warm',
      '[]',
      '{}',
      '"5 kg"',
      '1e999',
      '.nan',
      '0',
      '-1',
      '"12:00"',
    ),
  );
  fc.assert(
    fc.property(fc.constantFrom(...paths), value, (path, written) => {
      try {
        preparePlan(scenario, { plan: null, set: [`${path}=${written}`], files: new Map() });
      } catch (error) {
        if (!(error instanceof InputProblems)) throw error;
        expect(error.problems.length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 150 },
  );
});
