import { describe, expect, test } from 'vitest';
import { homeWith, readingProblems } from '../problems-of.ts';

const problems = (more: string): string => readingProblems(homeWith(more)).join('\n');
const adult = (more: string): string => `household: { people: [{ who: adult, ${more} }] }`;
const airing = (more: string): string => `household: { airing: [{ ${more} }] }`;
const one = (more: string): string => `devices: { d: { ${more} } }`;

describe('a room that is not there is told, wherever it is named', () => {
  test.each([
    [adult('sleeps in: attic'), 'household.people #1.sleeps in'],
    [adult('lives in: attic'), 'household.people #1.lives in'],
    [adult('lives in: [{ room: attic }]'), 'household.people #1.lives in #1.room'],
    [adult('works in: attic'), 'household.people #1.works in'],
    [
      adult('schedule: [{ room: attic, from: "08:00", to: "09:00" }]'),
      'household.people #1.schedule #1.room',
    ],
    ['household: { activities: [{ what: cooking, room: attic }] }', 'activities #1.room'],
    [
      'household: { guests: [{ room: attic, from: "08:00", to: "09:00" }] }',
      'household.guests #1.room',
    ],
    [airing('room: attic, at: "08:00"'), 'household.airing #1.room'],
    [airing('rooms: [living, attic], at: "08:00"'), 'household.airing #1.rooms #2'],
    [airing('room: living, on waking: attic'), 'household.airing #1.on waking'],
    ['household: { paint: [{ room: attic, area: 9 }] }', 'household.paint #1.room'],
    ['blinds: [{ room: attic, hours: "08:00-09:00" }]', 'blinds #1.room'],
    ['blinds: [{ rooms: [attic], hours: "08:00-09:00" }]', 'blinds #1.rooms #1'],
    ['cooling: { rooms: [attic] }', 'cooling.rooms #1'],
    ['cooling: { rooms: { attic: 24 } }', 'cooling.rooms.attic'],
    ['heating: { rooms: { attic: 20 } }', 'heating.rooms.attic'],
    [one('kind: heater, room: attic'), 'devices.d.room'],
    [
      one(
        'kind: balanced ventilation, supplies: { attic: 30 m3/h }, extracts: { living: 30 m3/h }',
      ),
      'devices.d.supplies.attic',
    ],
    [
      one(
        'kind: balanced ventilation, supplies: { living: 30 m3/h }, extracts: { attic: 30 m3/h }',
      ),
      'devices.d.extracts.attic',
    ],
    ['sensors: { rooms: { attic: { humidity: none } } }', 'sensors.rooms.attic'],
    [
      'rules: [{ name: a, rooms: [attic], when: [{ reading: humidity, over: 65 }], response: [{ tell: x }] }]',
      'rules #1.rooms #1',
    ],
  ])('%s', (text, where) => {
    expect(problems(text)).toContain(`${where}: expected the name of a room: living, bedroom`);
  });
});

describe('spells that overlap are told, wherever they stand', () => {
  const twice = '["06:00-09:00", "08:00-10:00"]';
  test.each([
    [`heating: { hours: ${twice} }`, 'heating.hours #2'],
    [`heating: { rooms: { living: { hours: ${twice} } } }`, 'heating.rooms.living.hours #2'],
    [`cooling: { hours: ${twice} }`, 'cooling.hours #2'],
    [`money: { electricity: { day: 0.3, night: 0.1, night hours: ${twice} } }`, 'night hours #2'],
    [
      'money: { electricity: { price: 0.3, blocks: [{ from: "06:00", to: "09:00", price: 0.2 }, { from: "08:00", to: "10:00", price: 0.1 }] } }',
      'money.electricity.blocks #2',
    ],
    [`blinds: [{ room: living, hours: ${twice} }]`, 'blinds #1.hours #2'],
    [
      `rules: [{ name: a, quiet hours: ${twice}, when: [{ room: living, reading: humidity, over: 65 }], response: [{ tell: x }] }]`,
      'rules #1.quiet hours #2',
    ],
    [one(`kind: heater, room: living, hours: ${twice}`), 'devices.d.hours #2'],
    [one(`kind: stove, room: living, burns: ${twice}`), 'devices.d.burns #2'],
  ])('%s', (text, where) => {
    expect(problems(text)).toMatch(
      new RegExp(`${where}(\\.from)?: expected a time apart from that of #1`),
    );
  });
});

describe('what may be given in one of several ways', () => {
  const element = (more: string) =>
    homeWith('').replace(
      'bedroom: { floor area: 12 }',
      `bedroom: { floor area: 12, elements: [{ kind: wall, area: 8, to: outdoors${more} }] }`,
    );

  test('is asked for where none is, and refused where there are two', () => {
    expect(readingProblems(element('')).join()).toContain('exactly one of: u-value; or layers');
    expect(problems('blinds: [{ hours: "08:00-09:00" }]')).toContain(
      'exactly one of: pane; or room; or rooms',
    );
    expect(problems(airing('at: "08:00"'))).toContain('exactly one of: room; or rooms');
  });

  test('the usual airing among habits is no habit without a time', () => {
    expect(problems('household: { airing: [usual, { room: living, at: "08:00" }] }')).toBe('');
  });

  test('blocks of hours need the price of the others, and have it', () => {
    const blocks = 'blocks: [{ from: "00:00", to: "05:00", price: 0.1 }]';
    expect(problems(`money: { electricity: { ${blocks} } }`)).toContain('electricity');
    expect(problems(`money: { electricity: { price: 0.3, ${blocks} } }`)).toBe('');
    expect(problems('money: { electricity: { day: 0.3, night: 0.1 } }')).toContain(
      'expected night hours beside day and night, got none',
    );
  });
});

test('a rule may set the frost guard itself, by the one that is given, and nothing below it', () => {
  const rule = (setpoint: number, guard = '') =>
    problems(
      `heating: { setpoint: 20${guard} }\nrules: [{ name: a, when: [{ room: living, reading: humidity, over: 65 }], response: [{ room: living, setpoint: ${setpoint} }] }]`,
    );
  expect(rule(8, ', frost guard: 8')).toBe('');
  expect(rule(7.9, ', frost guard: 8')).toContain('a setpoint of the frost guard (8 °C) or more');
  expect(rule(4, ', frost guard: 4')).toBe('');
});

describe('what is said of one room is looked at as well', () => {
  const bedroom = (more: string): string =>
    readingProblems(homeWith('').replace('floor area: 12', `floor area: 12, ${more}`)).join('\n');

  test('its bands, and what it lies over', () => {
    expect(bedroom('bands: { humidity: { low: 60, high: 40 } }')).toContain(
      'home.rooms.bedroom.bands.humidity.low: expected no more than high (40), got 60',
    );
    expect(bedroom('over: bedroom, storey: 1')).toContain(
      'home.rooms.bedroom.over: expected another room',
    );
  });

  test('where a window is shut again by a reading', () => {
    const shut = 'until: [{ room: attic, reading: humidity, under: 50 }]';
    const habit = 'room: living, when: [{ room: living, reading: humidity, over: 60 }]';
    expect(problems(airing(`${habit}, ${shut}`))).toContain(
      'household.airing #1.until #1.room: expected the name of a room: living, bedroom',
    );
  });
});
