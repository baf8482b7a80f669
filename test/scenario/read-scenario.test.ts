import { describe, expect, test } from 'vitest';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from './problems-of.ts';

test('the least that a person must say is enough', () => {
  const scenario = readScenario(
    'title: A\nweather: w.csv\nhome: { rooms: { den: { floor area: 9 } } }',
    'h.yaml',
  );
  expect(scenario.title).toBe('A');
  expect(scenario.plans).toEqual([{ name: 'as-lived', description: '', basedOn: null }]);
  expect(scenario.files).toEqual(['w.csv']);
});

test('plans in the order of the file, and every file that any of them needs', () => {
  const scenario = readScenario(
    homeWith(`money: { electricity: { prices: a.csv } }
plans:
  now: { description: as it is, change: {} }
  other: { based on: now, change: { money: { electricity: { prices: b.csv } } } }`),
    'h.yaml',
  );
  expect(scenario.plans.map(({ name, basedOn: on }) => [name, on])).toEqual([
    ['now', null],
    ['other', 'now'],
  ]);
  expect(scenario.files).toEqual(['w.csv', 'a.csv', 'b.csv']);
});

describe('one mistake, one line that says where, what was expected, what came and what was meant', () => {
  test.each([
    [
      'an unknown key and its neighbour',
      'heatng: { setpoint: 20 }',
      'h.yaml:8:1: heatng: did you mean "heating"? Expected one of the keys title, invented, weather, site, period, step, money, home, heating, cooling, blinds, household, devices, sensors, rules, air, seed, bands, log, doubts, fitted, plans, got "heatng", which is not known',
    ],
    [
      'text with a comma between braces',
      'plans: { now: { description: dry, windows shut, change: {} } }',
      'h.yaml:8:35: plans.now.windows shut: expected one of the keys description, based on, change, purchases, got "windows shut", which is not known (between braces, text with a comma needs quotes)',
    ],
    [
      'a key of a later time',
      'forecast: {}',
      'h.yaml:8:1: forecast: expected one of the keys title, invented, weather, site, period, step, money, home, heating, cooling, blinds, household, devices, sensors, rules, air, seed, bands, log, doubts, fitted, plans, got "forecast", which is not known',
    ],
    [
      'a difference for a setpoint',
      'heating: { setpoint: 21 K }',
      'h.yaml:8:22: heating.setpoint: expected a temperature in °C or °F, such as 20 or "68 °F", got "21 K", which is a temperature difference (K is a difference here; a temperature is written 21 °C)',
    ],
    [
      'a temperature that nobody keeps',
      'heating: { setpoint: 70 }',
      'h.yaml:8:22: heating.setpoint: expected a temperature in °C or °F from -10 to 40, got 70 (did you mean "70 °F"?)',
    ],
    [
      'a setback above the setpoint',
      'heating: { setpoint: 19, setback: 20 }',
      'h.yaml:8:35: heating.setback: expected a setback of the setpoint (19 °C) or less, got 20',
    ],
    [
      'a night warmer than the day',
      'heating: { setpoint: 19, night: { setpoint: 66.5 °F, from: "22:00", to: "06:00" } }',
      `h.yaml:8:45: heating.night.setpoint: expected the day's setpoint (19 °C) or less, got "66.5 °F"`,
    ],
    [
      'a setpoint under the frost guard',
      'heating: { setpoint: 20, rooms: { bedroom: 4 } }',
      'h.yaml:8:44: heating.rooms.bedroom: expected a setpoint of the frost guard (5 °C) or more, got 4',
    ],
    [
      'hours beside a setpoint by the clock',
      'heating: { setpoint: [{ from: "06:00", to: "09:00", setpoint: 20 }], hours: "06:00-08:00" }',
      'h.yaml:8:77: heating.hours: expected hours, or a setpoint by the clock, not both, got "06:00-08:00"',
    ],
    [
      'bad clock text',
      'heating: { hours: "6.30-9" }',
      'h.yaml:8:19: heating.hours: expected a span of local time such as "22:30-06:00", got "6.30-9"',
    ],
    [
      'an hour that no day has',
      'heating: { night: { setpoint: 15, from: "25:00", to: "06:00" } }',
      'h.yaml:8:41: heating.night.from: expected a local time such as "06:30", got "25:00"',
    ],
    [
      'an unknown weekday',
      'household: { airing: [{ room: living, at: "07:00", days: [Mon, Wendesday] }] }',
      'h.yaml:8:58: household.airing #1.days: expected every day, weekdays, weekends, or day names such as [Mon, Wed], got "Wendesday" (did you mean "wednesday"?)',
    ],
    [
      'an unknown month',
      'household: { airing: [{ room: living, at: "07:00", months: [May-Setp, Jan] }] }',
      'h.yaml:8:60: household.airing #1.months: expected all year, a span such as May-Sep, or month names such as [Jan, Feb], got "Setp" (did you mean "sep"?)',
    ],
    [
      'a span of three months and no month at all',
      'household: { activities: [{ what: plants, months: Jan-May-Sep }, { what: fridge, months: [] }] }',
      'h.yaml:8:51: household.activities #1.months: expected all year, a span such as May-Sep, or month names such as [Jan, Feb], got "Jan-May-Sep"\n' +
        'h.yaml:8:90: household.activities #2.months: expected all year, a span such as May-Sep, or month names such as [Jan, Feb], got no month at all',
    ],
    [
      'the night of a last day of a month runs into the next',
      'heating: { hours: [{ months: Jan-Apr, from: "22:00", to: "07:00" }, { months: May, from: "06:00", to: "09:00" }] }',
      'h.yaml:8:69: heating.hours #2: expected a time apart from that of #1, got both on tuesday at 06:00',
    ],
    [
      'a schedule that overlaps itself past midnight',
      'heating: { hours: [{ days: Sun, from: "22:00", to: "07:00" }, { days: Mon, from: "06:00", to: "09:00" }] }',
      'h.yaml:8:63: heating.hours #2: expected a time apart from that of #1, got both on monday at 06:00',
    ],
    [
      'a person in two rooms at once',
      'household: { people: [{ schedule: [{ room: living, from: "06:00", to: "09:00" }, { room: bedroom, from: "08:30", to: "10:00" }] }] }',
      'h.yaml:8:82: household.people #1.schedule #2: expected a time apart from that of #1, got both on monday at 08:30',
    ],
    [
      'a word that is none of the choices',
      'household: { people: [{ who: infnat }] }',
      'h.yaml:8:30: household.people #1.who: expected one of: adult, frail adult, child, infant, got "infnat" (did you mean "infant"?)',
    ],
    [
      'a word where a few words or a number belong',
      'heating: { season: { cold by: nie } }',
      'h.yaml:8:31: heating.season.cold by: expected never, or a temperature difference such as 2 K, got "nie"',
    ],
    [
      'a mistyped word where a few words or a number belong',
      'heating: { season: { cold by: nevr }, window lock-out: nver }',
      'h.yaml:8:31: heating.season.cold by: expected never, or a temperature difference such as 2 K, got "nevr" (did you mean "never"?)\n' +
        'h.yaml:8:56: heating.window lock-out: expected never, or a time such as 2 min, got "nver" (did you mean "never"?)',
    ],
    [
      'a word where a few words or hours belong',
      'heating: { hours: immer }',
      'h.yaml:8:19: heating.hours: expected always, never, a span such as "22:30-06:00", or a list of { days, months, from, to }, got "immer"',
    ],
    [
      'a word where a number or a mapping belongs',
      'heating: { rooms: { living: aus } }',
      'h.yaml:8:29: heating.rooms.living: expected a temperature in °C, off, or a mapping with setpoint, hours, setback, night, got "aus"',
    ],
    [
      'two forms of a price',
      'money: { gas: { price: 0.07, day: 0.1 } }',
      'h.yaml:8:15: money.gas: expected exactly one of: price; or day with night with night hours; or prices, got price with day',
    ],
    [
      'half a form of a price',
      'money: { gas: { day: 0.07, night: 0.05 } }',
      'h.yaml:8:15: money.gas: expected night hours beside day and night, got none',
    ],
    [
      'a step that does not divide an hour',
      'step: 7 min',
      'h.yaml:8:7: step: expected minutes that divide an hour: 1, 2, 3, 4, 5, 6, 10 ..., got "7 min"',
    ],
    [
      'a day that no month has',
      'period: { from: 02-30 }',
      'h.yaml:8:17: period.from: expected a day up to 02-29, got "02-30"',
    ],
    [
      'a habit that opens nothing',
      'household: { airing: [{ opening: skylight, at: "07:00" }] }',
      'h.yaml:8:34: household.airing #1.opening: expected an opening: living window, bedroom window, got "skylight"',
    ],
    [
      'a band the wrong way round',
      'bands: { humidity: { low: 60, high: 40 } }',
      'h.yaml:8:27: bands.humidity.low: expected no more than high (40), got 60',
    ],
    [
      'a COP table that falls back',
      'heating: { source: heat pump, cop: [{ outdoor: 7, cop: 3 }, { outdoor: 2, cop: 2.5 }] }',
      'h.yaml:8:72: heating.cop #2.outdoor: expected an outdoor temperature above the one before (7 °C), got 2',
    ],
  ])('%s', (_, line, expected) => {
    expect(readingProblems(homeWith(line)).join('\n')).toBe(expected);
  });
});

test('the same hours in months apart do not overlap', () => {
  const hours = (a: string, b: string) =>
    readingProblems(
      homeWith(`heating: { hours: [{ months: ${a}, from: "22:00", to: "07:00" }, \
        { months: ${b}, from: "22:00", to: "07:00" }] }`),
    );
  expect(hours('Oct-Apr', 'May-Sep')).toEqual([]);
  expect(hours('May-Sep', '[Oct-Dec, "Jan - April"]')).toEqual([]);
  expect(hours('Oct-Apr', 'Apr-Sep')).toHaveLength(1);
});

describe('rooms', () => {
  const rooms = (text: string) =>
    readingProblems(`title: T\nweather: w.csv\nhome:\n${text.replaceAll(/^/gm, '  ')}`);

  test('areas that are negative, zero, a weight or missing', () => {
    expect(
      rooms(
        'rooms:\n  a: { floor area: -16 }\n  b: { floor area: 0 }\n  c: { floor area: 5 kg }\n  d: {}',
      ),
    ).toEqual([
      'h.yaml:5:22: home.rooms.a.floor area: expected an area in m2 from 1 to 2000, got -16',
      'h.yaml:6:22: home.rooms.b.floor area: expected an area in m2 from 1 to 2000, got 0',
      'h.yaml:7:22: home.rooms.c.floor area: expected an area in m2, such as 12 or "130 ft2", got "5 kg", which is a mass',
      'h.yaml:8:8: home.rooms.d.floor area: expected an area in m2 from 1 to 2000, got nothing',
    ]);
  });

  test('a doorway to a room that does not exist, or to itself, or to three', () => {
    expect(
      rooms(`rooms: { hall: { floor area: 6 }, living: { floor area: 16 } }
doorways:
  - { between: [living, hal] }
  - { between: [hall, hall] }
  - { between: [hall, living, hall] }`),
    ).toEqual([
      'h.yaml:6:27: home.doorways #1.between #2: expected the name of a room: hall, living, got "hal" (did you mean "hall"?)',
      'h.yaml:7:25: home.doorways #2.between #2: expected another room than hall, got "hall"',
      'h.yaml:8:18: home.doorways #3.between: expected the names of two rooms, got a list of 3',
    ]);
  });

  test('a room cut off from everything', () => {
    const shut = 'box: { floor area: 4, elements: [], panes: [] }';
    expect(rooms(`rooms:\n  living: { floor area: 16 }\n  ${shut}\ndoorways: []`)).toEqual([
      'h.yaml:6:10: home.rooms.box: expected a doorway, a window or a wall that heat passes, got a room cut off from everything',
    ]);
    const inner =
      'rooms:\n  box: { floor area: 4, outer sides: 0, above: neighbour, below: neighbour }\n  living: { floor area: 16 }';
    expect(rooms(`${inner}\ndoorways: []`)).toHaveLength(1);
    expect(rooms(`${inner}\ndoorways: [{ between: [box, living] }]`)).toEqual([]);
    // A wall of another room to it is a way for heat as well.
    const wall =
      'living: { floor area: 16, elements: [{ kind: partition, area: 8, u-value: 1.5, to: { room: box } }] }';
    expect(rooms(`rooms:\n  ${wall}\n  ${shut}\ndoorways: []`)).toEqual([]);
  });

  test('windows larger than the walls they are in', () => {
    expect(
      rooms('rooms: { a: { floor area: 9, outer sides: 1, height: 2, panes: [{ area: 7 }] } }'),
    ).toEqual([
      'h.yaml:4:66: home.rooms.a.panes: expected windows no larger than the outer walls (6.0 m2), got 7.0 m2',
    ]);
  });

  test('an element that physics does not allow', () => {
    expect(
      rooms(
        'rooms: { a: { floor area: 9, elements: [{ kind: wall, area: 6, u-value: 6.5 }] } }',
      )[0],
    ).toMatch(
      /^h\.yaml:4:\d+: home\.rooms\.a\.elements #1: expected a U-value of 0\.01 to 5\.876 W\/\(m2 K\), got 6\.5 W\/\(m2 K\)$/,
    );
  });

  test('leakage said twice', () => {
    expect(rooms('leakage: { ach50: 7, area: 300 cm2 }\nrooms: { a: { floor area: 9 } }')).toEqual([
      'h.yaml:4:12: home.leakage: expected exactly one of: ach50; or air changes; or area, got ach50 with area',
    ]);
  });

  test('names that JavaScript keeps for itself', () => {
    expect(rooms('rooms: { __proto__: { floor area: 9 } }')).toEqual([
      'h.yaml:4:12: expected another name, got "__proto__"',
    ]);
  });
});

test('every problem of a file at once, in the order they stand there', () => {
  const problems = readingProblems(
    homeWith(`step: 0
heating: { setpoint: warm, source: boilr }
household:
  people: [{ sleeps in: attic }]
plans:
  a: { based on: nobody, change: { heating: { setpoint: 20 } } }
  b: { change: { home: { rooms: { living: { flor area: 3 } } } } }`),
  );
  expect(problems.map((line) => line.split(/: (?:expected|did)/)[0])).toEqual([
    'h.yaml:8:7: step',
    'h.yaml:9:22: heating.setpoint',
    'h.yaml:9:36: heating.source',
    'h.yaml:11:25: household.people #1.sleeps in',
    'h.yaml:13:18: plans.a.based on',
    'h.yaml:14:45: home.rooms.living.flor area in plan b',
  ]);
});

test('an empty file, and one that is a list', () => {
  expect(readingProblems('')).toEqual([
    'h.yaml:1:1: expected a mapping with title, weather, home ..., got an empty file',
  ]);
  expect(readingProblems('- a\n- b')).toEqual([
    'h.yaml:1:1: expected a mapping with title, weather, home ..., got a list of 2',
  ]);
});
