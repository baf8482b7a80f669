import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../../../src/scenario/prepared.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

const home = ({ latitude = 54, household = '', plans = '' }) => `title: Aired
weather: w.csv
site: { latitude: ${latitude}, longitude: -2, elevation: 30, timezone: Europe/London }
home:
  rooms:
    living: { floor area: 18 }
    bedroom: { floor area: 12 }
    bathroom: { floor area: 5 }
${household === '' ? '' : `household: { ${household} }\n`}${plans === '' ? '' : `plans:\n  now: { change: {} }\n  more: { change: ${plans} }\n`}`;

function prepared(setup: Parameters<typeof home>[0], plan: string | null = null): PreparedPlan {
  const scenario = readScenario(home(setup), 'h.yaml');
  return preparePlan(scenario, { plan, set: [], files: new Map() });
}

/** Of each room's window: months as bits, from and to [min], open share. */
const windowsOf = ({ household, home: { rooms, openings } }: PreparedPlan) =>
  Object.fromEntries(
    openings.map(({ room }, k) => [
      rooms[room]!.name,
      household.openings[k]!.spells.map(({ months, from, to, value }) => [months, from, to, value]),
    ]),
  );

const WINTER = 0b1111_0000_1111 & ~0b0001_0000_0000; // October to April
const SUMMER = 0b1110_0000; // June to August

describe('where nobody says how windows are opened', () => {
  test('bedrooms are aired on winter mornings and summer nights', () => {
    expect(windowsOf(prepared({}))).toEqual({
      living: [],
      bedroom: [
        [WINTER, 435, 450, 0.3],
        [SUMMER, 1260, 1920, 0.1],
      ],
      bathroom: [],
    });
  });

  test('rooms to live and sleep in are tilted while it is mild outdoors', () => {
    const { automation, home: built } = prepared({});
    const [mild] = automation.airings;
    expect(mild!.openings.map((o) => built.rooms[built.openings[o]!.room]!.name)).toEqual([
      'living',
      'bedroom',
    ]);
    const outdoors = { quantity: 'temperature', room: -1 };
    expect(mild).toMatchObject({
      ...{ name: 'tilted on mild days', openShare: 0.1, lasts: 3 * 3600, probability: 1, delay: 0 },
      after: { by: 'readings', all: [{ ...outdoors, is: 'above', value: 15, clear: 15 }] },
      until: [{ ...outdoors, is: 'below', value: 13, clear: 13 }],
    });
  });

  test('a room that is slept in is aired as a bedroom is', () => {
    const { living, bedroom } = windowsOf(
      prepared({ household: 'people: [{ who: adult, sleeps in: living }]' }),
    );
    expect(living).toEqual(bedroom);
    expect(living).toHaveLength(2);
    const inBath = prepared({ household: 'people: [{ who: adult, sleeps in: bathroom }]' });
    const { airings } = inBath.automation;
    expect(airings.map(({ name, openings }) => [name, openings.length])).toEqual([
      ['tilted on mild days', 3],
      ['bathroom after washing', 1],
    ]);
    const night = prepared({ household: 'people: [{ who: adult, sleeps in: bedroom }]' });
    expect(night.automation.airings[1]!.openings).toHaveLength(1);
  });

  test('the bathroom is aired after a shower', () => {
    const { automation, household } = prepared({});
    const shower = household.activities.findIndex(({ name }) => name === 'shower');
    expect(automation.airings[1]).toMatchObject({
      ...{ openShare: 0.5, lasts: 900, after: { by: 'activity', activity: shower } },
    });
    expect(automation.airings).toHaveLength(2);
  });

  test('a room without a window is not', () => {
    const text = home({}).replace('bathroom: {', 'bathroom: { outer sides: 0, panes: [],');
    const scenario = readScenario(text, 'h.yaml');
    const { automation } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
    expect(automation.airings.map(({ name }) => name)).toEqual(['tilted on mild days']);
  });

  test('who cools keeps windows shut against the heat', () => {
    const cooled = (rooms: string, hours = '') =>
      preparePlan(
        readScenario(`${home({})}cooling: { source: split, rooms: ${rooms}${hours} }\n`, 'h.yaml'),
        { plan: null, set: [], files: new Map() },
      );
    const all = cooled('all');
    const night = (hours: string) => windowsOf(cooled('all', `, hours: ${hours}`))['bedroom']![1];
    expect(night('"12:00-20:00"')).toEqual([SUMMER, 1260, 1920, 0.1]);
    expect(night('"14:00-22:30"')).toEqual([SUMMER, 1350, 1920, 0.1]);
    expect(night('"14:00-00:00"')).toEqual([SUMMER, 1440, 1920, 0.1]);
    expect(night('"14:00-00:30"')).toBeUndefined();
    expect(night('{ days: Sun, from: "22:00", to: "23:00" }')).toEqual([SUMMER, 1380, 1920, 0.1]);
    expect(night('{ months: Sep, from: "22:00", to: "06:00" }')).toEqual([SUMMER, 1260, 1920, 0.1]);
    expect(windowsOf(all)['bedroom']).toEqual([[WINTER, 435, 450, 0.3]]);
    expect(windowsOf(cooled('[living]'))['bedroom']).toHaveLength(2);
    const outdoors = { quantity: 'temperature', room: -1 };
    expect(all.automation.airings[0]).toMatchObject({
      openings: [0, 1],
      after: {
        all: [
          { ...outdoors, is: 'above', value: 15 },
          { ...outdoors, is: 'below', value: 20 },
        ],
      },
    });
    expect(all.assumed.find(({ path }) => path === '/household/airing')?.value).toContain(
      'summer nights when nothing cools',
    );
    expect(cooled('[]').automation.airings[0]!.after).toMatchObject({ all: [{ value: 15 }] });
    // Of two rooms to live and sleep in one is not most.
    const some = cooled('[bedroom]').automation.airings;
    expect(some.map(({ name, openings }) => [name, openings])).toEqual([
      ['tilted on mild days', [0]],
      ['tilted on mild days, not on warm ones', [1]],
      ['bathroom after washing', [2]],
    ]);
  });

  test('where most rooms to live and sleep in are cooled, the kitchen has its windows shut too', () => {
    const mildOf = (rooms: string) => {
      const text = home({})
        .replace(
          '    bathroom:',
          '    study: { floor area: 9 }\n    kitchen: { floor area: 10 }\n    bathroom:',
        )
        .concat(`cooling: { source: split, rooms: ${rooms} }\n`);
      const scenario = readScenario(text, 'h.yaml');
      const plan = preparePlan(scenario, { plan: null, set: [], files: new Map() });
      const kitchen = plan.home.rooms.findIndex(({ name }) => name === 'kitchen');
      const opens = (openings: readonly number[]) =>
        openings.some((k) => plan.home.openings[k]!.room === kitchen);
      return plan.automation.airings
        .filter(({ openings }) => opens(openings))
        .map(({ name }) => name);
    };
    expect(mildOf('[living, bedroom]')).toEqual(['tilted on mild days, not on warm ones']);
    expect(mildOf('[living]')).toEqual(['tilted on mild days']);
  });

  test('half a year later south of the equator', () => {
    const months = windowsOf(prepared({ latitude: -40 }))['bedroom']!.map(([bits]) => bits);
    const [winter, summer] = months;
    expect(winter).toBe(0b11_1111_1000); // April to October
    expect(summer).toBe(0b1000_0000_0011); // December to February
  });

  test('that is told as assumed, with a low and a high', () => {
    const { assumed } = prepared({});
    expect(assumed.find(({ path }) => path === '/household/airing')?.value).toBe(
      'where people sleep on winter mornings and summer nights, tilted while it is mild, bathrooms after showers',
    );
    expect(assumed).toContainEqual(
      expect.objectContaining({ path: '/household/usual airing', value: 1, low: 0.3, high: 2 }),
    );
  });

  test('and a plan that adds a habit adds it to the usual ones', () => {
    const plans = '{ household: { airing: { add: [{ room: living, at: "07:30" }] } } }';
    const more = prepared({ plans }, 'more');
    expect(windowsOf(more)['living']).toEqual([[undefined, 450, 460, 1]]);
    expect(more.automation.airings.map(({ name }) => name)).toContain('tilted on mild days');
  });
});

describe('somebody who says it', () => {
  const none = { living: [], bedroom: [], bathroom: [] };

  test('opens nothing with an empty list, and nothing is assumed', () => {
    const shut = prepared({ household: 'airing: []' });
    expect(windowsOf(shut)).toEqual(none);
    expect(shut.automation.airings).toEqual([]);
    expect(shut.assumed.filter(({ path }) => /airing/.test(path))).toEqual([]);
  });

  test('may open wider, or never, in the usual habits', () => {
    const wide = prepared({ household: 'usual airing: 4' });
    expect(windowsOf(wide)['bedroom']!.map(([, , , share]) => share)).toEqual([1, 0.4]);
    expect(wide.automation.airings.map(({ openShare }) => openShare)).toEqual([0.4, 1]);
    expect(windowsOf(prepared({ household: 'usual airing: 0' }))).toEqual(none);
  });

  test('may list the usual habits among own ones', () => {
    const both = prepared({ household: 'airing: [{ room: living, at: "07:30" }, usual]' });
    expect(windowsOf(both)).toMatchObject({
      living: [[undefined, 450, 460, 1]],
      bedroom: [
        [WINTER, 435, 450, 0.3],
        [SUMMER, 1260, 1920, 0.1],
      ],
    });
    expect(both.automation.airings).toHaveLength(2);
  });

  test('is told where a list is asked for, and where usual airing changes nothing', () => {
    expect(() => prepared({ household: 'airing: usual' })).toThrow(
      'h.yaml:9:22: household.airing: expected a list of airing habits, such as [usual], got "usual"',
    );
    const said = ({ cautions }: PreparedPlan) =>
      cautions.filter(({ id }) => id === 'usual-airing-idle').map(({ text }) => text);
    expect(said(prepared({ household: 'usual airing: 2, airing: []' }))).toEqual([
      'Usual airing is 2, but the habits listed do not name usual: it changes nothing.',
    ]);
    expect(said(prepared({ household: 'usual airing: 2' }))).toEqual([]);
  });

  test('is told what a word that is none may be', () => {
    expect(() => prepared({ household: 'airing: [often]' })).toThrow(
      'h.yaml:9:23: household.airing #1: expected an airing habit, or usual, got "often"',
    );
  });
});
