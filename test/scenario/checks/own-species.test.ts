import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { uncoveredLevels } from '../../../src/scenario/uncovered-levels.ts';
import { homeWith, problemsOf, readingProblems } from '../problems-of.ts';

const radon = (more: string, rest = '') =>
  homeWith(`air: { own species: { radon: { unit: Bq/m3, outdoors: 10${more} } } }\n${rest}`);

const prepared = (text: string, files: ReadonlyMap<string, string> = new Map()) =>
  preparePlan(readScenario(text, 'h.yaml'), { plan: null, set: [], files });

describe('a species of the scenario', () => {
  test('comes behind those of the table, with what the scenario says of it', () => {
    const { home, household, bands, assumed } = prepared(
      homeWith(`air:
  own species:
    radon:
      label: Radon
      unit: Bq/m³
      outdoors: 8 Bq/m3
      penetration: 0.9
      window penetration: 80 %
      deposition: 3.6
      filter share: 0.25
      band: { high: 100, mean of: 1 day }
      sources:
        materials: 36
        person: 7.2
        activities: { dusting: 30, cleaning: 6 }
        devices: { cleaner: 18 }
household:
  people: [{ who: adult }, { who: child }]
  activities:
    - { what: cleaning, name: dusting, at: "10:00", lasts: 30 min, number: 2 }
    - { what: cleaning, at: "12:00", lasts: 10 min }
devices: { cleaner: { kind: purifier, room: bedroom, clean air: 180 } }
bands: { radon: { low: 1 } }`).replace(
        'bedroom: { floor area: 12 }',
        'bedroom: { floor area: 12, deposition: { radon: 7.2 }, materials: { radon: 3.6 } }',
      ),
    );
    expect(home.species.map(({ name }) => name)).toEqual(['co2', 'tvoc', 'pm25', 'radon']);
    expect(home.species[3]).toEqual({
      ...{ name: 'radon', label: 'Radon', unit: 'Bq/m3', outdoor: 8 },
      ...{ penetration: 0.9, windowPenetration: 0.8 },
    });
    // By hand: amounts an hour over 3600 s; 16 and 12 m2 of floor; 180 m3/h of clean air.
    expect(home.rooms.map(({ deposition }) => deposition[3])).toEqual([1e-3, 2e-3]);
    expect(home.rooms.map(({ emission }) => emission![3])).toEqual([0.16, 0.012]);
    expect(home.devices[0]).toMatchObject({
      gives: [0, 0, 0, 0.005],
      does: { cleanAir: [0, 0, 0.05, 0.0125] },
    });
    const [adult, child] = household.people;
    expect([adult!.awake.species[3], adult!.asleep.species[3]]).toEqual([0.002, 0.002]);
    expect(child!.awake.species[3]).toBeCloseTo(0.65 * 0.002, 15); // share of a grown body
    // Each time: 30 by the name, twice, over 1800 s; 6 by the kind, over 600 s.
    expect(household.activities.map(({ species }) => species[3])).toEqual([60 / 1800, 6 / 600]);
    expect(bands[0]!.species['radon']).toEqual({
      ...{ low: 1, high: 100, hours: 24, reason: 'set in the scenario' },
    });
    expect(assumed.filter(({ path }) => path.includes('radon'))).toEqual([]);
  });

  test('settles nowhere and passes everything where the scenario does not say', () => {
    const { home, bands, assumed } = prepared(
      radon('', 'devices: { cleaner: { kind: purifier, room: bedroom } }'),
    );
    expect(home.species[3]).toMatchObject({ label: 'radon', penetration: 1, windowPenetration: 1 });
    expect(home.rooms[0]!.deposition[3]).toBe(0);
    expect(home.devices[0]!.does).toMatchObject({ cleanAir: [0, 0, expect.any(Number), 0] });
    expect(bands[0]!.species['radon']!.high).toBe(Number.POSITIVE_INFINITY);
    const paths = assumed.map(({ path }) => path).filter((path) => path.includes('radon'));
    expect(paths.sort()).toEqual(
      ['deposition', 'filter share', 'penetration', 'window penetration'].map(
        (key) => `/air/own species/radon/${key}`,
      ),
    );
  });

  test('gases by volume count litres, as CO2 does', () => {
    const { household } = prepared(
      homeWith(`air: { own species: { hydrogen: { unit: ppb, outdoors: 500 ppb,
  sources: { person: 0.0036, activities: { charging: 9 L } } } } }
household: { people: [{}], activities: [{ what: other, name: charging, at: "10:00", lasts: 1 h }] }`),
    );
    // 0.0036 m3/h is 1e-6 m3/s, of 1e9 ppb; 9 L are 9e6 ppb m3, over 3600 s.
    expect(household.people[0]!.awake.species[3]).toBeCloseTo(1000, 9);
    expect(household.activities[0]!.species[3]).toBeCloseTo(2500, 9);
  });

  test('conditions, sensors and a plan that changes one number know it', () => {
    const text = radon(
      '',
      `sensors: { radon: { noise: 2 }, rooms: { outdoors: { radon: none }, living: { radon: { bias: 1 } } } }
rules:
  - { name: high, when: [{ room: living, reading: radon, over: 100 Bq/m3, clear: 80 }], response: [{ tell: air }] }
household: { airing: [{ room: living, when: [{ room: bedroom, reading: radon, over: 200 }] }] }
plans: { a: { change: {} }, b: { change: { air: { own species: { radon: { outdoors: 20 } } } } } }`,
    );
    const scenario = readScenario(text, 'h.yaml');
    const [a, b] = ['a', 'b'].map((plan) =>
      preparePlan(scenario, { plan, set: [], files: new Map() }),
    );
    expect(a!.automation.rules[0]!.all[0]).toEqual({
      ...{ quantity: 'radon', room: 0, is: 'above', value: 100, clear: 80 },
      sensor: { bias: 1, noise: 2, step: 0, lag: 0, every: 300 },
    });
    expect(a!.automation.airings[0]!.after).toMatchObject({ all: [{ quantity: 'radon' }] });
    expect([a!, b!].map(({ home }) => home.species[3]!.outdoor)).toEqual([10, 20]);
    const set = ['/air/own species/radon/deposition=0.0072'];
    const more = preparePlan(scenario, { plan: 'b', set, files: new Map() });
    expect(more.home.rooms[0]!.deposition[3]).toBe(2e-6);
    const doubted = `${text}\ndoubts: { /air/own species/radon/outdoors: [5, 30] }`;
    expect(readScenario(doubted, 'h.yaml').doubts).toEqual([
      { path: '/air/own species/radon/outdoors', low: 5, high: 30 },
    ]);
  });
});

describe('a species that cannot be', () => {
  const own = (entries: string) => homeWith(`air: { own species: { ${entries} } }`);
  const RADON = 'radon: { unit: Bq/m3, outdoors: 10';
  test.each([
    [own('radon: { outdoors: 10 }'), 'radon.unit: expected ppm, ppb, or a unit of something in'],
    [own('radon: { unit: Bq, outdoors: 10 }'), 'radon.unit: expected ppm, ppb, or a unit of'],
    [own('radon: { unit: Bq/m3 }'), 'radon.outdoors: expected a level in Bq/m3, a list of twelve'],
    [
      own('radon: { unit: Bq/m3, outdoors: 10 ppm }'),
      'radon.outdoors: expected a number in Bq/m3, got "10 ppm", which has another unit',
    ],
    [own(`${RADON}, deposition: -1 }`), 'radon.deposition: expected a number of air changes'],
    [own(`${RADON}, penetration: 1.2 }`), 'radon.penetration: expected a share of 1 from 0 to 1'],
    [
      own(`${RADON}, window penetration: 120 % }`),
      'radon.window penetration: expected a share of 1 from 0 to 1, got "120 %"',
    ],
    [own(`${RADON}, filter share: 2 }`), 'radon.filter share: expected a share of 1 from 0 to 1'],
    [own(`${RADON}, band: { high: 5 ppm } }`), 'radon.band.high: expected a number in Bq/m3'],
    [
      own(`${RADON}, sources: { activities: { welding: 3 } } }`),
      'sources.activities.welding: expected an activity of the household: shower, bath',
    ],
    [
      own(`${RADON}, sources: { devices: { printer: 3 } } }`),
      'sources.devices.printer: expected the name of a device: there is none, got "printer"',
    ],
    [own(`${RADON}, sources: { person: 3 mg/h } }`), 'sources.person: expected a number in Bq/h'],
    [own(`${RADON}, smell: 3 }`), 'radon.smell: expected one of the keys label, unit, outdoors'],
    [
      own('PM2.5: { unit: µg/m3, outdoors: 10 }'),
      'PM2.5: expected another name than co2, tvoc, pollen, no2, pm25, which the program knows',
    ],
    [own('constructor: { unit: ppm, outdoors: 1 }'), 'expected a name that means nothing else in'],
    [own('humidity: { unit: ppm, outdoors: 1 }'), 'expected a name that means nothing else in'],
    [
      own(`${RADON} }, Ra-don: { unit: ppm, outdoors: 1 }`),
      'Ra-don: expected a name that differs from radon in letters or digits, got "Ra-don"',
    ],
    [
      own(`${RADON} }, dust: { unit: ppm, outdoors: 1, label: Radon }`),
      'dust.label: expected a label that differs from radon in letters or digits, got "Radon"',
    ],
    [
      own(`${RADON}, label: pm 2.5 }`),
      'radon.label: expected a label that differs from PM2.5 in letters or digits, got "pm 2.5"',
    ],
    [own('[radon]').replace('{ [radon] }', '[radon]'), 'expected a mapping from names of species'],
    [
      own(`${RADON} }`).replace('12 }', '12, deposition: { radon: -1 } }'),
      'bedroom.deposition.radon: expected a number of air changes',
    ],
    [
      own(`${RADON} }`).replace('12 }', '12, materials: { radon: 5 mg/h } }'),
      'bedroom.materials.radon: expected a number in Bq/h, got "5 mg/h", which has another unit',
    ],
  ])('%#', (text, words) => {
    const problems = readingProblems(text);
    expect(problems.join('\n')).toContain(words);
    expect(problems).toHaveLength(1);
  });

  test('two of one name', () => {
    const twice = own(`\n  ${RADON} },\n  ${RADON} }\n`);
    expect(readingProblems(twice).join('\n')).toContain(
      'expected every key once, got "radon", which stands in line',
    );
  });

  test('one that is spoken of and not declared, with the nearest that is', () => {
    const rule = (reading: string) =>
      `rules: [{ name: a, when: [{ room: living, reading: ${reading}, over: 5 }], response: [{ tell: x }] }]`;
    const missing = readingProblems(homeWith(rule('radon'))).join('\n');
    expect(missing).toContain('or a species that air.own species declares, got "radon"');
    const near = readingProblems(radon('', rule('raddon'))).join('\n');
    expect(near).toContain('did you mean "radon"?');
    const band = readingProblems(radon('', 'bands: { raddon: { high: 5 } }')).join('\n');
    expect(band).toContain('got "raddon", which is not known (did you mean "radon"?)');
    expect(readingProblems(homeWith('sensors: { radon: none }')).join('\n')).toContain(
      'sensors.radon: expected one of the keys presence, temperature, humidity, co2',
    );
  });

  test('a level of a condition in another unit, and one beyond what rules may ask', () => {
    const rule = (level: string) =>
      `rules: [{ name: a, when: [{ room: outdoors, reading: radon, over: ${level} }], response: [{ tell: x }] }]`;
    expect(readingProblems(radon('', rule('5 ppm'))).join('\n')).toContain(
      'over: expected a number in Bq/m3, got "5 ppm", which has another unit',
    );
    expect(readingProblems(radon('', 'bands: { radon: { low: 9 Bq/m3, high: 8 } }'))[0]).toContain(
      'bands.radon.low: expected no more than high (8)',
    );
  });
});

describe('levels outdoors from a file', () => {
  const text = radon('').replace('outdoors: 10', 'outdoors: { file: levels.csv, column: Rn }');
  const rows = ['2023-01-01T00:00Z,3,10', '2023-01-01T01:00Z,4,20', '2023-01-01T02:00Z,5,30'];
  const csv = (some: readonly string[], head = 'time,temperature,Rn') => [head, ...some].join('\n');
  const files = (content: string) => new Map([['levels.csv', content]]);

  test('are read by their column', () => {
    const scenario = readScenario(text, 'h.yaml');
    expect(scenario.files).toEqual(['w.csv', 'levels.csv']);
    const { species } = prepared(text, files(csv(rows))).home;
    expect(species[3]).toMatchObject({
      outdoor: 20,
      outdoorSeries: { start: Date.UTC(2023, 0, 1) / 1000, step: 3600 },
    });
    expect([...species[3]!.outdoorSeries!.values]).toEqual([10, 20, 30]);
  });

  test.each([
    [
      csv(rows, 'time,temperature,Rm'),
      'levels.csv:1:1: header: expected a column called Rn, got temperature, Rm (did you mean "Rm"?)',
    ],
    [csv(rows, 'hour,temperature,Rn'), 'expected time as the first column, got "hour"'],
    [
      csv(['2023-01-01 00:00,3,10', ...rows]),
      'levels.csv:2:1: time: expected a time with its distance from UTC',
    ],
    [
      csv([...rows, '2023-01-01T04:00Z,5,30']),
      'levels.csv:5:1: time: expected 60 min after the row before, as at the start, got 120 min',
    ],
    [csv([...rows, rows[0]!]), 'expected a later time than the row before'],
    [
      csv([rows[0]!, '2023-01-01T01:00Z,4,']),
      'levels.csv:3:1: Rn: expected a level in Bq/m3 of 0 or more, got nothing',
    ],
    [
      csv([rows[0]!, '2023-01-01T01:00Z,4,-1']),
      'Rn: expected a level in Bq/m3 of 0 or more, got "-1"',
    ],
    [csv([rows[0]!]), 'expected at least two levels, got 1'],
  ])('wrong files: %#', (content, words) => {
    expect(problemsOf(() => prepared(text, files(content))).join('\n')).toContain(words);
  });

  test('a file that the scenario file does not name', () => {
    const set = ['/air/own species/radon/outdoors={ file: other.csv }'];
    const work = () =>
      preparePlan(readScenario(text, 'h.yaml'), { plan: null, set, files: files(csv(rows)) });
    expect(problemsOf(work).join('\n')).toContain('a file of levels that the scenario file names');
  });

  test('that do not cover the period', () => {
    const plan = prepared(text, files(csv(rows)));
    const start = Date.UTC(2023, 0, 1) / 1000;
    expect(uncoveredLevels(plan, { start, hours: 3 })).toEqual([]);
    expect(uncoveredLevels(plan, { start, hours: 4 })).toEqual([
      {
        path: ['air', 'own species', 'radon', 'outdoors'],
        expected: 'levels for the whole period, 2023-01-01T00:00Z to 2023-01-01T04:00Z',
        got: '2023-01-01T00:00Z to 2023-01-01T03:00Z',
      },
    ]);
    expect(uncoveredLevels(plan, { start: start - 3600, hours: 2 })).toHaveLength(1);
  });
});
