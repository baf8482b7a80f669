import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { compareCsv } from '../../src/report/compare-csv.ts';
import { csvLine, typedField } from '../../src/report/csv-line.ts';
import { compareMeasures } from '../../src/studies/compare/compare.ts';
import { somePlan } from '../studies/some-plan.ts';

type Row = Readonly<Record<string, string>>;

const rowsOf = (...plans: PlanMeasures[]): Row[] =>
  parse(compareCsv(compareMeasures(plans)), { columns: true });

const DRYER = {
  ...{
    electricity_kwh: 90.25,
    electricity_money: null,
    fuel_kwh: 0,
    water_kg: -300,
    heat_kwh: 280,
  },
  ...{ hours: 410, starts: 55, emptied: 70, hours_4_pa_below_outdoors: null },
};
const LIVED = {
  ...somePlan('as-lived', { den: { outside: { humidity_high: 210.5 } } }),
  blinds: { shutter: { room: 'den', closed_hours: 1200 } },
};
const DRIED: PlanMeasures = {
  ...somePlan('dried', { energy: 1010.125, den: { over: { mean_temperature_c: 18.6 } } }),
  devices: {
    ...{ electricity_kwh: 1590.25, gas_kwh: 0, by_device: { dryer: 90.25 } },
    detail: { dryer: DRYER },
  },
};

test('for each plan a row of the home and one of each room', () => {
  const rows = rowsOf(LIVED, DRIED);
  expect(rows.map((row) => [row['plan'], row['room']])).toEqual([
    ['as-lived', ''],
    ['as-lived', 'den'],
    ['as-lived', 'bath'],
    ['dried', ''],
    ['dried', 'den'],
    ['dried', 'bath'],
  ]);
});

test('figures stand under the names of the JSON, with its digits', () => {
  const [home, den, , dried, dryDen] = rowsOf(LIVED, DRIED);
  expect(home).toMatchObject({
    'period.hours': '8760',
    'heating.useful_kwh': '9000',
    'heating.delivered_kwh.gas': '10000',
    'heating.by_presence': 'false',
    'money.currency': 'GBP',
    'money.energy': '1000',
    'money.total_per_year': '1000',
    carbon_kg: '2000',
    'airing.kwh_per_litre': '',
    'balance.energy_residual': '1e-14',
    'differences.energy_money': '',
    heating_kwh: '',
  });
  expect(den).toMatchObject({
    carbon_kg: '',
    heating_kwh: '4500',
    mean_temperature_c: '19.5',
    'outside_band_hours.humidity_high': '210.5',
    'outside_band_occupied_hours.temperature_low': '0',
    cold_spot_hours_above_80_pct: '0',
    mould_index_peak: '0',
  });
  expect(dried).toMatchObject({
    'differences.energy_money': '10.125',
    'differences.humidity_high_hours': '-210.5',
    'differences.npv': '',
  });
  expect(dryDen!['mean_temperature_c']).toBe('18.6');
});

test('what only one plan has is an empty cell in the other, beside its kin', () => {
  const [home, , , dried] = rowsOf(LIVED, DRIED);
  expect(home!['devices.detail.dryer.water_kg']).toBe('');
  expect(dried!['devices.detail.dryer.water_kg']).toBe('-300');
  const columns = Object.keys(home!);
  expect(columns.indexOf('devices.by_device.dryer')).toBe(columns.indexOf('devices.gas_kwh') + 1);
});

test('every figure of a plan and a room has a column, lists and titles have none', () => {
  const columns = Object.keys(rowsOf(LIVED, DRIED)[0]!);
  expect(new Set(columns).size).toBe(columns.length);
  const sections = Object.keys(LIVED).filter((key) => columns.some((c) => c.startsWith(key)));
  expect(Object.keys(LIVED).filter((key) => !sections.includes(key))).toEqual([
    ...['scenario', 'rooms', 'air_flows', 'assumed', 'cautions', 'notices'],
  ]);
  const figures = Object.keys(LIVED.rooms['den']!);
  expect(
    figures.filter((key) => !columns.some((c) => c === key || c.startsWith(`${key}.`))),
  ).toEqual([]);
});

test('one plan alone has no columns of differences', () => {
  expect(compareCsv(compareMeasures([LIVED]))).not.toContain('differences');
});

test('names that need quotes, and names that a spreadsheet would work out', () => {
  const plan = somePlan('=HYPERLINK("http://x";"y")');
  const rooms = { 'bed "small", north': plan.rooms['den']!, '-5+3': plan.rooms['bath']! };
  const text = compareCsv(
    compareMeasures([{ ...plan, rooms, money: { ...plan.money, currency: '@SUM(A1)' } }]),
  );
  const lines = text.split('\n');
  expect(lines[1]).toMatch(/^"'=HYPERLINK\(""http:\/\/x"";""y""\)",,/);
  expect(lines[1]).toContain(",'@SUM(A1),");
  expect(lines[2]).toContain('","bed ""small"", north",');
  expect(lines[3]).toContain('",\'-5+3,');
});

test.each([
  ...['=1', '+1', '-1', '@a', '\t=1', '\r=1', '＝1', "'=1"].map((text) => [text, `'${text}`]),
  ['den', 'den'],
  ['a=1', 'a=1'],
  ['', ''],
])('a typed %j is written %j', (text, field) => {
  expect(typedField(text!)).toBe(field);
});

test('a line of CSV', () => {
  expect(csvLine(['a', '', 'b,c', 'd"e', 'f\ng'])).toBe('a,,"b,c","d""e","f\ng"');
});
