import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { homeWith, problemsOf, readingProblems } from '../problems-of.ts';

const PLANS = `plans:
  base: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: living, label: 12 L/day, power: 200 W, target: 55 % } } } }
`;
const HEATING = `heating: { efficiency: 86 %, setpoint: 20, setback: 17 }
household: { activities: [{ what: bath, at: "18:00" }] }`;
const doubting = (lines: string, more = HEATING) =>
  homeWith(`${more}\ndoubts:\n${lines.replaceAll(/^/gm, '  ')}\n${PLANS}`);

describe('doubts', () => {
  test('are read in the order of the file, about what is given, assumed, or in a plan only', () => {
    const text = doubting(
      '/home/leakage/ach50: [7, 15]\n/heating/efficiency: [0.8, 0.9]\n/devices/drier/power: [180, 240]',
    );
    expect(readScenario(text, 'h.yaml').doubts).toEqual([
      { path: '/home/leakage/ach50', low: 7, high: 15 },
      { path: '/heating/efficiency', low: 0.8, high: 0.9 },
      { path: '/devices/drier/power', low: 180, high: 240 },
    ]);
  });

  test('there are none where the file states none', () => {
    expect(readScenario(homeWith(''), 'h.yaml').doubts).toEqual([]);
    expect(readScenario(homeWith('doubts: {}'), 'h.yaml').doubts).toEqual([]);
  });

  test('the ends themselves may be what the scenario gives', () => {
    const text = doubting('/heating/efficiency: [0.86, 0.9]\n/heating/setback: [15, 17]');
    expect(readingProblems(text)).toEqual([]);
  });

  test('leave every plan as it is', () => {
    const bare = readScenario(homeWith(PLANS), 'h.yaml');
    const stated = readScenario(doubting('/home/leakage/ach50: [7, 15]', ''), 'h.yaml');
    for (const plan of ['base', 'dry']) {
      const choice = { plan, set: [], files: new Map() };
      expect(preparePlan(stated, choice)).toEqual(preparePlan(bare, choice));
    }
  });
});

describe('one wrong doubt, one line, whatever the number of plans', () => {
  test.each([
    [
      'no mapping',
      '[]',
      'h.yaml:11:3: doubts: expected a mapping from pointers such as /heating/efficiency to [low, high], got an empty list',
    ],
    [
      'no pointer',
      'heating.efficiency: [0.8, 0.9]',
      'h.yaml:11:3: doubts.heating.efficiency: expected a pointer such as /heating/setpoint, got "heating.efficiency" (a slash in a name is written ~1)',
    ],
    [
      'a pointer with an empty step',
      '/heating//efficiency: [0.8, 0.9]',
      'h.yaml:11:3: doubts./heating//efficiency: expected a pointer such as /heating/setpoint, got "/heating//efficiency" (a slash in a name is written ~1)',
    ],
    [
      'what no run varies',
      '/plans/base/purchases/0/price: [1, 2]',
      'h.yaml:11:3: doubts./plans/base/purchases/0/price: expected a doubt about the home or its people, got plans, which no run varies',
    ],
    [
      'one number',
      '/heating/efficiency: 0.8',
      'h.yaml:11:24: doubts./heating/efficiency: expected a list of two plain numbers, low and high, such as [7, 15], got 0.8',
    ],
    [
      'three numbers',
      '/heating/efficiency: [0.8, 0.86, 0.9]',
      'h.yaml:11:24: doubts./heating/efficiency: expected a list of two plain numbers, low and high, such as [7, 15], got a list of 3',
    ],
    [
      'a number with a unit',
      '/heating/efficiency: [0.8, 90 %]',
      'h.yaml:11:30: doubts./heating/efficiency #2: expected a number, got "90 %"',
    ],
    [
      'high and low',
      '/heating/efficiency: [0.9, 0.8]',
      'h.yaml:11:24: doubts./heating/efficiency: expected a low below its high, got [0.9, 0.8]',
    ],
    [
      'no width',
      '/heating/efficiency: [0.86, 0.86]',
      'h.yaml:11:24: doubts./heating/efficiency: expected a low below its high, got [0.86, 0.86]',
    ],
    [
      'a range beside what is given, in the documented unit',
      '/heating/efficiency: [0.7, 0.8]',
      'h.yaml:11:24: doubts./heating/efficiency: expected a range that holds the value 0.86, got [0.7, 0.8]',
    ],
    [
      'an end that cannot be',
      '/heating/efficiency: [0.8, 90]',
      'h.yaml:11:30: doubts./heating/efficiency #2: expected a share of 1 above 0 and up to 1.1, got 90',
    ],
    [
      'an end that cannot be, of what only a plan has',
      '/devices/drier/target: [50, 120]',
      'h.yaml:11:31: doubts./devices/drier/target #2: expected a percentage from 10 to 95, got 120',
    ],
    [
      'an end that something else forbids',
      '/heating/setpoint: [16, 21]',
      'h.yaml:11:23: doubts./heating/setpoint #1: expected a number with which the scenario is right, got 16, with which heating.setback is wrong: expected a setback of the setpoint (16 °C) or less, got 17',
    ],
    [
      'a key that is not known',
      '/heating/efficency: [0.8, 0.9]',
      'h.yaml:11:3: doubts./heating/efficency: did you mean "efficiency"? Expected one of the keys source, fuel, efficiency, cop, power, backup, sharing, water temperature, emitters, setpoint, hours, setback, night, gate, hold off, lead, longest lead, window lock-out, sensor, proportional band, deadband, season, holiday setback, thermostat, frost guard, rooms, got "efficency", which is not known',
    ],
    [
      'a room that is not there',
      '/home/rooms/livng/height: [2.4, 2.6]',
      'h.yaml:11:3: doubts./home/rooms/livng/height: expected a pointer to a number of the scenario, got "/home/rooms/livng/height", with which home.rooms.livng.floor area is wrong: expected an area in m2 from 1 to 2000, got nothing (did you mean "living"?)',
    ],
    [
      'an item that is not there',
      '/household/activities/bath/water: [0.7, 0.8]',
      'h.yaml:11:3: doubts./household/activities/bath/water: expected an item from 0 to 1, got "bath" (items are counted from 0)',
    ],
    [
      'an item after the last',
      '/household/activities/1/water: [0.7, 0.8]',
      'h.yaml:11:3: doubts./household/activities/1/water: expected a pointer to a number of the scenario, got "/household/activities/1/water", with which household.activities #2.what is wrong: expected one of: shower, bath, cooking, light meal, dishes, laundry dried indoors, plants, fridge, lights and appliances, standby, candles, cleaning, tumble dryer, other, got nothing',
    ],
    [
      'more than one number',
      '/home/rooms: [7, 15]',
      'h.yaml:11:3: doubts./home/rooms: expected a pointer to one number, got "/home/rooms", where the scenario has a mapping',
    ],
    [
      'a pointer that leads past a number',
      '/heating/efficiency/low: [0.8, 0.9]',
      'h.yaml:11:3: doubts./heating/efficiency/low: expected a pointer to one number, got "/heating/efficiency/low", where /heating/efficiency is "86 %" already (did you mean "/heating/efficiency"?)',
    ],
    [
      'what is no number',
      '/invented: [0, 1]',
      'h.yaml:11:3: doubts./invented: expected a doubt about the home or its people, got invented, which no run varies',
    ],
  ])('%s', (_, line, expected) => {
    expect(readingProblems(doubting(line))).toEqual([expected]);
  });
});

test('several doubts, and a mistake elsewhere that they do not repeat', () => {
  const text = doubting(
    '/heating/setpoint: [16, 19]\n/heating/eficiency: [1, 2]\n/home/leakage/ach50: [-1, 900]',
    'heating: { setpoint: 20, setback: 17 }\nstep: 90',
  );
  expect(readingProblems(text)).toEqual([
    'h.yaml:9:7: step: expected a length of time in min from 1 to 60, got 90',
    'h.yaml:11:22: doubts./heating/setpoint: expected a range that holds the value 20, got [16, 19]',
    'h.yaml:11:23: doubts./heating/setpoint #1: expected a number with which the scenario is right, got 16, with which heating.setback is wrong: expected a setback of the setpoint (16 °C) or less, got 17',
    expect.stringContaining(
      'h.yaml:12:3: doubts./heating/eficiency: did you mean "efficiency"? Expected one of the keys source, ',
    ),
    'h.yaml:13:25: doubts./home/leakage/ach50 #1: expected a number of air changes per hour in 1/h above 0 and up to 100, got -1',
    'h.yaml:13:29: doubts./home/leakage/ach50 #2: expected a number of air changes per hour in 1/h above 0 and up to 100, got 900',
  ]);
});

describe('they are read before any plan or setting', () => {
  test('no plan changes them, nor whether the home is invented', () => {
    const plan =
      'plans: { a: { change: { doubts: { /heating/efficiency: [0.7, 0.9] }, invented: true } } }';
    expect(readingProblems(homeWith(plan))).toEqual([
      'h.yaml:8:25: plans.a.change.doubts: expected a change of the home or its people, got doubts, which all plans share',
      'h.yaml:8:70: plans.a.change.invented: expected a change of the home or its people, got invented, which all plans share',
    ]);
  });

  test.each([
    ['/invented=true', 'invented'],
    ['/doubts/~1heating~1efficiency=[0.8, 0.9]', 'doubts./heating/efficiency'],
  ])('%s is refused', (set, where) => {
    const scenario = readScenario(homeWith(''), 'h.yaml');
    const what = set.split(/[/=]/)[1];
    expect(
      problemsOf(() => preparePlan(scenario, { plan: null, set: [set], files: new Map() })),
    ).toEqual([
      `--set ${set}: ${where}: expected a setting of the home or its people, got ${what}, which was read before`,
    ]);
  });
});

describe('invented', () => {
  const invented = (more: string) => readScenario(homeWith(more), 'h.yaml').invented;

  test('is true only where the file says so', () => {
    expect([invented('invented: true'), invented('invented: false'), invented('')]).toEqual([
      true,
      false,
      false,
    ]);
  });

  test('is no word', () => {
    expect(readingProblems(homeWith('invented: yes'))).toEqual([
      'h.yaml:8:11: invented: expected true or false, got "yes"',
    ]);
  });
});
