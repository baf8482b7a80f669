import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';

const YEAR = 'weather/saltmere-typical.csv';
const weather = readWeather(readFileSync(YEAR, 'utf8'), YEAR);
const calm = { ...weather, windDirection: new Float64Array(weather.count).fill(Number.NaN) };

const KINDS = {
  'a flat between neighbours': {
    build: 'shape: flat, age: 1970',
    rooms: [
      'living: { use: living, floor area: 20, outer sides: 1 }',
      'bed: { use: bedroom, floor area: 12, outer sides: 1 }',
    ],
    doors: ['[living, bed]'],
  },
  'a bungalow': {
    build: 'shape: detached, age: 1960',
    rooms: [
      'living: { use: living, floor area: 20 }',
      'bed: { use: bedroom, floor area: 12, storey: 0 }',
    ],
    doors: ['[living, bed]'],
  },
  'a house of three storeys': {
    build: 'shape: end terrace, age: 1910',
    rooms: [
      'living: { use: living, floor area: 20 }',
      'bed: { use: bedroom, floor area: 15, over: living }',
      'attic: { use: bedroom, floor area: 15, over: bed }',
    ],
    doors: ['[living, bed]', '[bed, attic]'],
  },
  'rooms without any door between them': {
    build: 'shape: terrace, age: 1910',
    rooms: [
      'living: { use: living, floor area: 20 }',
      'bed: { use: bedroom, floor area: 15, over: living }',
    ],
    doors: [],
  },
} as const;

/** A week of January in it. */
function week(
  { build, rooms, doors }: (typeof KINDS)[keyof typeof KINDS],
  more = '',
  of = weather,
) {
  const text = `title: Home
weather: none.csv
site: { latitude: 54.2, longitude: -1.9, elevation: 35 m, timezone: Europe/London }
money: { currency: GBP, electricity: 0.2 }
home:
  build: { ${build} }
  rooms:
    ${rooms.join('\n    ')}
  doorways: [${doors.map((rooms) => `{ between: ${rooms}, open: always }`).join(', ')}]
heating: { source: direct electric, setpoint: 20 }
household: { people: [] }
${more}`;
  const scenario = readOnce(text, 'home.yaml');
  const plan = preparePlan(scenario, { plan: 'as-lived', set: [], files: new Map() });
  return runPlan({ plan, weather: of, period: { start: weather.start, hours: 168 } }).measures;
}

describe.each(Object.entries(KINDS))('%s', (_name, kind) => {
  test.each([
    ['wind that has a direction', weather],
    ['wind of which nobody knows where from', calm],
  ])('breathes, and air balances in every room, in %s', (_what, of) => {
    const { balance, rooms, outdoor_air_share_by_storey: storeys } = week(kind, '', of);
    expect(balance.air_residual).toBeLessThan(1e-12);
    const air = Object.values(rooms).map(({ outdoor_air_l_per_s }) => outdoor_air_l_per_s!);
    const whole = air.reduce((a, b) => a + b, 0);
    expect(whole).toBeGreaterThan(1);
    expect(whole).toBeLessThan(100);
    expect(Object.values(storeys!).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  });
});

test('a store inside the home that no door leads to finds the air of its fan all the same', () => {
  const kind = KINDS['a bungalow'];
  const rooms = [
    ...kind.rooms,
    'store: { use: storage, floor area: 4, outer sides: 0, storey: 0 }',
  ];
  const fan = 'devices: { fan: { kind: extract fan, room: store, flow: 36 m3/h, runs: always } }';
  const { balance, rooms: measured } = week({ ...kind, rooms } as unknown as typeof kind, fan);
  expect(balance.air_residual).toBeLessThan(1e-12);
  expect(measured['store']!.outdoor_air_l_per_s).toBeGreaterThan(0);
});
