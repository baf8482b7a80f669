import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compareCsv } from '../../src/report/compare-csv.ts';
import { homeRows } from '../../src/report/tables/compare-rows.ts';
import { createTraceCsv } from '../../src/report/trace-csv.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { compareMeasures } from '../../src/studies/compare/compare.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { compare } from '../reference/compare.ts';
import { problemsOf } from '../scenario/problems-of.ts';
import { readOnce } from '../scenario/read-once.ts';

/** Four January days in one room that breathes half its air an hour; a printer runs at noon on the third. */
const TEXT = `title: One room
weather: saltmere.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
period: { from: "01-10", to: "01-13" }
home:
  height: 2.4
  leakage: { air changes: 0.5 }
  rooms: { cellar: { floor area: 20, use: storage } }
heating: { source: none }
household: { people: [], activities: [{ what: other, name: printing, room: cellar, at: "12:00", lasts: 1 h }] }
devices: { shaker: { kind: heater, room: cellar, power: 10 W, runs: always } }
air:
  own species:
    radon: { label: Radon, unit: Bq/m3, outdoors: 10, deposition: 0.00756, band: { high: 41 }, sources: { materials: 40 } }
    dust: { unit: µg/m3, outdoors: 20, penetration: 0.78, deposition: 0.39, sources: { devices: { shaker: 48 } } }
    toner: { unit: grains/m3, outdoors: { file: levels.csv }, band: { high: 50, mean of: 24 h }, sources: { activities: { printing: 4800 } } }
rules:
  - { name: smoggy, when: [{ room: outdoors, reading: toner, over: 6 }], response: [{ tell: keep windows shut }] }
  - { name: dusty, when: [{ room: cellar, reading: toner, over: 40 }], response: [{ tell: leave }] }
`;

/** Outdoors 5, and 7 on one afternoon. */
const LEVELS = [
  'time,toner',
  ...Array.from({ length: 5 * 24 }, (_, k) => {
    const at = new Date(Date.UTC(2023, 0, 9, k)).toISOString().slice(0, 16);
    return `${at}Z,${k >= 63 && k < 66 ? 7 : 5}`;
  }),
].join('\n');

const ran = runIt();

function runIt() {
  const text = readFileSync('weather/saltmere-typical.csv', 'utf8');
  const weather = readWeather(text, 'saltmere.csv');
  const plan = preparePlan(readOnce(TEXT, 'h.yaml'), {
    ...{ plan: null, set: [], files: new Map([['levels.csv', LEVELS]]) },
  });
  const { home, household } = plan;
  const period = periodOf(weather, plan.period.from, plan.period.to, household.clock);
  const trace = createTraceCsv({
    ...{ rooms: ['cellar'], species: home.species, sources: [], devices: ['shaker'] },
    clock: household.clock,
  });
  return {
    ...runPlan({ plan, weather, period }, [trace.observe]),
    trace: trace.text(),
    plan,
    weather,
    period,
  };
}

/** Hourly values of a column of the trace. */
function column(name: string): number[] {
  const [head = '', ...rows] = ran.trace.trim().split('\n');
  const at = head.split(',').indexOf(name);
  expect(at).toBeGreaterThan(0);
  return rows.map((row) => Number(row.split(',')[at]));
}

describe('species that a scenario names, through a run', () => {
  const row = {
    topic: 'Air quality',
    mark: 'closed form',
    because: 'at rest; printed to 1e-4',
  } as const;

  test('radon from the floor at rest', () => {
    compare({
      ...{ ...row, what: '40 Bq/(m2 h) under 2.4 m, 0.5 1/h, decay 0.00756 1/h', unit: 'Bq/m3' },
      ...{
        source: 'mixed room by hand: (E/h + a c_out)/(a + k)',
        expected: (40 / 2.4 + 0.5 * 10) / 0.50756,
      },
      ...{ got: column('cellar.radon_bq_per_m3')[0]!, tolerance: { absolute: 0.0001 } },
    });
  });

  test('dust from outdoors through leaks, and from a device', () => {
    compare({
      ...{
        ...row,
        what: 'outdoor dust of 20 µg/m3 by P 0.78, k 0.39 1/h, and 1 µg/(m3 h)',
        unit: 'µg/m3',
      },
      ...{
        source: 'P a/(a + k) as of the PTEAM study, and S/V/(a + k)',
        expected: (0.78 * 0.5 * 20 + 1) / 0.89,
      },
      ...{ got: column('cellar.dust_ug_per_m3')[0]!, tolerance: { absolute: 0.0001 } },
    });
  });

  test('the ledger of each closes, source by source', () => {
    const [radon, dust, toner] = ran.run.ledger.species.slice(3);
    // By hand: 40 Bq/(m2 h) of 20 m2 for 96 h, 48 µg/h for 96 h, 4800 grains on four days.
    expect(radon!.materials[0]).toBeCloseTo(40 * 20 * 96, 6);
    expect(dust!.devices[0]).toBeCloseTo(48 * 96, 6);
    expect(toner!.appliances[0]).toBeCloseTo(4 * 4800, 6);
    expect(ran.measures.balance.pollutant_residual).toBeLessThan(1e-9);
  });

  test('levels of a file arrive hour by hour, and a rule on outdoors goes by them', () => {
    const outside = column('outdoor_toner_grains_per_m3');
    expect(outside.filter((level) => level === 7)).toHaveLength(3);
    expect(outside.filter((level) => level === 5)).toHaveLength(93);
    expect(ran.measures.alerts.by_rule['smoggy']!.fired).toBe(1);
    expect(ran.measures.alerts.by_rule['dusty']!.fired).toBe(4);
  });

  test('figures: means, and hours above bands, at once and as a mean of a day', () => {
    const cellar = ran.measures.rooms['cellar']!;
    const hours = cellar.outside_band_hours as Readonly<Record<string, number>>;
    expect(ran.measures.species['radon']).toEqual({
      ...{ label: 'Radon', unit: 'Bq/m3' },
      mean_outdoors: expect.closeTo(10, 9),
    });
    expect(ran.measures.species['toner']!.mean_outdoors).toBeCloseTo((93 * 5 + 3 * 7) / 96, 9);
    expect(cellar.species['radon']!.mean).toBeCloseTo(column('cellar.radon_bq_per_m3')[0]!, 3);
    expect(hours['radon_high']).toBe(96);
    expect(hours['toner_high']).toBe(0);
    expect(hours['dust_high']).toBe(0);
  });

  test('tables and the CSV of a comparison have them', () => {
    const rows = homeRows([ran.measures]);
    expect(rows.find(({ label }) => label === 'Radon high, any time [room h]')?.printed).toEqual([
      '96',
    ]);
    expect(rows.map(({ label }) => label).join()).not.toContain('toner');
    const [header = ''] = compareCsv(compareMeasures([ran.measures])).split('\n');
    expect(header).toContain(',outside_band_hours.radon_high,');
    expect(header).toContain(',species.toner.mean,species.toner.evening,');
  });

  test('a file that ends before the period is refused', () => {
    const { plan, weather, period } = ran;
    const longer = { start: period.start, hours: 10 * 24 };
    expect(problemsOf(() => runPlan({ plan, weather, period: longer }))).toEqual([
      'One room: air.own species.toner.outdoors: expected levels for the whole period, ' +
        '2023-01-10T00:00Z to 2023-01-20T00:00Z, got 2023-01-09T00:00Z to 2023-01-14T00:00Z',
    ]);
  });
});
