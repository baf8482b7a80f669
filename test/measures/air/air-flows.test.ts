import { describe, expect, test } from 'vitest';
import { simulate } from '../../../src/engine/simulate.ts';
import type { Home } from '../../../src/home/home.ts';
import { airFlows } from '../../../src/measures/air/air-flows.ts';
import { createMeasures } from '../../../src/measures/create-measures.ts';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import type { Weather } from '../../../src/weather/weather.ts';
import { noAutomation } from '../../control/no-automation.ts';
import {
  always,
  bareHome,
  bareRoom,
  ideallyHeated,
  madeWeather,
  NEW_YEAR,
  quietHousehold,
  runAlways,
} from '../../engine/homes.ts';
import { ledger, setup } from '../hand-made.ts';

const COLD = madeWeather({ wind: () => 0 });

/** A kitchen below a bedroom: 10 L/s leak steadily, half in each; 5 L/s are supplied above, taken below. */
const HOME: Home = ideallyHeated(
  bareHome([bareRoom('kitchen', 36), bareRoom('bedroom', 36, { storey: 1 })], {
    leakage: { how: { by: 'rate', flow: 0.01 }, share: [0.5, 0.5], ach50: null },
    doorways: [{ name: 'door', rooms: [1, 0], width: 0.8, height: 2, mixing: 0, shut: 0.002 }],
    devices: [
      {
        ...{ name: 'ventilation', room: 0 },
        does: {
          ...{ kind: 'balanced ventilation', heatRecovery: 0, moistureRecovery: 0, power: 0 },
          supplies: [{ room: 1, flow: 0.005 }],
          extracts: [{ room: 0, flow: 0.005 }],
        },
      },
    ],
  }),
);

function figures(home: Home, setpoint: number, hours = 48, weather = COLD): PlanMeasures {
  const period = { start: NEW_YEAR, hours };
  const measures = createMeasures(setup({ home, weather, period }));
  const household = quietHousehold(home, {
    setpoints: home.rooms.map(() => always(setpoint)),
    doorways: home.doorways.map(() => always(0)),
  });
  const automation = {
    ...noAutomation(home.rooms.length),
    deviceControls: home.devices.map((_, device) => runAlways(device)),
  };
  const input = { home, household, automation, weather, dt: 600, spinUpDays: 1, ...period };
  return measures.finish(simulate(input, [measures.observe]));
}

describe('steady leaks and a supply fan, by hand', () => {
  const found = figures(HOME, 20);

  test('each room gets its share of the leaks, and the bedroom the fan besides', () => {
    expect(found.rooms['kitchen']!.outdoor_air_l_per_s).toBeCloseTo(5, 4);
    expect(found.rooms['bedroom']!.outdoor_air_l_per_s).toBeCloseTo(10, 4);
    expect(found.outdoor_air.l_per_s).toBeCloseTo(15, 4);
    expect(found.outdoor_air.leaks_l_per_s).toBeCloseTo(10, 4);
    expect(found.outdoor_air.windows_l_per_s).toBe(0);
    expect(found.outdoor_air.fans_l_per_s).toBeCloseTo(5, 4);
  });

  test('the storeys have a third and two thirds of it', () => {
    expect(Object.keys(found.outdoor_air_share_by_storey)).toEqual(['0', '1']);
    expect(found.outdoor_air_share_by_storey['0']).toBeCloseTo(1 / 3, 6);
    expect(found.outdoor_air_share_by_storey['1']).toBeCloseTo(2 / 3, 6);
  });

  test('what the fan supplies goes down by the shut door and none comes up against it', () => {
    // 5 L/s one way and 2 both ways at once: max(5, 2 + 5/2) down, 5 less of it up.
    const flows = found.air_flows.map(({ from, to, l_per_s }) => [from, to, l_per_s.toFixed(3)]);
    expect(flows).toEqual([
      ['outdoors', 'kitchen', '5.000'],
      ['kitchen', 'outdoors', '10.000'],
      ['outdoors', 'bedroom', '10.000'],
      ['bedroom', 'outdoors', '5.000'],
      ['bedroom', 'kitchen', '5.000'],
    ]);
  });

  test('it is said in words', () => {
    const said = found.notices.filter(({ id }) => id.startsWith('fresh-air-'));
    expect(said).toEqual([
      {
        id: 'fresh-air-in',
        text:
          'Fresh air: 15.0 L/s on average in the heating season, 0.75 air changes an hour, 67 % by ' +
          'cracks and vents and 33 % by supply fans. Most comes into bedroom (10.0 L/s) and ' +
          'kitchen (5.0 L/s). Of it all, 33 % comes in on the ground floor and 67 % one floor up.',
      },
    ]);
  });
});

test('homes of cold days are told of in the heating season though nobody heats them, of warm days over the period', () => {
  const warm = madeWeather({ wind: () => 0, temperature: () => 18 });
  const said = (of?: Weather) =>
    figures(HOME, Number.NEGATIVE_INFINITY, 48, of).notices.find(({ id }) => id === 'fresh-air-in')!
      .text;
  expect(said()).toContain('15.0 L/s on average in the heating season, ');
  expect(said(warm)).toContain('15.0 L/s on average over the period, ');
});

test('only the months asked for count, by their length', () => {
  const books = ledger(2, [0, 6], { air: { leaksIn: 7.2, extracts: 3.6 } });
  books.air.leaksIn[3] = 500; // of the second room in July
  const home = { rooms: HOME.rooms, doorways: [] };
  expect(airFlows(home, books, [0], 3600)).toEqual({
    home: { l_per_s: 2, leaks_l_per_s: 2, windows_l_per_s: 0, fans_l_per_s: 0 },
    intoRooms: [2, 0],
    shareByStorey: { 0: 1, 1: 0 },
    between: [
      { from: 'outdoors', to: 'kitchen', l_per_s: 2 },
      { from: 'kitchen', to: 'outdoors', l_per_s: 1 },
    ],
  });
});

test('of one room, or of rooms that no air enters, there is less to say', () => {
  const said = (home: Home) =>
    figures(home, 20).notices.find(({ id }) => id === 'fresh-air-in')!.text;
  const how = { by: 'rate', flow: 0.01 } as const;
  const one = bareHome([bareRoom('den', 36)], { leakage: { how, share: [1], ach50: null } });
  const alone =
    'Fresh air: 10.0 L/s on average in the heating season, 1.00 air changes an hour, 100 % by cracks and vents.';
  expect(said(one)).toBe(alone);
  const leaks = { how, share: [1, 0], ach50: null };
  const two = bareHome([bareRoom('den', 24), bareRoom('larder', 12)], { leakage: leaks });
  expect(said(two)).toBe(`${alone} Most comes into den (10.0 L/s).`);
});

test('a home that no air enters says so, and its storeys have no share', () => {
  const tight = { ...HOME, devices: [], leakage: { ...HOME.leakage, how: NO_LEAKS } };
  const found = figures(tight, 20);
  expect(found.outdoor_air.l_per_s).toBe(0);
  expect(found.outdoor_air_share_by_storey).toEqual({ 0: 0, 1: 0 });
  expect(found.notices.find(({ id }) => id === 'fresh-air-in')!.text).toBe(
    'Fresh air: none came in in the heating season.',
  );
});

test('doorways between the same rooms are one flow, and shares of all storeys add to 1', () => {
  const doorways = [HOME.doorways[0]!, { ...HOME.doorways[0]!, rooms: [0, 1] as const }];
  const found = figures({ ...HOME, doorways }, 20);
  const between = found.air_flows.filter(
    ({ from, to }) => from !== 'outdoors' && to !== 'outdoors',
  );
  expect(between.map(({ from, to }) => [from, to])).toEqual([
    ['bedroom', 'kitchen'],
    ['kitchen', 'bedroom'],
  ]);
  // Half of the 5 L/s by each: max(2.5, 2 + 1.25) down, 0.75 up, twice.
  expect(between[0]!.l_per_s).toBeCloseTo(6.5, 3);
  expect(between[1]!.l_per_s).toBeCloseTo(1.5, 3);
  const shares = Object.values(found.outdoor_air_share_by_storey);
  expect(shares.reduce((sum, x) => sum + x, 0)).toBeCloseTo(1, 12);
});

const NO_LEAKS = { by: 'rate', flow: 0 } as const;
