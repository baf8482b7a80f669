import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { SpeciesFacts } from '../../src/species/species-facts.ts';
import { preset } from '../../src/units/preset.ts';
import { tidy } from '../weather/tidy-text.ts';

/** Carbon monoxide as one more entry of the table, its figures invented. */
const CO: SpeciesFacts = {
  name: 'co',
  symbol: 'CO',
  words: 'Carbon monoxide',
  plainName: 'CO',
  unit: 'ppm',
  role: 'pollutant',
  outdoors: preset(0.5, 0.1, 1),
  penetration: preset(0.9, 0.8, 1),
  deposition: preset(0.01, 0, 0.1),
  materials: preset(0, 0, 1),
  band: { high: 9, hours: 8, reason: 'invented', counted: 'any time' },
  limits: { level: 500, band: 2000, weather: [0, 100], weatherHint: 'mostly under 1' },
  sensor: {
    ...{ bias: preset(0, -3, 3), noise: preset(0, 0, 1), step: preset(1, 1, 1) },
    ...{ lag: preset(0, 0, 1), every: preset(5, 1, 15) },
  },
  sources: {
    activity: {
      key: 'monoxide',
      description: 'Carbon monoxide, each time',
      max: 100,
      usual: { candles: preset(0.1, 0, 1) },
    },
    body: {
      key: 'co',
      description: 'Carbon monoxide breathed out',
      max: 1,
      awake: preset(0, 0, 0),
      asleep: preset(0, 0, 0),
    },
    paint: { key: 'co', description: 'Given off', max: 1, usual: preset(0, 0, 0) },
    refuelling: { key: 'monoxide', description: 'Let out', max: 100, usual: preset(2, 0, 5) },
  },
  filter: { by: 'share', key: 'monoxide share', description: 'Of that', usual: preset(0, 0, 0.1) },
};

/** Three January days: an hour at noon gives off 12 L in the den. */
const TEXT = `title: Two rooms
weather: saltmere.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
period: { from: "01-10", to: "01-12" }
step: 30
home:
  rooms:
    den: { floor area: 14, use: living, deposition: { co: 0.2 } }
    nook: { floor area: 9, use: bedroom, bands: { co: { high: 90 } } }
household:
  people: [{ name: A, sleeps in: nook }]
  bodies: { awake: { co: 0 } }
  activities: [{ what: other, room: den, at: "12:00", lasts: 1 h, monoxide: 12 L }]
  paint: [{ room: nook, on: "06-01", co: 0 }]
devices:
  filter: { kind: purifier, room: den, monoxide share: 0.05 }
sensors: { co: { bias: 1, every: 0 } }
rules:
  - { name: alarm, when: [{ room: den, reading: co, over: 50 ppm, clear: 30 }], response: [{ tell: leave }] }
air: { outdoors: { co: 2 ppm }, penetration: { co: 1 } }
bands: { co: { high: 4 } }
`;

const TABLE = '../../src/species/species-table.ts';

let program: Awaited<ReturnType<typeof load>>;
let ran: ReturnType<typeof runIt>;

beforeAll(async () => {
  vi.resetModules();
  vi.doMock(TABLE, async (original) => {
    const table = await original<typeof import('../../src/species/species-table.ts')>();
    return { ...table, SPECIES: [...table.SPECIES, CO] };
  });
  program = await load();
  ran = runIt();
});
afterAll(() => {
  vi.doUnmock(TABLE);
  vi.resetModules();
});

async function load() {
  return {
    ...(await import('../../src/scenario/read-scenario.ts')),
    ...(await import('../../src/scenario/prepare-plan.ts')),
    ...(await import('../reference/scenario-json-schema.ts')),
    ...(await import('../../src/scenario/edits/input-kinds.ts')),
    ...(await import('../../src/studies/run-plan.ts')),
    ...(await import('../../src/report/trace-csv.ts')),
    ...(await import('../../src/report/tables/compare-rows.ts')),
    ...(await import('../../src/weather/read/read-weather.ts')),
    ...(await import('../../src/weather/write-own-csv.ts')),
    ...(await import('../../src/weather/period-of.ts')),
  };
}

function runIt() {
  const scenario = program.readScenario(TEXT, 'two-rooms.yaml');
  const plan = program.preparePlan(scenario, { plan: null, set: [], files: new Map() });
  const text = readFileSync('weather/saltmere-typical.csv', 'utf8');
  const weather = program.readWeather(text, 'saltmere.csv');
  const { home, household } = plan;
  const period = program.periodOf(weather, plan.period.from, plan.period.to, household.clock);
  const trace = program.createTraceCsv({
    rooms: home.rooms.map(({ name }) => name),
    ...{ species: home.species, sources: [], devices: ['filter'], clock: household.clock },
  });
  const outcome = program.runPlan({ plan, weather, period }, [trace.observe]);
  return { plan, ...outcome, trace: trace.text() };
}

describe('a fourth species is one entry of the table', () => {
  test('the schema knows it wherever it knows the others, with its unit and range', () => {
    const { plans, ...file } = program.scenarioJsonSchema()['properties'] as { plans: object };
    const others = placesOf(file, 'tvoc');
    const own = placesOf(file, 'co');
    // What a plan changes has the keys of the file again.
    expect(placesOf(plans, 'monoxide share')).toHaveLength(1);
    const spoken = (places: readonly string[]) => places.filter((at) => !SOURCE.test(at));
    expect(spoken(own)).toEqual(spoken(others));
    expect(spoken(own).length).toBeGreaterThanOrEqual(8);
    expect(placesOf(file, 'monoxide')).toHaveLength(2);
    expect(placesOf(file, 'monoxide share')).toHaveLength(1);
    expect(JSON.stringify(program.scenarioJsonSchema())).toContain(
      'Carbon monoxide, mean of 8 hours',
    );
  });

  test('what a person gives is read in its unit, and refused in words beyond its range', () => {
    const { home, bands } = ran.plan;
    expect(home.species[3]).toEqual({ name: 'co', unit: 'ppm', outdoor: 2, penetration: 1 });
    expect(home.rooms[0]!.deposition[3]).toBe(0.2 / 3600);
    expect(bands.map(({ species }) => species['co' as 'co2'])).toMatchObject([
      { high: 4, hours: 8 },
      { high: 90, hours: 8 },
    ]);
    const read = (text: string) => () => program.readScenario(text, 'h.yaml');
    expect(read(TEXT.replace('co: 2 ppm', 'co: 900'))).toThrow(/from 0 to 500/);
    expect(read(TEXT.replace('co: 2 ppm', 'co: 2 µg/m3'))).toThrow(/ppm/);
    expect(read(TEXT.replace('sensors: { co', 'sensors: { cot'))).toThrow(/pm25, co\b/);
  });

  test('what nobody gave is filled in and listed', () => {
    const paths = ran.plan.assumed.map(({ path }) => path);
    expect(paths).toContain('/air/deposition/co');
    expect(paths).toContain('/sensors/co/step');
    expect(paths).toContain('/household/bodies/asleep/co');
  });

  test('three times 12 L are booked, and the balance closes', () => {
    const { appliances, devices } = ran.run.ledger.species[3]!;
    const sum = (terms: Float64Array) => terms.reduce((all, term) => all + term, 0);
    expect(sum(appliances)).toBeCloseTo(3 * 12 * 1000, 6); // 1 L is 1e-3 m3, of 1e6 ppm
    expect(sum(devices)).toBeLessThan(0);
    expect(ran.measures.balance.pollutant_residual).toBeLessThan(1e-9);
  });

  test('figures count its hours, and the rule goes by its sensor', () => {
    const { den, nook } = ran.measures.rooms;
    const hours = (room: typeof den) => room!.outside_band_hours['co_high' as 'co2_high'];
    expect(hours(den)).toBeGreaterThan(0);
    expect(hours(nook)).toBe(0);
    expect(ran.measures.alerts.fired).toBe(3);
  });

  test('the trace has a column of it in each room', () => {
    const [head = '', ...rows] = ran.trace.split('\n');
    const at = head.split(',').indexOf('den.co_ppm');
    expect(head).toContain('nook.co_ppm');
    const levels = rows.filter((row) => row !== '').map((row) => Number(row.split(',')[at]));
    expect(levels).toHaveLength(72);
    expect(Math.max(...levels)).toBeGreaterThan(50);
  });

  test('tables show it', () => {
    const labels = program.homeRows([ran.measures]).map(({ label }) => label);
    expect(labels).toContain('CO high, any time [room h]');
  });

  test('a weather file may have a column of it, within its range', () => {
    const rows = (level: number) =>
      Array.from({ length: 48 }, (_, k) => {
        const day = String(1 + Math.floor(k / 24)).padStart(2, '0');
        return `2023-01-${day}T${String(k % 24).padStart(2, '0')}:00Z,5,70,3,${level}`;
      });
    const text = (level: number) =>
      tidy('time,temperature,relative humidity,wind speed,co', rows(level));
    const weather = program.readWeather(text(1.5), 'w.csv');
    expect((weather.species as Record<string, Float64Array>)['co']![7]).toBe(1.5);
    expect(program.writeOwnCsv(weather)).toContain(',co\n');
    expect(() => program.readWeather(text(101), 'w.csv')).toThrow(/0 to 100/);
  });

  test('it cannot move heat, water or money', () => {
    expect(program.canMatter('/air/outdoors/co')).toBe(false);
    expect(program.canMatter('/household/activities/0/monoxide')).toBe(false);
  });
});

/** Where sources have keys of their own. */
const SOURCE = /activities|bodies|paint|devices/;

/** Places of a schema at which a key or a word stands. */
function placesOf(node: unknown, name: string, at = ''): string[] {
  if (typeof node !== 'object' || node === null) return [];
  const { properties = {}, enum: words = [] } = node as { properties?: object; enum?: unknown[] };
  const here = Object.hasOwn(properties, name) || words.includes(name) ? [at] : [];
  return [
    ...here,
    ...Object.entries(node).flatMap(([key, child]) => placesOf(child, name, `${at}/${key}`)),
  ];
}
