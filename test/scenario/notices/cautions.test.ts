import { expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { homeWith } from '../problems-of.ts';
import { readOnce } from '../read-once.ts';

/** But for the question where the showers of a home without a bathroom are, and that nobody gave a price. */
const cautions = (more: string) =>
  preparePlan(readOnce(homeWith(more), 'h.yaml'), {
    ...{ plan: null, set: [], files: new Map() },
  }).cautions.filter(({ id }) => id !== 'activity-elsewhere' && id !== 'all-prices-assumed');
const ids = (more: string) => cautions(more).map(({ id }) => id);

test('a fuel-burning appliance needs a carbon-monoxide alarm', () => {
  expect(ids('heating: { source: boiler, setpoint: 20 }')).toEqual([
    'co-alarm',
    'mould',
    'model-limits',
  ]);
  const hob = 'household: { activities: [{ what: cooking, gas: 1 kWh }] }';
  expect(ids(`heating: { source: direct electric, setpoint: 20 }\n${hob}`)).toContain('co-alarm');
  expect(ids('heating: { source: direct electric, setpoint: 20 }')).toEqual([
    'mould',
    'model-limits',
  ]);
});

test('infant, frail, low setting, frost', () => {
  expect(
    ids(
      'heating: { source: heat pump, setpoint: 20 }\nhousehold: { people: [{ who: infant }, { who: frail adult }] }',
    ),
  ).toEqual(['infant', 'frail', 'mould', 'model-limits']);
  expect(ids('heating: { source: heat pump, setpoint: 17 }')).toContain('low-setpoint');
  expect(ids('heating: { source: heat pump, setpoint: 18 }')).not.toContain('low-setpoint');
  expect(ids('heating: { source: none }')).not.toContain('low-setpoint');
  expect(ids('heating: { source: heat pump, setpoint: 20, rooms: { bedroom: off } }')).toContain(
    'frost',
  );
});

test('settings that leave no hour between them are the only ones', () => {
  const day = (more: string, night: number) =>
    ids(
      `heating: { source: heat pump, setpoint: [{ from: "06:00", to: "22:00", setpoint: 20${more} }, { from: "22:00", to: "06:00", setpoint: ${night} }] }`,
    );
  expect(day('', 19)).toEqual(['mould', 'model-limits']);
  expect(day('', 17)).toEqual(['low-setpoint', 'mould', 'model-limits']);
  expect(day(', months: Oct-Apr', 19)).toContain('frost');
  expect(day(', days: weekdays', 19)).toContain('frost');
});

test('a stove or a plug-in heater is something that heats', () => {
  const frost = (devices: string) =>
    cautions(`heating: { source: none }\n${devices}`).find(({ id }) => id === 'frost')?.text;
  expect(frost('')).toContain('little heats living, bedroom');
  for (const kind of ['stove', 'heater']) {
    expect(frost(`devices: { warm: { kind: ${kind}, room: living } }`)).toContain(
      'little heats bedroom',
    );
  }
});

test('a low setting by night counts, and names the room', () => {
  const low = cautions('heating: { source: heat pump, setpoint: 20, rooms: { bedroom: 16 } }');
  expect(low.find(({ id }) => id === 'low-setpoint')?.text).toContain('below 18 °C in bedroom:');
  expect(
    ids(
      'heating: { source: heat pump, setpoint: 20, night: { setpoint: 15, from: "22:00", to: "06:00" } }',
    ),
  ).toContain('low-setpoint');
});

test('a low setting where an infant sleeps does not call for more warmth than its guide', () => {
  const low = (sleeps: string) =>
    cautions(
      `heating: { source: heat pump, setpoint: 20, rooms: { bedroom: 17 } }\nhousehold: { people: [{ who: infant, sleeps in: ${sleeps} }, { who: adult, sleeps in: bedroom }] }`,
    ).find(({ id }) => id === 'low-setpoint')?.text;
  expect(low('bedroom')).toContain('Where an infant sleeps (bedroom) the guide is 16 to 20 °C');
  expect(low('living')).not.toContain('Where an infant sleeps');
});

test('no caution ever gives a verdict of safety', () => {
  const all = cautions(
    'heating: { setpoint: 16, rooms: { bedroom: off } }\nhousehold: { people: [{ who: infant }, { who: frail adult }] }',
  );
  expect(all.length).toBe(7);
  for (const { text } of all) expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i);
});

test('devices: fumes, sleepers that sensors miss, night hours, the room of an infant', () => {
  const electric = 'heating: { source: direct electric, setpoint: 20 }';
  const device = (words: string, more = '') => ids(`${electric}\ndevices: { ${words} }\n${more}`);
  const stove = 'fire: { kind: stove, room: living }';
  const fan = 'fan: { kind: extract fan, room: living }';
  const rest = ['mould', 'model-limits'];
  expect(device(stove)).toEqual(['co-alarm', 'stove', ...rest]);
  expect(device(fan)).toEqual(rest);
  expect(device(`${stove}, ${fan}`)).toEqual(['co-alarm', 'stove', 'spillage', ...rest]);
  expect(device(`fire: { kind: stove, room: living, air: outdoors }, ${fan}`)).not.toContain(
    'spillage',
  );
  expect(ids(`heating: { source: boiler, setpoint: 20 }\ndevices: { ${fan} }`)).toContain(
    'spillage',
  );
  const drier = (more: string) => `drier: { kind: dehumidifier, room: bedroom${more} }`;
  expect(device(drier(''))).toEqual(['unattended', 'dehumidifier', ...rest]);
  expect(device(drier(', hours: "08:00-22:00"'))).toEqual(['dehumidifier', ...rest]);
  expect(device(drier(', hours: "22:00-02:00"'))).toContain('unattended');
  const infant = 'household: { people: [{ who: infant, sleeps in: bedroom }] }';
  expect(device(drier(', hours: "08:00-22:00"'), infant)).toContain('infant-room');
  expect(device(drier(', gate: when present'), infant)).toContain('sleepers-unseen');
});

test('sleepers that sensors miss matter to rules too', () => {
  const asked = (rule: string) =>
    ids(
      `heating: { source: direct electric }\nhousehold: { people: [{ who: infant, sleeps in: bedroom }] }\nrules: [{ name: a, ${rule} }]`,
    ).includes('sleepers-unseen');
  const nobody = 'when: [{ room: bedroom, presence: nobody }]';
  expect(asked(`${nobody}, response: [{ room: bedroom, setpoint: 15 }]`)).toBe(true);
  const cold = 'when: [{ room: bedroom, reading: temperature, under: 18 }]';
  const warm = 'response: [{ room: bedroom, setpoint: 20 }]';
  expect(asked(`${cold}, gate: when present, ${warm}`)).toBe(true);
  expect(asked(`${cold}, ${warm}`)).toBe(false);
  expect(asked(`${nobody}, response: [{ tell: nobody there }]`)).toBe(false);
  // The place of a rule in rooms is its room, wherever it reads.
  const draught = 'when: [{ room: living, reading: temperature, under: 18 }]';
  expect(asked(`rooms: [bedroom], ${draught}, gate: when present, ${warm}`)).toBe(true);
  const fan =
    '[{ stop: fan }] }]\ndevices: { fan: { kind: extract fan, room: bedroom, runs: by rules';
  expect(asked(`${nobody}, response: ${fan} } } #`)).toBe(true);
  expect(asked(`${nobody.replace('bedroom', 'living')}, ${warm}`)).toBe(false);
});

test('a humidifier and what dries the same room may work against each other', () => {
  const both = (wet: number, dry: number, room = 'bedroom', kind = 'dehumidifier') =>
    cautions(
      `heating: { source: heat pump }\ndevices: { mist: { kind: humidifier, room: bedroom, target: ${wet}, deadband: 6 }, drier: { kind: ${kind}, room: ${room}, target: ${dry}, deadband: 6${kind === 'extract fan' ? ', runs: by humidity' : ''} } }`,
    ).find(({ id }) => id === 'against-each-other')?.text;
  expect(both(60, 50)).toBe(
    'Work against each other in one room: mist (up to 63 %) and drier (down to 47 %). One adds the water that the other takes out, and both are paid for: leave a gap of ten points between them.',
  );
  expect(both(65, 64.1)).toContain('mist (up to 68 %) and drier (down to 61.1 %)');
  // Up to 53 the one, from 63 down to 57 the other.
  expect(both(50, 60)).toBeUndefined();
  expect(both(50, 50)).toBeDefined();
  expect(both(60, 50, 'living')).toBeUndefined();
  // One of them swings wider, past the level at which the other starts.
  const apart = (wet: string, dry: string) =>
    cautions(
      `heating: { source: heat pump }\ndevices: { mist: { kind: humidifier, room: bedroom, ${wet} }, drier: { kind: dehumidifier, room: bedroom, ${dry} } }`,
    ).find(({ id }) => id === 'against-each-other');
  const narrow = 'target: 45, deadband: 2';
  expect(apart(narrow, 'target: 50, deadband: 14')).toBeDefined(); // 43 to 57
  expect(apart(narrow, 'target: 52, deadband: 14')).toBeUndefined(); // 45 to 59
  expect(apart('target: 45, deadband: 14', 'target: 50, deadband: 2')).toBeDefined(); // 52 and 51
  expect(both(60, 50, 'bedroom', 'extract fan')).toBeDefined();
});

test('a stove that burns room air in a tight home may be starved', () => {
  const device = (ach50: number, more = '') =>
    ids(
      `  leakage: { ach50: ${ach50} }\nheating: { source: heat pump }\ndevices: { fire: { kind: stove, room: living${more} } }`,
    );
  expect(device(4)).toContain('stove-air');
  for (const ach50 of [5, 10]) expect(device(ach50)).not.toContain('stove-air');
  expect(device(4, ', air: outdoors')).not.toContain('stove-air');
});

test.each([
  ['ach50: 4.9', true],
  ['ach50: 5', false],
  // 5/3600 · 67.2 m3 · (4/50)^0.65 · sqrt(1.2041/8) = 70.1 cm2 at 4 Pa.
  ['area: 69 cm2', true],
  ['area: 71 cm2', false],
  // A twentieth of 5.
  ['air changes: 0.24', true],
  ['air changes: 0.25', false],
])('a home is too tight for a stove however its leakage is given: %s', (leakage, tight) => {
  const stove = 'heating: { source: heat pump }\ndevices: { fire: { kind: stove, room: living } }';
  expect(ids(`  leakage: { ${leakage} }\n${stove}`).includes('stove-air')).toBe(tight);
});

test('a home that feels draughty or tight is judged by that', () => {
  const stove = 'heating: { source: heat pump }\ndevices: { fire: { kind: stove, room: living } }';
  expect(ids(`  build: { draughts: tight }\n${stove}`)).toContain('stove-air');
  expect(ids(`  build: { draughts: average }\n${stove}`)).not.toContain('stove-air');
});

test('a humidifier wants cleaning, and a purifier replaces no fresh air', () => {
  const device = (kind: string) =>
    ids(`heating: { source: heat pump }\ndevices: { d: { kind: ${kind}, room: living } }`);
  expect(device('humidifier')).toContain('humidifier');
  expect(device('humidifier')).not.toContain('purifier');
  expect(device('purifier')).toContain('purifier');
  const text = cautions('devices: { d: { kind: purifier, room: living } }').map((one) => one.text);
  expect(text.join(' ')).toContain(
    'removes neither what people breathe out nor carbon monoxide nor damp',
  );
});

test('an air conditioner with a single duct draws in outdoor air, and fumes where fuel burns', () => {
  const cooled = (source: string, more = 'heating: { source: heat pump }') =>
    ids(`${more}\ncooling: { source: ${source}, rooms: [bedroom] }`);
  expect(cooled('single duct')).toContain('single-duct');
  expect(cooled('single duct')).not.toContain('spillage');
  expect(cooled('single duct', 'heating: { source: boiler }')).toContain('spillage');
  expect(cooled('split', 'heating: { source: boiler }')).not.toContain('spillage');
  expect(cooled('split')).not.toContain('single-duct');
  const text = cautions(
    'heating: { source: boiler }\ncooling: { source: single duct, rooms: [bedroom] }',
  ).find(({ id }) => id === 'spillage')?.text;
  expect(text).toMatch(
    /^An air conditioner with a single duct in a home with an appliance that burns fuel: if /,
  );
});

test('a cheap night is named beside what may run unattended', () => {
  const text = (money: string) =>
    cautions(`${money}\ndevices: { d: { kind: heater, room: living } }`).find(
      ({ id }) => id === 'unattended',
    )?.text;
  expect(text('')).not.toContain('Cheap night hours');
  expect(
    text('money: { electricity: { day: 0.3, night: 0.1, night hours: "00:30-04:30" } }'),
  ).toContain('Cheap night hours are no reason to leave it alone.');
});

test('what a shut gate keeps counts as a low setting', () => {
  const gated = (setback: number) =>
    ids(`heating: { source: heat pump, setpoint: 20, setback: ${setback}, gate: when present }`);
  expect(gated(16)).toContain('low-setpoint');
  expect(gated(18)).not.toContain('low-setpoint');
  expect(ids('heating: { source: heat pump, setpoint: 20, gate: when present }')).toContain(
    'frost',
  );
});

test('clock times that daylight saving skips or repeats are named with their place', () => {
  const changes = (more: string, zone = 'Europe/London') =>
    preparePlan(readOnce(homeWith(more).replace('Europe/London', zone), 'h.yaml'), {
      ...{ plan: null, set: [], files: new Map() },
    }).cautions.find(({ id }) => id === 'clock-change')?.text;
  const at = (time: string) => `household: { airing: [{ room: living, at: "${time}" }] }`;
  expect(changes(at('01:30'))).toBe(
    'On the day the clocks go forward there is no such time, and the moment they jump stands for it: 01:30 (household.airing #1.at). ' +
      'On the day they go back it comes twice, and the first of the two is meant: 01:30 (household.airing #1.at).',
  );
  expect(changes(at('00:59'))).toBeUndefined();
  expect(changes(at('02:00'))).toBeUndefined();
  expect(changes(at('02:00'), 'Europe/Berlin')).toContain('02:00 (household.airing #1.at)');
  expect(changes(at('01:30'), 'UTC')).toBeUndefined();
  expect(changes('heating: { hours: ["06:00-01:15"] }')).toContain('01:15 (heating.hours #1)');
});
