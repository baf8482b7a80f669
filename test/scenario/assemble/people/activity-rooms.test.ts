import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

/** Where activities take place in a home of some rooms, what is assumed of that, and what is asked. */
function taken(rooms: string, household: string) {
  const text = `title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30 }
home: { rooms: { ${rooms} } }
household: { ${household} }
`;
  const scenario = readScenario(text, 'h.yaml');
  const plan = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  const { home, assumed, cautions } = plan;
  return {
    where: plan.household.activities.map(({ name, room }) => `${name}: ${home.rooms[room]!.name}`),
    assumed: assumed.filter(({ path }) => /activities(\/\d+\/room)?$/.test(path)),
    asked: cautions.filter(({ id }) => id === 'activity-elsewhere').map(({ text: said }) => said),
  };
}

const SHOWERS = 'activities: [{ what: shower }, { what: bath }, { what: cooking }]';
const BEDROOM = 'bedroom: { floor area: 12 }';

describe('a home that lists no bathroom', () => {
  test.each([
    ['utility', 'kitchen: { floor area: 9 }, hall: { floor area: 5 }, utility: { floor area: 4 }'],
    ['hall', 'living: { floor area: 18 }, kitchen: { floor area: 9 }, hall: { floor area: 5 }'],
    ['kitchen', 'living: { floor area: 18 }, kitchen: { floor area: 9 }'],
  ])('has its showers in the %s, not in the room that stands first', (room, others) => {
    const { where, assumed, asked } = taken(`${BEDROOM}, ${others}`, SHOWERS);
    expect(where.slice(0, 3)).toEqual([`shower: ${room}`, `bath: ${room}`, 'cooking: kitchen']);
    expect(assumed.map(({ path, value, source }) => [path, value, source])).toEqual([
      ['/household/activities/0/room', room, 'no bathroom is listed'],
      ['/household/activities/1/room', room, 'no bathroom is listed'],
    ]);
    expect(asked).toEqual([
      `No bathroom is listed, so this takes place elsewhere: shower and bath in ${room}. If there is one, list it, or give its room "use: bathroom"; else say in which "room" it is done.`,
    ]);
  });

  test('says so with the activities that nobody listed', () => {
    const { assumed, asked } = taken(
      `${BEDROOM}, living: { floor area: 18 }`,
      'people: [{ who: adult }]',
    );
    expect(assumed).toMatchObject([
      {
        path: '/household/activities',
        value:
          'a shower a head (1), two meals a day, two loads of laundry a week, appliances; shower in living',
      },
    ]);
    expect(asked).toHaveLength(1);
  });
});

test('a home without bathroom and kitchen is asked about each', () => {
  const { where, asked } = taken(`${BEDROOM}, hall: { floor area: 5 }`, SHOWERS);
  expect(where.slice(0, 3)).toEqual(['shower: hall', 'bath: hall', 'cooking: hall']);
  expect(asked.map((said) => said.split('.')[0])).toEqual([
    'No bathroom is listed, so this takes place elsewhere: shower and bath in hall',
    'No kitchen is listed, so this takes place elsewhere: cooking in hall',
  ]);
});

test('a home of bedrooms alone cooks in the first of them, and asks', () => {
  const { where, asked } = taken(
    'attic bedroom: { floor area: 12 }, bath: { floor area: 4 }',
    SHOWERS,
  );
  expect(where.slice(0, 3)).toEqual(['shower: bath', 'bath: bath', 'cooking: attic bedroom']);
  expect(asked).toEqual([
    'No kitchen is listed, so this takes place elsewhere: cooking in attic bedroom. If there is one, list it, or give its room "use: kitchen"; else say in which "room" it is done.',
  ]);
});

test.each([
  ['WC: { floor area: 2 }, shower room: { floor area: 4 }', 'shower room'],
  ['cloakroom: { floor area: 2, use: bathroom }, Bad/WC: { floor area: 4 }', 'Bad/WC'],
  ['toilet: { floor area: 2 }', 'toilet'],
])('of bathrooms nobody showers in a toilet where there is another: %s', (rooms, room) => {
  const { where } = taken(`${BEDROOM}, kitchen: { floor area: 9 }, ${rooms}`, SHOWERS);
  expect(where.slice(0, 2)).toEqual([`shower: ${room}`, `bath: ${room}`]);
});

test('nothing is asked where a room is named, or suits', () => {
  const rooms = `${BEDROOM}, living: { floor area: 18 }`;
  const named = taken(rooms, 'activities: [{ what: shower, room: bedroom }, { what: cooking }]');
  expect(named.where.slice(0, 2)).toEqual(['shower: bedroom', 'cooking: living']);
  expect([...named.assumed, ...named.asked]).toEqual([]);
});
