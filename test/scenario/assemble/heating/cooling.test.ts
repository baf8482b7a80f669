import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../../problems-of.ts';

const said = (more: string) => readingProblems(homeWith(more)).join('\n');

function prepared(more: string, set: readonly string[] = []) {
  const scenario = readScenario(homeWith(more), 'h.yaml');
  return preparePlan(scenario, { plan: null, set, files: new Map() });
}

const sized = (room: string) => `${room}: { floor area: 8 }`;

/** Value at a path among what was assumed. */
const assumedIn = ({ assumed }: ReturnType<typeof prepared>, path: string) =>
  assumed.find((row) => row.path === path);

test('a home without the section has nothing that cools', () => {
  const { home, household, automation } = prepared('');
  expect([home.cooling, household.cooling, automation.coolingGates]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

describe('a split unit of which little is said', () => {
  const plan = prepared('cooling: { rooms: [bedroom], power: 2 kW, setpoint: 24 }');

  test('has the usual coil, and air for its power', () => {
    const [unit, ...others] = plan.home.cooling ?? [];
    expect(others).toEqual([]);
    expect(unit).toMatchObject({ name: 'bedroom air conditioner', room: 1, source: 'split' });
    expect(unit).toMatchObject({ power: 2000, exhaust: 0, radiantShare: 0 });
    expect(unit?.coil).toEqual({ bypassFactor: 0.15, temperature: 10, airflow: 320 / 3600 });
  });

  test('has an EER that falls as it gets hotter', () => {
    // 35 % of the ideal between 10 °C and 10 K over outdoors, worked by hand.
    const { outdoor, value } = plan.home.cooling![0]!.eer;
    expect(value[outdoor.indexOf(25)]).toBeCloseTo(3.964, 3);
    expect(value[outdoor.indexOf(35)]).toBeCloseTo(2.831, 3);
  });

  test('lists what it assumes', () => {
    expect(assumedIn(plan, '/cooling/source')).toMatchObject({ value: 'split', low: null });
    expect(assumedIn(plan, '/cooling/coil/airflow')).toMatchObject({ value: 320 });
    expect(assumedIn(plan, '/cooling/eer')?.source).toContain('from memory');
    expect(assumedIn(plan, '/cooling/power')).toBeUndefined();
  });

  test('is off in the other room', () => {
    expect(plan.household.cooling?.map(({ base }) => base)).toEqual([Infinity, 24]);
  });
});

test('rooms lived or slept in are cooled where none are named', () => {
  const { home } = prepared('cooling: { source: ideal }', [
    `/home/rooms={ ${['living', 'dining', 'bedroom', 'hall', 'study'].map(sized).join(', ')} }`,
  ]);
  expect(home.cooling?.map(({ room }) => home.rooms[room]!.name)).toEqual([
    'living',
    'dining',
    'bedroom',
    'study',
  ]);
  expect(home.cooling?.[0]).toMatchObject({ power: Infinity, coil: null });
});

test('every room is cooled where all are, none where the source is none', () => {
  const hall = [`/home/rooms={ ${['living', 'bedroom', 'hall'].map(sized).join(', ')} }`];
  expect(prepared('cooling: { rooms: all }', hall).home.cooling).toHaveLength(3);
  expect(prepared('cooling: { source: none, rooms: all }', hall).home.cooling).toBeUndefined();
});

test('what is assumed can be given at its path', () => {
  const plan = prepared('cooling: { source: single duct }');
  const rows = plan.assumed.filter(({ path }) => path.startsWith('/cooling/'));
  expect(rows.map(({ path }) => path)).toEqual([
    '/cooling/rooms',
    '/cooling/eer',
    '/cooling/power',
    '/cooling/coil/bypass factor',
    '/cooling/coil/temperature',
    '/cooling/coil/airflow',
    '/cooling/exhaust',
    '/cooling/setpoint',
  ]);
  const given = prepared(
    'cooling: { source: single duct }',
    rows.map(({ path, value }) => `${path}=${value}`),
  );
  expect(given.assumed.filter(({ path }) => path.startsWith('/cooling/'))).toEqual([]);
  expect(given.home.cooling).toEqual(plan.home.cooling);
  expect(plan.home.cooling?.[0]).toMatchObject({
    exhaust: 350 / 3600,
    eer: { outdoor: [0], value: [2.6] },
  });
});

test('a reversible heat pump cools by the emitters there are', () => {
  const { home } = prepared(
    'heating: { source: heat pump, emitters: { radiant share: 0.4 } }\n' +
      'cooling: { source: reversible heat pump, power per area: 20 }',
    ['/home/rooms/bedroom/emitter=none'],
  );
  expect(home.cooling).toHaveLength(1);
  expect(home.cooling?.[0]).toMatchObject({ room: 0, power: 320, coil: null, radiantShare: 0.4 });
});

test('rooms have hours, gates and power of their own', () => {
  const { household, automation, home } = prepared(`cooling:
  setpoint: 26
  hours: "12:00-20:00"
  gate: when windows are closed
  rooms:
    living: 25
    bedroom: { setpoint: 23, hours: "20:00-23:00", gate: when present, power: 1.5 kW }`);
  const spell = { days: 127, from: 720, to: 1200, value: 25 };
  expect(household.cooling?.[0]).toEqual({ base: Infinity, spells: [spell] });
  expect(household.cooling?.[1]?.spells[0]).toMatchObject({ from: 1200, to: 1380, value: 23 });
  expect(automation.coolingGates).toEqual([
    { present: 'no matter', windowsShut: true },
    { present: 'in the room', windowsShut: false },
  ]);
  expect(automation.presenceSensors[1]).not.toBeNull();
  expect(home.cooling?.map(({ power }) => power)).toEqual([2500, 1500]);
});

test('a room with one setpoint keeps to the hours of a home set by the clock', () => {
  const { household } = prepared(
    'cooling: { setpoint: [{ from: "13:00", to: "18:00", setpoint: 26 }], rooms: { living: 24 } }',
  );
  expect(household.cooling?.[0]?.spells).toEqual([{ days: 127, from: 780, to: 1080, value: 24 }]);
});

test('what is heated to as much as it is cooled to is taken', () => {
  const { household } = prepared('heating: { setpoint: 21 }\ncooling: { setpoint: 21 }');
  expect([household.setpoints[0]?.base, household.cooling?.[0]?.base]).toEqual([21, 21]);
});

describe('what cannot be', () => {
  test.each([
    [
      'a setpoint under that of heating',
      'heating: { setpoint: 21 }\ncooling: { setpoint: 20, rooms: [bedroom] }',
      'h.yaml:9:22: cooling.setpoint: expected a setpoint of that of heating (21 °C) or more, got 20 °C in bedroom on monday at 00:00',
    ],
    [
      'the same in some hours of one room',
      'heating: { setpoint: 22, hours: "06:30-09:00", setback: 16 }\ncooling: { setpoint: 24, rooms: { bedroom: { setpoint: 20, hours: "08:00-12:00" } } }',
      'h.yaml:9:56: cooling.rooms.bedroom.setpoint: expected a setpoint of that of heating (22 °C) or more, got 20 °C in bedroom on monday at 08:00',
    ],
    [
      'heating above the setpoint that is assumed',
      'heating: { setpoint: 27 }\ncooling: { rooms: [bedroom] }',
      'h.yaml:9:10: cooling.setpoint: expected a setpoint of that of heating (27 °C) or more, got 26 °C in bedroom on monday at 00:00',
    ],
    [
      'an EER that falls to nothing',
      'cooling: { eer: [{ outdoor: 25, eer: 3 }, { outdoor: 45, eer: 0 }] }',
      'h.yaml:8:63: cooling.eer #2.eer: expected a number above 0 and up to 20, got 0',
    ],
    [
      'an EER that does not rise in temperature',
      'cooling: { eer: [{ outdoor: 35, eer: 3 }, { outdoor: 25, eer: 4 }] }',
      'h.yaml:8:54: cooling.eer #2.outdoor: expected an outdoor temperature above the one before (35 °C), got 25',
    ],
    [
      'no point at all',
      'cooling: { eer: [] }',
      'h.yaml:8:17: cooling.eer: expected at least one point, got an empty list',
    ],
    [
      'rooms that do not exist',
      'cooling: { rooms: [bedrom] }',
      'h.yaml:8:20: cooling.rooms #1: expected the name of a room: living, bedroom, got "bedrom" (did you mean "bedroom"?)',
    ],
    [
      'settings of a room that does not exist',
      'cooling: { rooms: { bedrom: 24 } }',
      'h.yaml:8:21: cooling.rooms.bedrom: expected the name of a room: living, bedroom, got "bedrom" (did you mean "bedroom"?)',
    ],
    [
      'a heat pump that does not heat',
      'cooling: { source: reversible heat pump }',
      'h.yaml:8:20: cooling.source: expected a heat pump as the source of heating, which then cools, got heating by "boiler"',
    ],
    [
      'two clocks',
      'cooling: { hours: "12:00-20:00", setpoint: [{ from: "13:00", to: "18:00", setpoint: 26 }] }',
      'h.yaml:8:19: cooling.hours: expected hours, or a setpoint by the clock, not both, got "12:00-20:00"',
    ],
    [
      'hours that overlap',
      'cooling: { hours: ["12:00-20:00", "19:00-21:00"] }',
      'h.yaml:8:35: cooling.hours #2: expected a time apart from that of #1, got both on monday at 19:00',
    ],
    [
      'a gate that nothing can open',
      'sensors: { presence: none }\ncooling: { gate: when present, rooms: [bedroom] }',
      'h.yaml:9:18: cooling.gate: expected a presence sensor in bedroom, got none there',
    ],
  ])('%s', (_, more, expected) => {
    expect(said(more)).toBe(expected);
  });

  const INNER = homeWith('cooling: { source: single duct, rooms: [living, store] }').replace(
    'bedroom: { floor area: 12 }',
    'store: { floor area: 3, outer sides: 0, panes: [] }',
  );

  test('a duct with no wall to go through', () => {
    const where = 'expected a room with an outdoor wall or a window, to blow its air out through';
    expect(readingProblems(INNER)).toEqual([
      `h.yaml:8:49: cooling.rooms #2: ${where}, got store, which has neither`,
    ]);
    const named = INNER.replace('[living, store]', '{ store: 24 }');
    expect(readingProblems(named)).toEqual([
      `h.yaml:8:42: cooling.rooms.store: ${where}, got store, which has neither`,
    ]);
    expect(readingProblems(INNER.replace('single duct', 'split'))).toEqual([]);
  });
});
