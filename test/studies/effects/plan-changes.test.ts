import { expect, test } from 'vitest';
import {
  type Change,
  changesBetween,
  highestSettings,
  planParts,
} from '../../../src/studies/effects/plan-changes.ts';
import { preparedPlans } from '../answers/asked.ts';

/** What a plan has otherwise than another, or than the home as it is. */
function changed(change: string, before = 'change: {}'): Change[] {
  const [one, other] = preparedPlans(`  before: { ${before} }\n  after: { ${change} }\n`);
  return [...changesBetween(planParts(one!), planParts(other!))].sort();
}

test.each<[string, string, Change[]]>([
  ['a setting, not its hours', 'change: { heating: { setpoint: 19 } }', ['setting']],
  ['hours', 'change: { heating: { hours: "06:00-22:00" } }', ['hours']],
  ['a season', 'change: { heating: { season: { months: oct-apr } } }', ['hours']],
  ['a thermostat that feels otherwise', 'change: { heating: { deadband: 1 } }', ['sensing']],
  [
    'a fan',
    'change: { devices: { fan: { kind: extract fan, room: bath, flow: 60 m3/h, runs: always } } }',
    ['devices'],
  ],
  [
    'airing',
    'change: { household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } }',
    ['airing'],
  ],
  [
    'cooling',
    'change: { cooling: { source: split, power: 2 kW, setpoint: 25, rooms: [den] } }',
    ['cooling'],
  ],
  ['a price', 'change: { money: { gas: { price: 0.09 } } }', ['prices']],
  ['a currency', 'change: { money: { currency: CHF } }', ['prices']],
])('%s', (_what, change, expected) => {
  expect(changed(change)).toEqual(expected);
});

test.each([
  ['the season that is usual with it', ''],
  ['a season that stays', ', season: Oct-Apr'],
])('another source of heat, with %s', (_, season) => {
  const heated = (source: string) => `change: { heating: { source: ${source}${season} } }`;
  expect(changed(heated('direct electric'), heated('boiler'))).toEqual(['source']);
  // Nobody pays for gas any more, which is no other price.
  expect(changed(heated('boiler'), heated('direct electric'))).toEqual(['source']);
});

test('emitters that follow another building are no other source of heat', () => {
  const found = changed('change: { home: { rooms: { den: { floor area: 20 } } } }');
  expect(found).toContain('building');
  expect(found).not.toContain('source');
});

test('the highest setting of a day counts; a room that is never heated has none', () => {
  const [plan] = preparedPlans(
    '  a: { change: { heating: { hours: "06:00-22:00", setback: 16 } } }\n',
  );
  const [den] = plan!.household.setpoints;
  const never = { base: Number.NEGATIVE_INFINITY, spells: [] };
  const household = { ...plan!.household, setpoints: [den!, never] };
  expect(highestSettings({ ...plan!, household })).toEqual([21, null]);
});

test('windows that follow what cools a home are no other airing, and own habits are', () => {
  const cooled = (more: string) => `change: { cooling: { source: split, rooms: [den] }${more} }`;
  const night = ', household: { airing: { add: [{ room: den, at: "22:00", lasts: 8 h }] } }';
  expect(changed(cooled(''))).toEqual(['cooling']);
  expect(changed(cooled(night))).toEqual(['airing', 'cooling']);
});

test('heat in a home that had none is a source of heat, whatever settings come with it', () => {
  const none = 'change: { heating: { source: none } }';
  const pump =
    'change: { heating: { source: heat pump, setpoint: 20, hours: "06:00-22:00", sensor: remote } }';
  expect(changed(pump, none)).toEqual(['source']);
  expect(changed(none, pump)).toEqual(['source']);
});

test('the order in which a file names doorways is no other building', () => {
  const doors = (list: string) => `change: { home: { doorways: [${list}] } }`;
  const rooms = '{ between: [den, bath], open: always }';
  const attic = (list: string) =>
    doors(list).replace('home: {', 'home: { rooms: { attic: { floor area: 9, storey: 0 } },');
  const other = '{ between: [den, attic], open: always }';
  expect(changed(attic(`${rooms}, ${other}`), attic(`${other}, ${rooms}`))).toEqual([]);
  const shut = other.replace('always', 'never');
  expect(changed(attic(`${rooms}, ${other}`), attic(`${shut}, ${rooms}`))).toEqual(['people']);
});

test('the price of a fuel that the other plan has no use for is no other price', () => {
  const stove = 'change: { devices: { fire: { kind: stove, room: den } } }';
  expect(changed(stove)).toEqual(['devices']);
  const wood = 'change: { money: { wood: 0.05 }, devices: { fire: { kind: stove, room: den } } }';
  expect(changed(wood, stove)).toEqual(['prices']);
});
