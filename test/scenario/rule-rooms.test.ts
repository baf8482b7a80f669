import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from './problems-of.ts';

const rulesOf = (rules: string, more = '') => {
  const scenario = readScenario(homeWith(`rules:\n  - ${rules}\n${more}`), 'h.yaml');
  const plan = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return { ...plan, rules: plan.automation.rules };
};
const said = (rules: string, more = '') =>
  readingProblems(homeWith(`rules:\n  - ${rules}\n${more}`));

const STALE = (rooms: string, more = '') =>
  `{ name: stale, rooms: ${rooms}, when: [{ reading: co2, over: 1200 }]${more}, response: [{ tell: air }, { open: here }] }`;

describe('a rule with rooms', () => {
  test('is one rule in each, by its name and room', () => {
    const { rules, home } = rulesOf(STALE('all'));
    expect(rules.map(({ name, room, series }) => [name, room, series!.number])).toEqual([
      ['stale (living)', 0, 0],
      ['stale (bedroom)', 1, 0],
    ]);
    expect(rules.map(({ all }) => all.map(({ quantity, room }) => [quantity, room]))).toEqual([
      [['co2', 0]],
      [['co2', 1]],
    ]);
    const opened = rules.map(({ actions }) =>
      actions.flatMap((action) => (action.do === 'window' ? action.openings : [])),
    );
    expect(opened.map((some) => some.map((o) => home.openings[o]!.room))).toEqual([[0], [1]]);
    expect(rulesOf(STALE('[bedroom]')).rules.map(({ name }) => name)).toEqual(['stale (bedroom)']);
  });

  test('where somebody is, asks the presence sensor of each', () => {
    const { rules, automation } = rulesOf(STALE('where somebody is'));
    expect(rules[1]!.all.map(({ quantity, room, is }) => [quantity, room, is])).toEqual([
      ['co2', 1, 'above'],
      ['presence', 1, 'above'],
    ]);
    expect(automation.presenceSensors.every((sensor) => sensor !== null)).toBe(true);
  });

  test('keeps the rooms that it names, outdoors and times of day', () => {
    const { rules } = rulesOf(
      '{ name: hot, rooms: [bedroom], when: [{ room: outdoors, reading: temperature, under: 20 }, { room: living, windows: closed }, { windows: open }, { after: "18:00" }, { after: "18:00", before: "02:00" }], response: [{ setpoint: 18 }, { setpoint: 17, room: living }] }',
    );
    expect(rules[0]!.all.map(({ quantity, room }) => [quantity, room])).toEqual([
      ['temperature', -1],
      ['window', 0],
      ['window', 1],
      ['hour', -1],
      ['hour since noon', -1],
      ['hour since noon', -1],
    ]);
    expect(rules[0]!.actions).toEqual([
      { do: 'setpoint', room: 1, setpoint: 18 },
      { do: 'setpoint', room: 0, setpoint: 17 },
    ]);
  });

  test('lists what it assumes once, where it can be typed', () => {
    const { assumed } = rulesOf(STALE('all'));
    const listed = assumed.flatMap(({ path }) => (path.startsWith('/rules/') ? [path] : []));
    const keys = ['delay', 'lasts', 'open share', 'probability'];
    expect(listed.toSorted()).toEqual(keys.map((key) => `/rules/0/response/1/${key}`));
  });

  test('mistakes are answered in words', () => {
    expect(said(STALE('[bedrom]'))).toEqual([
      'h.yaml:9:28: rules #1.rooms #1: expected the name of a room: living, bedroom, got "bedrom" (did you mean "bedroom"?)',
    ]);
    expect(said(STALE('everywhere'))).toEqual([
      'h.yaml:9:27: rules #1.rooms: expected all, where somebody is, or a list of rooms, got "everywhere"',
    ]);
    expect(
      said(STALE('where somebody is'), 'sensors: { rooms: { bedroom: { presence: none } } }'),
    ).toEqual([
      'h.yaml:9:27: rules #1.rooms: expected a presence sensor in bedroom, got none there',
    ]);
    expect(said(STALE('all'), 'sensors: { rooms: { bedroom: { co2: none } } }')).toEqual([
      'h.yaml:9:27: rules #1.rooms: expected a co2 sensor in bedroom, got none there',
    ]);
    const bare = STALE('all').replace(' rooms: all,', '');
    expect(said(bare)).toEqual([
      'h.yaml:9:27: rules #1.when #1: expected the room whose reading it is, or outdoors, got none (write the room into the condition, or give the rule "rooms", such as all)',
    ]);
    expect(
      said('{ name: x, when: [{ room: living, windows: open }], response: [{ setpoint: 17 }] }'),
    ).toEqual([
      'h.yaml:9:80: rules #1.response #1.setpoint: expected the room of the setpoint, got a setpoint alone',
    ]);
    expect(
      said(
        '{ name: x, when: [{ room: living, windows: open }], response: [{ open: here }] }',
      ).join(),
    ).toContain(
      'rules #1.response #1.open: expected a room with a window that opens, or an opening',
    );
    const closed = homeWith(`rules:\n  - ${STALE('all')}`).replace(
      'bedroom: { floor area: 12 }',
      'bedroom: { floor area: 12, openings: [] }',
    );
    expect(readingProblems(closed)).toEqual([
      'h.yaml:9:104: rules #1.response #2.open: expected rooms with a window that opens: living, got here, which is bedroom too',
    ]);
  });

  test('contradicts another in the rooms that both stand in', () => {
    const two = (other: string) =>
      said(
        `{ name: a, rooms: all, when: [{ reading: co2, over: 1200 }], response: [{ open: here }] }\n  - ${other}`,
      );
    const shut = (room: string) =>
      `{ name: b, when: [{ room: ${room}, reading: co2, over: 900 }], response: [{ close: ${room} }] }`;
    expect(two(shut('living'))[0]).toContain(
      'expected nothing against rule "a (living)", which may hold as well, got close living against open living',
    );
    expect(two(shut('living').replace('over: 900', 'under: 900'))).toEqual([]);
  });

  test('contradicts another in several rooms, told once', () => {
    const b =
      '{ name: b, rooms: all, when: [{ reading: co2, over: 900 }], response: [{ close: here }] }';
    const two = said(
      `{ name: a, rooms: all, when: [{ reading: co2, over: 1200 }], response: [{ open: here }] }\n  - ${b}`,
    );
    expect(two).toHaveLength(1);
    expect(two[0]).toContain(
      'got close living against open living, and likewise in 1 more room (give',
    );
    const itself = said(
      '{ name: a, rooms: all, when: [{ reading: co2, over: 1200 }], response: [{ room: living, setpoint: 15 }, { room: living, setpoint: 21 }] }',
    );
    expect(itself).toHaveLength(1);
  });
});

describe('when a rule tells nobody', () => {
  const LIMITS = ', quiet hours: "22:00-07:00", most a day: 2, repeat after: 3 h';

  test('is read', () => {
    expect(rulesOf(STALE('[living]', LIMITS)).rules[0]!.limits).toEqual({
      quiet: { base: 0, spells: [{ days: 127, from: 1320, to: 1860, value: 1 }] },
      mostPerDay: 2,
      repeatAfter: 10_800,
    });
    expect(rulesOf(STALE('[living]')).rules[0]!.limits).toBeUndefined();
  });

  test('mistakes are answered in words', () => {
    expect(said(STALE('all', ', most a day: 0'))).toEqual([
      'h.yaml:9:82: rules #1.most a day: expected a whole number from 1 to 1000, got 0',
    ]);
    expect(said(STALE('all', ', repeat after: 5 kg')).join()).toContain(
      'rules #1.repeat after: expected',
    );
    expect(said(STALE('all', ', quiet hours: night')).join()).toContain(
      'rules #1.quiet hours: expected always, never, a span such as "22:30-06:00", or a list of { days, months, from, to }, got "night"',
    );
  });
});
