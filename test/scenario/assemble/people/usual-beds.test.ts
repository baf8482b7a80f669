import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

const prepared = (rooms: readonly string[], people: string) =>
  preparePlan(
    readScenario(
      `title: Beds
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London, storeys: 2 }
home:
  rooms:
${rooms.map((name) => `    ${name}: { floor area: 12 }`).join('\n')}
household:
  people: [${people}]
`,
      'h.yaml',
    ),
    { plan: null, set: [], files: new Map() },
  );

/** The room in which each person sleeps, in the order of the list. */
function beds(rooms: readonly string[], people: string): (string | undefined)[] {
  const { home, household } = prepared(rooms, people);
  return household.people.map(({ schedule }) => {
    const asleep = schedule.find((stay) => stay.asleep);
    return asleep === undefined ? undefined : home.rooms[asleep.room]!.name;
  });
}

const TWO = '{ who: adult }, { who: adult }';
const HOME = ['living', 'bedroom', 'bedroom 2', 'bedroom 3'];

describe('where nobody says who sleeps where', () => {
  test.each<[string, readonly string[], string, string[]]>([
    ['a couple shares the first bedroom', HOME, TWO, ['bedroom', 'bedroom']],
    [
      'children have rooms of their own',
      HOME,
      `{ who: child }, ${TWO}, { who: child }`,
      ['bedroom 2', 'bedroom', 'bedroom', 'bedroom 3'],
    ],
    [
      'and share those, not that of their parents',
      HOME.slice(0, 3),
      `${TWO}, { who: child }, { who: child }`,
      ['bedroom', 'bedroom', 'bedroom 2', 'bedroom 2'],
    ],
    [
      'also where a parent is alone',
      HOME.slice(0, 3),
      '{ who: adult }, { who: child }, { who: child }',
      ['bedroom', 'bedroom 2', 'bedroom 2'],
    ],
    ['an infant whose parents nobody lists has the first', HOME, '{ who: infant }', ['bedroom']],
    [
      'a child has the room that is called so',
      ['living', 'bedroom', 'bedroom 2', 'nursery'],
      `${TWO}, { who: child }`,
      ['bedroom', 'bedroom', 'nursery'],
    ],
    [
      'nobody is put into the bed of somebody who says by the clock where that is',
      HOME,
      `${TWO}, { who: child }, { who: adult, schedule: [{ room: living, from: "08:00", to: "22:00" }, { room: bedroom 2, from: "22:00", to: "08:00", asleep: true }] }`,
      ['bedroom', 'bedroom', 'bedroom 3', 'bedroom 2'],
    ],
    [
      'unless there is no other',
      HOME.slice(0, 2),
      `${TWO}, { who: child }`,
      ['bedroom', 'bedroom', 'bedroom'],
    ],
    [
      'grown people beyond two have a room each',
      HOME,
      `${TWO}, { who: adult }, { who: frail adult }`,
      ['bedroom', 'bedroom', 'bedroom 2', 'bedroom 3'],
    ],
    [
      'a parent alone leaves the second room to the child, and an infant sleeps with the parent',
      HOME,
      '{ who: infant }, { who: child }, { who: adult }',
      ['bedroom', 'bedroom 2', 'bedroom'],
    ],
    [
      'names of rooms tell',
      ['living', 'Kinderzimmer', 'guest room', 'Schlafzimmer', 'bedroom 4'],
      `{ who: child }, ${TWO}, { who: child }`,
      ['Kinderzimmer', 'Schlafzimmer', 'Schlafzimmer', 'bedroom 4'],
    ],
    [
      'without bedrooms people sleep where they live',
      ['living', 'kitchen'],
      `${TWO}, { who: child }`,
      ['living', 'living', 'living'],
    ],
    [
      'who is somewhere by name takes that room from the others',
      HOME,
      `{ who: adult, sleeps in: bedroom 2 }, { who: adult }, { who: child }`,
      ['bedroom 2', 'bedroom', 'bedroom 3'],
    ],
    [
      'so does who has a schedule',
      HOME,
      `${TWO}, { schedule: [{ room: bedroom 2, from: "22:00", to: "06:00", asleep: true }] }, { who: child }`,
      ['bedroom', 'bedroom', 'bedroom 2', 'bedroom 3'],
    ],
  ])('%s', (_, rooms, people, expected) => {
    expect(beds(rooms, people)).toEqual(expected);
  });

  test('that is listed as assumed', () => {
    const { assumed } = prepared(HOME, `${TWO}, { who: child }`);
    expect(assumed.find(({ path }) => path === '/household/people/2/sleeps in')?.value).toBe(
      'bedroom 2',
    );
  });
});

test('a toilet beside a bathroom is downstairs, where nobody says', () => {
  const storeys = (rooms: readonly string[]) =>
    Object.fromEntries(
      prepared(rooms, TWO)
        .assumed.filter(({ path }) => path.endsWith('/storey'))
        .map(({ path, value }) => [path.split('/')[3], value]),
    );
  expect(storeys(['living', 'wc', 'bathroom'])).toEqual({ living: 0, wc: 0, bathroom: 1 });
  expect(storeys(['living', 'wc'])).toEqual({ living: 0, wc: 1 });
});
