import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readOnce } from '../read-once.ts';

/** Two rooms that an open doorway joins, and a shed that none leads to. */
function said(more: string, door = ''): string[] {
  const text = `title: t
weather: w.csv
site: { latitude: 51, longitude: 0, elevation: 0, timezone: Europe/London }
home:
  rooms:
    den: { floor area: 16, panes: [{ area: 2, faces: south }] }
    nook: { floor area: 12, panes: [{ area: 2, faces: south }] }
    shed: { floor area: 9 }
  doorways: [{ between: [den, nook]${door} }]
${more}
`;
  const scenario = readOnce(text, 'h.yaml');
  const { cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  return cautions.filter(({ id }) => id === 'against-each-other').map((caution) => caution.text);
}

const HEAT_END =
  ' One adds the heat that the other takes out, and both are paid for: set cooling two kelvins or more above heating, or cool in other months.';

describe('heating against cooling', () => {
  const cooled = (cooling: string, heating: string, more = '', door = '') =>
    said(`heating: { ${heating} }\ncooling: { source: split, ${cooling} }\n${more}`, door);
  const DEN = 'rooms: { den: 21, nook: off, shed: off }';

  test('of a room that an open doorway leads to', () => {
    expect(cooled('setpoint: 20, rooms: [nook]', DEN)).toEqual([
      `Work against each other: heating of the den (to 21 °C) and cooling of the nook (from 20 °C), through an open doorway.${HEAT_END}`,
    ]);
    expect(cooled('setpoint: 20, rooms: [shed]', DEN)).toEqual([]);
  });

  test.each([
    ['as warm is no more', 'setpoint: 21, rooms: [nook]', DEN, ''],
    ['a gap', 'setpoint: 25, rooms: [nook]', DEN, ''],
    [
      'other months',
      'setpoint: 20, hours: { months: Jun-Aug, from: "00:00", to: "24:00" }, rooms: [nook]',
      DEN,
      '',
    ],
    [
      'other hours',
      'setpoint: 20, hours: "12:00-16:00", rooms: [nook]',
      `${DEN}, hours: "18:00-22:00"`,
      '',
    ],
    [
      'a door that is shut then',
      'setpoint: 20, hours: "12:00-16:00", rooms: [nook]',
      DEN,
      ', open: "18:00-22:00"',
    ],
  ])('is none with %s', (_, cooling, heating, door) => {
    expect(cooled(cooling, heating, '', door)).toEqual([]);
  });

  test('in months and hours that both have', () => {
    const may =
      'setpoint: 20, hours: { months: May-Aug, from: "00:00", to: "24:00" }, rooms: [nook]';
    expect(cooled(may, DEN)).toHaveLength(1);
    expect(
      cooled('setpoint: 20, hours: "12:00-16:00", rooms: [nook]', `${DEN}, hours: "15:00-22:00"`),
    ).toHaveLength(1);
    expect(
      cooled('setpoint: 20, hours: "12:00-16:00", rooms: [nook]', DEN, '', ', open: "15:00-22:00"'),
    ).toHaveLength(1);
  });

  test('a deadband carries heating past its setting, sensible ones not to where cooling begins', () => {
    const own = (deadband: number) =>
      `rooms: { den: 21, nook: off, shed: off }, deadband: ${deadband}`;
    expect(cooled('setpoint: 21.5, rooms: [den]', own(2))[0]).toContain(
      'heating of the den (to 22 °C) and cooling of the den (from 21.5 °C).',
    );
    expect(cooled('setpoint: 21.5, rooms: [den]', own(1))).toEqual([]);
    expect(cooled('setpoint: 23, rooms: [den]', own(2))).toEqual([]);
  });

  test('in a room that no doorway leads to, and through one doorway of several', () => {
    const shed = 'rooms: { den: off, nook: off, shed: 21 }, deadband: 2';
    expect(cooled('setpoint: 21.5, rooms: [shed]', shed)).toHaveLength(1);
    const more = ' }, { between: [nook, shed]';
    expect(cooled('setpoint: 20, rooms: [nook]', DEN, '', more)).toHaveLength(1);
  });

  test('a sensor that reads too much ends heating sooner, one that reads too little later', () => {
    const read = (bias: number) => `${DEN}, sensor: { place: remote, bias: ${bias} }`;
    expect(cooled('setpoint: 20.5, rooms: [nook]', read(1))).toEqual([]);
    expect(cooled('setpoint: 21.5, rooms: [nook]', read(-1))).toHaveLength(1);
  });

  test('nothing else that goes by a reading heats', () => {
    const none = 'rooms: { den: off, nook: off, shed: off }';
    const drier = 'devices: { drier: { kind: dehumidifier, room: den, target: 55 } }';
    expect(cooled('setpoint: 24, rooms: [den]', none, drier)).toEqual([]);
    const always = 'devices: { panel: { kind: heater, room: den, runs: always } }';
    expect(cooled('setpoint: 24, rooms: [den]', none, always)).toEqual([]);
  });

  test('by a plug-in heater, at the hours at which it may run', () => {
    const heater = (target: number, hours = '') =>
      `devices: { fan heater: { kind: heater, room: den, target: ${target}, deadband: 1${hours} } }`;
    const none = 'rooms: { den: off, nook: off, shed: off }';
    const cool = 'setpoint: 24, hours: "12:00-20:00", rooms: [den]';
    expect(cooled(cool, none, heater(24))[0]).toContain(
      'Work against each other: fan heater (to 24.5 °C) and cooling of the den (from 24 °C).',
    );
    expect(cooled(cool, none, heater(23))).toEqual([]);
    expect(cooled(cool, none, heater(24, ', hours: "06:00-09:00"'))).toEqual([]);
  });
});

describe('heating against windows', () => {
  const HEATED = 'heating: { rooms: { den: 21, nook: off, shed: off } }';
  const rule = (when: string, response = '{ open: den }') =>
    said(
      `${HEATED}\nsensors: { temperature: {}, co2: {} }\nrules: [{ name: warm, when: [${when}], response: [${response}] }]`,
    );
  const WARM = '{ room: den, reading: temperature, over: 20 }';
  const TEXT =
    'Windows let out what heating puts in: warm opens them above 20 °C in the den, which heating brings to 21 °C. Open them above what is heated to, or only while it is mild outdoors.';

  test('that open because it is as warm as heating makes it', () => {
    expect(rule(WARM)).toEqual([TEXT]);
    expect(rule(WARM, '{ open: nook }')).toEqual([TEXT]);
    expect(rule(`${WARM}, { room: outdoors, reading: temperature, under: 18 }`)).toEqual([TEXT]);
    expect(rule(`${WARM}, { after: "08:00" }`)).toEqual([TEXT]);
  });

  test.each([
    ['what heating does not bring about', '{ room: den, reading: temperature, over: 21 }'],
    ['stale air as well', `${WARM}, { room: den, reading: co2, over: 1200 }`],
    ['mild air outdoors', `${WARM}, { room: outdoors, reading: temperature, over: 15 }`],
    // In Britain homes are heated below 12 °C.
    [
      'air outdoors in which nothing heats',
      `${WARM}, { room: outdoors, reading: temperature, over: 12 }`,
    ],
    ['another room', '{ room: nook, reading: temperature, over: 20 }'],
    ['cold', '{ room: den, reading: temperature, under: 20 }'],
    ['outdoor air alone', '{ room: outdoors, reading: temperature, under: 20 }'],
  ])('are none where they open by %s', (_, when) => {
    expect(rule(when)).toEqual([]);
  });

  test('are some where homes are heated in that air', () => {
    expect(rule(`${WARM}, { room: outdoors, reading: temperature, over: 11.5 }`)).toEqual([TEXT]);
    const longer = (over: number) =>
      said(
        `heating: { rooms: { den: 21, nook: off, shed: off }, season: { mean below: 18 } }\nrules: [{ name: warm, when: [${WARM}, { room: outdoors, reading: temperature, over: ${over} }], response: [{ open: den }] }]`,
      );
    expect([longer(14), longer(15)]).toEqual([[TEXT], []]);
  });

  test('are some whoever is in and whatever electricity costs', () => {
    const priced = said(
      `${HEATED}\nmoney: { electricity: 0.3 }\nrules: [{ name: warm, when: [${WARM}, { price: electricity, over: 0.2 }], response: [{ open: den }] }]`,
    );
    expect(priced).toEqual([TEXT]);
  });

  test('are none where the rule turns heating down, shuts them, or only tells', () => {
    expect(rule(WARM, '{ open: den }, { setpoint: 16, room: den }')).toEqual([]);
    expect(rule(WARM, '{ open: den }, { setpoint: 20, room: den }')).toEqual([]);
    expect(rule(WARM, '{ close: den }')).toEqual([]);
    expect(rule(WARM, '{ open: den }, { setpoint: 22, room: den }')).toEqual([TEXT]);
    expect(rule(WARM, '{ tell: air }')).toEqual([]);
  });

  test('by the hours at which it is so warm', () => {
    const at = (hours: string) =>
      said(
        `heating: { rooms: { den: 21, nook: off, shed: off }, hours: "06:00-09:00", setback: 15 }\nrules: [{ name: warm, when: [${WARM}, ${hours}], response: [{ open: den }] }]`,
      );
    expect(at('{ after: "10:00" }')).toEqual([]);
    expect(at('{ after: "08:50" }')).toEqual([TEXT]);
    expect(at('{ after: "22:00", before: "06:30" }')).toEqual([TEXT]);
    expect(at('{ after: "22:00", before: "06:00" }')).toEqual([]);
  });

  test('by a habit too, but for mild days', () => {
    const habit = (more = '') =>
      said(
        `${HEATED}\nhousehold: { airing: [{ name: warm, room: den, when: [${WARM}], lasts: 1 h${more} }] }`,
      );
    expect(habit()).toEqual([TEXT]);
    expect(habit(', not below: 14')).toEqual([]);
    expect(habit(', not below: 12')).toEqual([]);
    expect(habit(', not below: 5')).toEqual([TEXT]);
  });
});

test('no demonstration home nor any of its plans has it', () => {
  const files = ['', 'gallery/'].flatMap((folder) =>
    readdirSync(`scenarios/${folder}`)
      .filter((name) => name.endsWith('.yaml'))
      .map((name) => `scenarios/${folder}${name}`),
  );
  expect(files.length).toBeGreaterThan(8);
  for (const file of files) {
    const scenario = readOnce(readFileSync(file, 'utf8'), file);
    for (const { name } of scenario.plans) {
      const { cautions } = preparePlan(scenario, { plan: name, set: [], files: new Map() });
      expect(
        cautions.filter(({ id }) => id === 'against-each-other'),
        `${file}, ${name}`,
      ).toEqual([]);
    }
  }
});
