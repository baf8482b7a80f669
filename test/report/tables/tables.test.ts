import { describe, expect, test } from 'vitest';
import type { PlanMeasures, RoomMeasures } from '../../../src/measures/plan-measures.ts';
import { assumedTable } from '../../../src/report/tables/assumed-table.ts';
import { compareTables, compareTitle } from '../../../src/report/tables/compare-tables.ts';
import {
  alertsTable,
  arrivalsTable,
  roomsTable,
} from '../../../src/report/tables/figure-tables.ts';
import { handbookCrossCheckTable } from '../../../src/report/tables/handbook-cross-check-table.ts';
import { energyLedgerTable, waterLedgerTable } from '../../../src/report/tables/ledger-table.ts';
import { runTables } from '../../../src/report/tables/run-tables.ts';
import { compareMeasures } from '../../../src/studies/compare/compare.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { ledger } from '../../measures/hand-made.ts';
import { someLevel as level, somePlan } from '../../studies/some-plan.ts';

const PLANS = [
  somePlan('as-lived', { energy: 1210, den: { outside: { humidity_high: 210 } } }),
  somePlan('nineteen', {
    energy: 1010,
    useful: 7500,
    den: { occupied: { temperature_low: 310 }, over: { mean_temperature_c: 18.6 } },
  }),
  somePlan('fifteen-at-night', { energy: 1100, useful: 8100 }),
  somePlan('airing', { energy: 1240, useful: 9900 }),
  somePlan('dry-bedroom', { energy: 1200, purchaseCost: 22.4 }),
];
const NOTHING = { purchases: [], discountRate: 0.03 };
const DRYER = { ...NOTHING, purchases: [{ what: 'dryer', price: 180, lastsYears: 8 }] };
const COMPARISON = compareMeasures(PLANS, [NOTHING, NOTHING, NOTHING, NOTHING, DRYER]);

/** The line that begins with a label, its blanks made single. */
const line = (text: string, label: string): string =>
  text
    .split('\n')
    .find((l) => l.trimStart().startsWith(label))!
    .replaceAll(/ +/g, ' ');

describe('compareTables', () => {
  test('marks the least and the most of each row by words', () => {
    const text = compareTables(COMPARISON, 200);
    expect(line(text, 'money a year [GBP]')).toBe(
      'money a year [GBP] 1210 1010 least 1100 1240 most 1222',
    );
    expect(line(text, 'heat to rooms [kWh]')).toBe(
      'heat to rooms [kWh] 9000 7500 least 8100 9900 most 9000',
    );
    expect(line(text, 'carbon')).toBe('carbon [kg CO2e] 2000 2000 2000 2000 2000');
  });

  test.each([80, 100])('keeps to %s columns with five plans, every plan in every part', (width) => {
    const text = compareTables(COMPARISON, width);
    expect(Math.max(...text.split('\n').map((l) => l.length))).toBeLessThanOrEqual(width);
    for (const { plan } of PLANS) expect(text.split(plan).length).toBeGreaterThan(6);
  });

  test('differences have signs; payback is left out of rows that have none', () => {
    const text = compareTables(COMPARISON, 200);
    const differences = text.slice(text.indexOf('Against as-lived'));
    expect(line(differences, 'nineteen')).toBe('nineteen -1500 -200 -200 0 -210 -210 - - -');
    // 180 over 10 a year; -(22.4 - 10) x 7.02 a year's annuity; 12.4 over 210 hours.
    expect(line(differences, 'dry-bedroom')).toBe(
      'dry-bedroom 0 -10 +12 0 -210 -210 18.0 -87 0.0590',
    );
  });

  test('columns that nobody needs are not there', () => {
    const text = compareTables(compareMeasures(PLANS.slice(0, 2)), 80);
    expect(text).toContain('Against as-lived');
    expect(text).not.toContain('pays back');
    expect(text).not.toContain('worth');
    expect(text).not.toContain('just in');
  });

  test('the title names home and period', () => {
    expect(compareTitle(COMPARISON, UTC_CLOCK)).toBe(
      'Hand-made terrace\n2023-01-01 to 2023-12-31 (365 days)',
    );
  });

  test('one plan alone has no differences', () => {
    expect(compareTables(compareMeasures(PLANS.slice(0, 1)), 80)).not.toContain('Against');
  });

  test('a figure that is no number is a dash', () => {
    const odd = somePlan('odd', { energy: Number.NaN, useful: Number.POSITIVE_INFINITY });
    const text = compareTables(compareMeasures([PLANS[0]!, odd]), 80);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(line(text, 'money a year')).toBe('money a year [GBP] 1210 -');
  });
});

describe('rows that only some plans need', () => {
  const dryer = {
    electricity_kwh: 120,
    electricity_money: null,
    fuel_kwh: 0,
    water_kg: -210,
    heat_kwh: 260,
    hours: 400,
    starts: 300,
    emptied: 90,
    hours_4_pa_below_outdoors: null,
  };
  const [first, second] = [PLANS[0]!, PLANS[1]!];
  const busy: PlanMeasures = {
    ...somePlan('busy', {
      den: {
        outside: { pm25_high: 30 },
        occupied: { tvoc_high: 12 },
        over: { cold_arrival_hours: 44 },
      },
    }),
    heating: { ...first.heating, with_window_open_kwh: 55 },
    cooling: { removed_kwh: 310, delivered_kwh: { electricity: 104 } },
    devices: {
      electricity_kwh: 1620,
      gas_kwh: 0,
      by_device: { dryer: 120 },
      detail: { dryer },
    },
    alerts: { ...first.alerts, per_week: 3.25 },
  };
  const text = compareTables(compareMeasures([first, busy]), 100);

  test.each([
    ['heat, window open', 'heat, window open [kWh] 0 least 55 most'],
    ['removed by cooling', 'removed by cooling [kWh] 0 least 310 most'],
    ['electricity for cooling', 'electricity for cooling [kWh] 0 least 104 most'],
    ['appliances', 'appliances [kWh] 1500 1500'],
    ['devices [kWh]', 'devices [kWh] 0 least 120 most'],
    ['water out by', 'water out by devices [kg] 0 least 210 most'],
    ['of that, just came in', 'of that, just came in [room h] 0 least 44 most'],
    ['TVOC high', 'TVOC high, somebody in [room h] 0 least 12 most'],
    ['PM2.5 high', 'PM2.5 high, any time [room h] 0 least 30 most'],
    ['alerts a week', 'alerts a week 0.0 least 3.3 most'],
  ])('%s', (label, told) => {
    expect(line(text, label)).toBe(told);
    const without = compareTables(compareMeasures([first, second]), 100);
    if (label !== 'appliances') expect(without).not.toContain(label);
  });
});

describe('roomsTable', () => {
  test('one line a room in each block, units in the heads', () => {
    const text = roomsTable(PLANS[1]!.rooms, 80);
    const blocks = text.split('\n\n');
    expect(blocks.length).toBeGreaterThan(1);
    for (const block of blocks) expect(block).toMatch(/\n *den .*\n *bath /);
    expect(text).toContain('[°C]');
    expect(text).toMatch(/18\.6 least/);
    expect(Math.max(...text.split('\n').map((l) => l.length))).toBeLessThanOrEqual(80);
  });

  test('every figure under its own head', () => {
    const outside = {
      temperature_low: 104,
      temperature_high: 107,
      humidity_high: 110,
      humidity_low: 111,
    };
    const occupied = { temperature_low: 105, temperature_high: 108, co2_high: 113 };
    const over = {
      ...{ heating_kwh: 101, mean_temperature_c: 102, mean_relative_humidity_pct: 103 },
      ...{ degree_hours_below: 106, degree_hours_above: 109, cold_spot_hours_above_80_pct: 112 },
      ...{ mould_index_peak: 5, mould_index_end: 4, condensation_hours: 115, condensation_kg: 116 },
      ...{ window_open_hours: 117, occupied_hours: 118, arrivals: 119, cold_arrivals: 120 },
      ...{ cold_arrival_hours: 121, recovery_minutes_mean: 122, recovery_minutes_most: 123 },
    };
    const { den } = somePlan('full', { den: { outside, occupied, over } }).rooms;
    const row = (text: string) =>
      [...(/^ *den (.*)$/m.exec(text)?.[1] ?? '').matchAll(/[\d.]+/g)].map(Number);
    expect(row(roomsTable({ den: den! }, 400))).toEqual([
      ...[101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111],
      ...[113, 112, 5, 4, 115, 116, 117],
    ]);
    expect(row(arrivalsTable({ den: den! }, 400))).toEqual([118, 119, 120, 121, 122, 123]);
  });

  test('heat removed from rooms only where something cools', () => {
    const { rooms } = somePlan('cooled', { den: { over: { cooling_kwh: 123.4 } } });
    expect(roomsTable(rooms, 200)).toMatch(/cooling[\s\S]*\n *den +4500 +123 most /);
    expect(roomsTable(PLANS[1]!.rooms, 200)).not.toContain('cooling');
  });
});

describe('ledger tables', () => {
  const books = ledger(2, [0, 1], {
    energy: { heating: 3.6e9, walls: -3.24e9 },
    water: { people: 30.4, leakage: -28.4 },
  });
  books.energy.heating[3] = 3.6e8; // second room, second month

  test('add months up, room by room, and leave out ways nothing went', () => {
    expect(energyLedgerTable(books, ['den', 'bath'], 80)).toBe(
      ['         home   den  bath', 'heating  1100  1000   100', 'walls    -900  -900     0'].join(
        '\n',
      ),
    );
    expect(line(waterLedgerTable(books, ['den', 'bath'], 80), 'people')).toBe('people 30 30 0');
  });

  test('what is stored has its own line', () => {
    books.stored.energy[0] = 3.6e8;
    expect(line(energyLedgerTable(books, ['den', 'bath'], 80), 'stored')).toBe('stored 100 100 0');
  });

  test('nothing booked is no table', () => {
    expect(energyLedgerTable(ledger(1, [0]), ['den'], 80)).toBe('');
  });
});

describe('handbookCrossCheckTable', () => {
  const notices = [
    { id: 'handbook-cross-check-heating', text: 'They differ by the sun.' },
    { id: 'other', text: 'Unrelated.' },
  ];
  const text = handbookCrossCheckTable({ ...PLANS[0]!, notices }, 80);

  test('sets handbook beside simulation', () => {
    expect(line(text, 'heating')).toBe('heating [kWh] 9600 9000 +7');
    expect(line(text, 'leakage')).toBe('leakage [air changes an hour] 0.55 0.50 +10');
    expect(text).toContain('- They differ by the sun.');
    expect(text).not.toContain('Unrelated');
  });

  test('no blower-door figure is a dash', () => {
    const handbook_cross_check = { ...PLANS[0]!.handbook_cross_check, ach50_over_20: null };
    const found = handbookCrossCheckTable(
      {
        ...PLANS[0]!,
        handbook_cross_check: handbook_cross_check,
      },
      80,
    );
    expect(line(found, 'leakage')).toBe('leakage [air changes an hour] - 0.50 -');
  });
});

describe('assumedTable', () => {
  test('low and high beside the value, each source once', () => {
    const source = 'Age band 1900-1929, common practice';
    const text = assumedTable(
      [
        { path: '/home/leakage/ach50', value: 11, unit: '1/h', low: 7, high: 15, source },
        { path: '/home/walls', value: 'solid brick', unit: '', low: null, high: null, source },
      ],
      80,
    );
    expect(line(text, '/home/leakage')).toBe('/home/leakage/ach50 11.0 1/h 7.00 to 15.0 1');
    expect(line(text, '/home/walls')).toBe('/home/walls: solid brick (1)');
    expect(text.split(source)).toHaveLength(2);
  });

  test('the widest range first, beside what lies in it; words last', () => {
    const one = (
      path: string,
      value: number | string,
      low: number | null,
      high: number | null,
    ) => ({
      ...{ path, value, unit: '', low, high, source: 'common practice' },
    });
    const text = assumedTable(
      [
        one('/word', 'often', null, null),
        one('/certain', 5, 5, 5),
        one('/narrow', 100, 90, 110), // a fifth
        one('/wide', 1, 0.5, 1.5), // once
        one('/open', 0, 0, 0.3), // twice, from nothing on
      ],
      80,
    );
    const paths = text.split('\n').flatMap((row) => /^\/\w+/.exec(row) ?? []);
    expect(paths).toEqual(['/open', '/wide', '/narrow', '/certain', '/word']);
  });

  test('a place too long for the screen stands in a line of its own, its values under the others', () => {
    const path = `/home/rooms/${'north '.repeat(12)}bedroom/openings/0/height`;
    const source = 'common practice';
    const text = assumedTable(
      [
        { path, value: 1, unit: 'm', low: 0.5, high: 1.4, source },
        { path: '/home/height', value: 2.4, unit: 'm', low: 2.2, high: 2.8, source },
      ],
      80,
    );
    const [, first, second, third] = text.split('\n');
    expect(first).toBe(path);
    expect(second).toMatch(/^ +1\.00 m +0\.500 to 1\.40 +1$/);
    expect(third!.indexOf('2.40 m')).toBe(second!.indexOf('1.00 m'));
    expect(second!.length).toBe(80);
  });
});

/** In UTC. */
const printed = (measures: PlanMeasures, of: Parameters<typeof runTables>[1]): string =>
  runTables(measures, of, UTC_CLOCK, 80);

describe('runTables', () => {
  const measures: PlanMeasures = {
    ...PLANS[0]!,
    cautions: [{ id: 'co-alarm', text: 'Fit an alarm.' }],
    notices: [
      { id: 'handbook-cross-check-heating', text: 'Said once.' },
      { id: 'hours-filled', text: 'Two hours of weather were filled.' },
    ],
  };
  const text = printed(measures, ledger(2, [0], { energy: { heating: 3.6e9 } }));

  test('names scenario, plan and period, and has every part that is not empty', () => {
    expect(text.split('\n').slice(0, 2)).toEqual([
      'Hand-made terrace: as-lived',
      '2023-01-01 to 2023-12-31 (365 days)',
    ]);
    expect(line(text, 'all money')).toBe('all money 1210 GBP/year');
    expect(text).toContain('- Fit an alarm. [co-alarm]');
    expect(text).toContain('- Two hours of weather were filled. [hours-filled]');
    expect(text).not.toContain('Assumed');
    expect(text).not.toContain('Where the water went');
  });

  test('cooling has its lines where something cools', () => {
    const cooling = { removed_kwh: 310, delivered_kwh: { electricity: 104 } };
    const found = printed({ ...measures, cooling }, ledger(1, [0]));
    expect(line(found, 'removed by cooling')).toBe('removed by cooling 310 kWh');
    expect(line(found, 'electricity for cooling')).toBe('electricity for cooling 104 kWh');
    expect(text).not.toContain('cooling');
  });

  test('what the air carried, the scenario’s own last, with a dash where a level is not known', () => {
    const [den, bath] = Object.values(measures.rooms) as [RoomMeasures, RoomMeasures];
    const found = printed(
      {
        ...measures,
        species: {
          ...measures.species,
          radon: { label: 'Radon\nin rooms', unit: 'Bq/m3', mean_outdoors: 10 },
        },
        rooms: {
          den: {
            ...{ ...den, species: { co2: level(812.4), radon: level(43.21) } },
            outside_band_hours: { ...den.outside_band_hours, co2_high: 7, ...{ radon_high: 96 } },
          },
          bath: { ...bath, species: { co2: level(700) } },
        },
      },
      ledger(2, [0]),
    );
    const from = found.slice(found.indexOf('In the air'));
    expect(line(from, 'outdoors').trim()).toBe('outdoors 420');
    expect(line(from, 'den').trim()).toBe('den 812 894 975 1219 1625 7');
    expect(line(from, 'bath').trim()).toBe('bath 700 770 840 1050 1400 0');
    const radon = from.slice(from.indexOf('Radon in rooms [Bq/m3]'));
    expect(line(radon, 'outdoors').trim()).toBe('outdoors 10.0');
    expect(line(radon, 'den').trim()).toBe('den 43.2 47.5 51.9 64.8 86.4 96');
    expect(line(radon, 'bath').trim()).toBe('bath - - - - - -');
    expect(printed({ ...measures, species: {} }, ledger(2, [0]))).not.toContain('In the air');
  });

  test('gas that activities burn is told where there is any', () => {
    const devices = { ...measures.devices, gas_kwh: 365 };
    const found = printed({ ...measures, devices }, ledger(1, [0]));
    expect(line(found, 'gas burnt by activities')).toBe('gas burnt by activities 365 kWh');
    expect(text).not.toContain('gas burnt');
  });

  test('blinds have a table where there are any', () => {
    const blinds = { 'den window curtain': { room: 'den', closed_hours: 1988.6 } };
    const found = printed({ ...measures, blinds }, ledger(1, [0]));
    expect(line(found, 'den window curtain')).toBe('den window curtain 1989');
    expect(text).not.toContain('Blinds');
  });

  test('a balance that closes to the last digit is 0, not a power of ten', () => {
    const balance = { ...measures.balance, air_residual: 0, water_residual: 2.5e-14 };
    const found = printed({ ...measures, balance }, ledger(2, [0]));
    expect(line(found, 'air')).toBe('air 0');
    expect(line(found, 'water')).toBe('water 2.5e-14');
  });

  test('a handbook cross-check is not said again among the notices', () => {
    expect(text.split('Said once.')).toHaveLength(2);
  });

  test('arrivals are told of rooms that somebody comes into; other parts where there are any', () => {
    expect(text).toContain('Coming into a room that stood empty');
    for (const part of ['Devices', 'Airing', 'Rules']) expect(text).not.toContain(`${part}\n`);
    const nobody = { ...measures.rooms['den']!, arrivals: 0 };
    const empty = printed({ ...measures, rooms: { den: nobody } }, ledger(1, [0]));
    expect(empty).not.toContain('Coming into');
  });

  test('devices, rules and airing, each in its own table, within 80 columns', () => {
    const rule = { fired: 52, per_week: 1, someone_home: 40, someone_awake: 30 };
    const full: PlanMeasures = {
      ...measures,
      devices: {
        electricity_kwh: 1620,
        gas_kwh: 0,
        by_device: { dryer: 120, stove: 0 },
        detail: {
          dryer: {
            electricity_kwh: 120,
            electricity_money: null,
            fuel_kwh: 0,
            water_kg: -210,
            heat_kwh: 260,
            hours: 400,
            starts: 300,
            emptied: 90,
            hours_4_pa_below_outdoors: null,
          },
          stove: {
            electricity_kwh: 0,
            electricity_money: null,
            fuel_kwh: 900,
            water_kg: 0,
            heat_kwh: 680,
            hours: 310,
            starts: 60,
            emptied: 0,
            hours_4_pa_below_outdoors: null,
          },
        },
      },
      rooms: { den: { ...measures.rooms['den']!, window_open_hours: 61 } },
      airing: {
        ...measures.airing,
        openings_kg: 80,
        heating_season_kg: 50,
        heating_season_kwh: 60,
        kwh_per_litre: 1.2,
        money_per_litre: 0.099,
        hours_drier: 55,
        hours_wetter: 6,
        hours_humidity_rule_wrong: 1200,
      },
      alerts: {
        ...measures.alerts,
        by_rule: {
          damp: {
            ...rule,
            ...{
              tells: true,
              could_act: 35,
              acted_on: 20,
              duplicates: 3,
              active_hours: 12,
              missed: 7,
              held_back: 6,
              by_hour: [],
              could_act_by_hour: [],
            },
          },
        },
      },
    };
    const told = printed(full, ledger(1, [0]));
    const from = (title: string) => told.slice(told.indexOf(`\n\n${title}\n`));
    expect(line(from('Devices'), 'dryer')).toBe('dryer 400 300 120 0 260 210 90');
    expect(line(from('Devices'), 'stove')).toBe('stove 310 60 0 900 680 0 0');
    expect(from('Devices')).not.toContain('added');
    expect(line(from('Rules'), 'damp')).toBe('damp 52 1.0 40 30 35 20 3 12 7');
    expect(line(from('Airing'), 'for each litre of water then')).toBe(
      'for each litre of water then 1.20 kWh',
    );
    expect(line(from('Airing'), 'until then, mean')).toBe('until then, mean - min');
    expect(line(told, 'electricity of appliances')).toBe('electricity of appliances 1500 kWh');
    expect(line(told, 'electricity of devices')).toBe('electricity of devices 120 kWh');
    const tables = told.slice(told.indexOf('Whole home'), told.indexOf('Where the heat went'));
    expect(Math.max(...tables.split('\n').map((l) => l.length))).toBeLessThanOrEqual(80);
  });

  test('never shows what is not a number', () => {
    const broken = { ...measures, balance: { ...measures.balance, water_residual: Number.NaN } };
    expect(printed(broken, ledger(2, [0]))).not.toMatch(/NaN|Infinity|undefined|null/);
  });
});

test('what became of each rule, every figure under its own head', () => {
  const rule = {
    ...{ tells: true, fired: 11, per_week: 12, someone_home: 13, someone_awake: 14, could_act: 15 },
    ...{ acted_on: 16, duplicates: 17, active_hours: 18, missed: 19, held_back: 20 },
    ...{ by_hour: [], could_act_by_hour: [] },
  };
  const text = alertsTable({ ...somePlan('x').alerts, by_rule: { damp: rule } }, 400);
  expect(text.split('\n').at(-1)!.split(/ +/)).toEqual(
    'damp 11 12.0 13 14 15 16 17 18 19 20'.split(' '),
  );
});
