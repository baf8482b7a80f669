import { describe, expect, test } from 'vitest';
import type { Log, LoggedPlace, LoggedSeries, ReadingKind } from '../../../src/log/log.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { type Replay, replayLog } from '../../../src/studies/replay/replay-log.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';

/** Monday, 3 February 2025. [s UTC] */
const MONDAY = Date.UTC(2025, 1, 3) / 1000;
const STEP = 600;
const HOURS = 48;

describe('when a rule would have fired', () => {
  test('at each room that is damp for long enough, and what its window then did', () => {
    const rules = `
  - { name: damp bed, when: [{ room: bedroom, reading: humidity, over: 65, clear: 60 }], on delay: 20 min, response: [{ tell: look }] }
  - { name: damp hall, when: [{ room: hall, reading: humidity, over: 65, clear: 60 }], response: [{ tell: look }] }`;
    const damp = (from: number) => (h: number) => (h % 12 >= from && h % 12 < from + 1 ? 70 : 55);
    const found = replayed(rules, [
      series('relative humidity', 'bedroom', damp(9)),
      series('relative humidity', 'hall', damp(3)),
      series(
        'window',
        'bedroom',
        (h) => ((h >= 9.2 && h < 10) || (h >= 22.3 && h < 23) ? 0.5 : 0),
        'state',
      ),
    ]);
    expect(found).toMatchObject({
      ...{ from: '2025-02-03T00:00Z', to: '2025-02-05T00:00Z', hours: 48 },
      ...{ scenario: 'Two rooms', plan: 'as-lived' },
    });
    const of = (name: string) =>
      found.events.filter(({ rule }) => rule === name).map(({ at, window }) => [at, window]);
    // The window is open from 9:10 to 9:50, and then from 22:20, an hour after the rule, to 22:50.
    expect(of('damp bed')).toEqual([
      ['2025-02-03T09:20Z', 'open already'],
      ['2025-02-03T21:20Z', 'opened within the hour'],
      ['2025-02-04T09:20Z', 'stayed shut'],
      ['2025-02-04T21:20Z', 'stayed shut'],
    ]);
    expect(of('damp hall')).toEqual(
      ['03T03', '03T15', '04T03', '04T15'].map((at) => [`2025-02-${at}:00Z`, 'not logged']),
    );
    expect(found.rules).toMatchObject([
      {
        ...{ name: 'damp bed', room: 'bedroom', fired: 4, per_week: 14 },
        windows: { open_already: 1, opened_within_the_hour: 1, stayed_shut: 2 },
      },
      { name: 'damp hall', room: 'hall', fired: 4, per_week: 14, windows: null },
    ]);
  });

  test('from the first full hour of the log to its last whole step', () => {
    const log = logOf([series('temperature', 'bedroom', (h) => 15 + h)]);
    const found = replayLog(
      planOf(WARM),
      { ...log, start: MONDAY + 1200, end: MONDAY + 36_300 },
      weather(),
    );
    expect(found).toMatchObject({ from: '2025-02-03T01:00Z', to: '2025-02-03T10:00Z', hours: 9 });
    // Over 21 °C from 6:10 on, told once.
    expect(found.events.map(({ at }) => at)).toEqual(['2025-02-03T06:10Z']);
    expect(found.rules[0]!.per_week).toBeCloseTo(168 / 9, 12);
  });

  test('by what was read, without the errors that the scenario gives its sensors', () => {
    const biased = planOf(WARM, 'sensors: { temperature: { bias: 3, noise: 2 } }');
    const log = logOf([series('temperature', 'bedroom', (h) => (h < 10 ? 20.9 : 21.1))]);
    const { events } = replayLog(biased, log, weather());
    expect(events.map(({ at }) => at)).toEqual(['2025-02-03T10:00Z']);
  });

  test('by presence as it was logged, with no delay or miss of a sensor on top', () => {
    const seen = planOf(
      `
  - { name: home, when: [{ room: bedroom, presence: somebody }], response: [{ tell: look }] }`,
      'sensors: { presence: { delay: 60, misses awake: 0.9, misses asleep: 0.9 } }',
    );
    const log = logOf([series('presence', 'bedroom', (h) => (h < 10 ? 0 : 1), 'state')]);
    expect(replayLog(seen, log, weather()).events.map(({ at }) => at)).toEqual([
      '2025-02-03T10:00Z',
    ]);
  });

  test('nothing that it asks for is done; windows stand as they were logged', () => {
    const airs = `
  - { name: warm, when: [{ room: bedroom, reading: temperature, over: 21 }], response: [{ open: bedroom, lasts: 2 h }] }
  - { name: aired, when: [{ windows: open, room: bedroom }], response: [{ tell: look }] }`;
    const { rules, events } = replayed(airs, [
      series('temperature', 'bedroom', (h) => (h < 10 ? 20 : 22)),
      series('window', 'bedroom', (h) => (h >= 22 && h < 23 ? 1 : 0), 'state'),
    ]);
    expect(rules.map(({ name, fired }) => [name, fired])).toEqual([
      ['warm', 1],
      ['aired', 1],
    ]);
    expect(events[1]).toMatchObject({ rule: 'aired', at: '2025-02-03T22:00Z' });
  });
});

describe('who would have heard it', () => {
  const warmAt = (...hours: readonly number[]) =>
    series('temperature', 'bedroom', (h) =>
      hours.some((at) => h >= at && h < at + 0.5) ? 22 : 20,
    );
  const heard = (given: readonly LoggedSeries[]) =>
    replayed(WARM, given).events.map(({ someone_home, someone_awake }) => [
      someone_home,
      someone_awake,
    ]);

  test('by habit: asleep at night, awake at home by day', () => {
    expect(heard([warmAt(3, 12)])).toEqual([
      [true, false],
      [true, true],
    ]);
  });

  test('by presence where that was logged: nobody, a sleeper, somebody where none is by habit', () => {
    const people = (value: number) => [
      series('presence', 'bedroom', () => value, 'state'),
      series('presence', 'hall', () => 0, 'state'),
    ];
    expect(heard([warmAt(3, 12), ...people(0)])).toEqual([
      [false, false],
      [false, false],
    ]);
    expect(heard([warmAt(3, 12), ...people(1)])).toEqual([
      [true, false],
      [true, true],
    ]);
    const empty = planOf(WARM, '', '[]');
    const guest = replayLog(empty, logOf([warmAt(3), ...people(1)]), weather()).events[0];
    expect(guest).toMatchObject({ someone_home: true, someone_awake: true });
    const found = replayed(WARM, [warmAt(3, 12), ...people(0)]);
    expect(found.rules[0]).toMatchObject({ someone_home: 0, someone_awake: 0, could_act: 0 });
    expect(found.notes.join()).not.toContain('presence');
  });
});

describe('outdoor air', () => {
  const RISING = `
  - { name: mild, when: [{ room: outdoors, reading: temperature, over: 10.2 }], response: [{ tell: look }] }`;
  const indoors = series('temperature', 'bedroom', () => 20);

  test('is that of the log where it has some', () => {
    const outside = series('temperature', null, (h) => (h < 7 ? 5 : 12), 'instant', 'outdoors');
    const { events, notes } = replayed(RISING, [indoors, outside]);
    expect(events.map(({ at }) => at)).toEqual(['2025-02-03T07:00Z']);
    expect(notes.join()).not.toContain('Outdoor air');
  });

  test('is that of weather measured in those days, on a straight line between its hours', () => {
    const log = logOf([indoors]);
    const { events, notes, rules } = replayLog(
      planOf(RISING),
      log,
      weather((h) => h / 2),
    );
    // 10 °C at 20:00 and 10.5 °C at 21:00: over 10.2 °C from 20:30 on.
    expect(events.map(({ at }) => at)).toEqual(['2025-02-03T20:30Z']);
    expect(notes).toContain('Outdoor air is that of the weather file.');
    expect(rules[0]!.unknown_hours).toBe(0);
  });

  test('is unknown where the weather is of other days or of a typical year', () => {
    const log = logOf([indoors]);
    for (const other of [
      weather((h) => h / 2, '2024-02-03'),
      { ...weather((h) => h / 2), periodic: true },
    ]) {
      const { events, notes, rules } = replayLog(planOf(RISING), log, other);
      expect(events).toEqual([]);
      expect(rules[0]!.unknown_hours).toBe(HOURS);
      expect(notes.at(-1)).toBe(
        'Outdoor air is unknown: nobody logged it, and the weather file is of other days or of a typical year. Conditions on it are never met.',
      );
    }
  });

  test('is known as long as the weather file lasts', () => {
    const short = weather(() => 5, '2025-02-01'); // its last hour is Monday, 23:00
    const { notes, rules } = replayLog(planOf(RISING), logOf([indoors]), short);
    expect(rules[0]!.unknown_hours).toBe(25);
    expect(notes).toContain('Outdoor air is that of the weather file.');
  });

  test('is drier or not by grams of water, and unknown without humidity indoors', () => {
    const drier = `
  - { name: drier, when: [{ room: bedroom, reading: humidity above outdoors, over: 3 }], response: [{ tell: look }] }
  - { name: moist, when: [{ room: outdoors, reading: humidity, over: 79, under: 81 }], response: [{ tell: look }] }`;
    // 5 °C and 80 % hold 5.4 g/m3; 20 °C hold 17.3 g/m3 at 100 %: 8.4 of them are 48.8 %.
    const damp = (percent: (h: number) => number) =>
      replayed(drier, [indoors, series('relative humidity', 'bedroom', percent)]);
    expect(damp((h) => (h < 8 ? 48 : 49.6)).events.map(({ rule, at }) => [rule, at])).toEqual([
      ['moist', '2025-02-03T00:00Z'],
      ['drier', '2025-02-03T08:00Z'],
    ]);
    expect(damp((h) => (h < 8 ? Number.NaN : 40)).rules[0]!.unknown_hours).toBe(8);
    expect(replayed(drier, [indoors]).rules[0]).toMatchObject({ fired: 0, unknown_hours: HOURS });
  });
});

test('species are read where they were logged', () => {
  const stuffy = `
  - { name: stuffy, when: [{ room: hall, reading: co2, over: 1000 }], response: [{ tell: look }] }`;
  const co2 = (room: string) => series('co2', room, (h) => (h < 20 ? 600 : 1200));
  const at = (room: string) => replayed(stuffy, [co2(room)]);
  expect(at('hall').events.map((event) => event.at)).toEqual(['2025-02-03T20:00Z']);
  expect(at('hall').rules[0]!.unknown_hours).toBe(0);
  expect(at('bedroom')).toMatchObject({ events: [], rules: [{ unknown_hours: HOURS }] });
});

test('a sensor that reports changes is known between them, by the rule of all readings of logs', () => {
  // Every three hours: four times that is more than the eight hours that a reading may stand for.
  const hourly = series('temperature', 'bedroom', (h) => (h < 24 ? 20 : 22));
  const seldom = (column: Float64Array) => column.filter((_, k) => k % 18 === 0);
  const given = { ...hourly, times: seldom(hourly.times), values: seldom(hourly.values) };
  const [warm] = replayed(WARM, [given]).rules;
  expect(warm).toMatchObject({ fired: 1, unknown_hours: 0 });
});

test('where a log lost sight of a window, habits have it', () => {
  const aired = `
  - { name: aired, when: [{ windows: open, room: bedroom }], response: [{ tell: look }] }`;
  const lost = (state: number) => series('window', 'bedroom', () => state, 'state');
  const fired = (given: readonly LoggedSeries[]) => replayed(aired, given).rules[0]!.fired;
  expect(fired([lost(0)])).toBe(0);
  expect(fired([lost(Number.NaN)])).toBe(fired([]));
  expect(fired([])).toBeGreaterThan(0);
});

test('what stood in for readings that nobody logged is told by room', () => {
  const temperature = series('temperature', 'bedroom', () => 20);
  expect(replayed(WARM, [temperature]).notes).toEqual([
    'Nobody logged presence in bedroom and hall: people are where the scenario has them.',
    "Nobody logged windows in bedroom and hall: they stand as the scenario's clock has them.",
    'Outdoor air is that of the weather file.',
  ]);
  const window = series('window', 'hall', () => 0, 'state');
  expect(replayed(WARM, [temperature, window]).notes[1]).toBe(
    "Nobody logged windows in bedroom: they stand as the scenario's clock has them.",
  );
});

const WARM = `
  - { name: warm, when: [{ room: bedroom, reading: temperature, over: 21 }], response: [{ tell: look }] }`;

const ADULT = '[{ who: adult, pattern: works at home, sleeps in: bedroom }]';

function replayed(rules: string, given: readonly LoggedSeries[]): Replay {
  return replayLog(planOf(rules), logOf(given), weather());
}

function planOf(rules: string, more = '', people = ADULT) {
  const text = `title: Two rooms
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 10, timezone: UTC }
home: { rooms: { bedroom: { use: bedroom, floor area: 12 }, hall: { use: hall, floor area: 6 } } }
heating: { source: direct electric, setpoint: 19 }
household: { people: ${people} }
${more}
rules:${rules}
`;
  return preparePlan(readOnce(text, 'home.yaml'), { plan: null, set: [], files: new Map() });
}

function logOf(given: readonly LoggedSeries[]): Log {
  return { series: given, start: MONDAY, end: MONDAY + HOURS * 3600 };
}

/** Two days by ten minutes, as given by the hour. */
function series(
  quantity: string,
  room: string | null,
  of: (hour: number) => number,
  reading: ReadingKind = 'instant',
  place: LoggedPlace = 'room',
): LoggedSeries {
  const times = Float64Array.from({ length: HOURS * 6 + 1 }, (_, k) => MONDAY + k * STEP);
  const values = times.map((_, k) => of(k / 6));
  return { quantity, place, room, device: null, reading, times, values, from: 'test' };
}

/** Measured, from a day before Monday on; 5 °C and 80 % where not given by hours since Monday. */
function weather(temperature: (hour: number) => number = () => 5, monday = '2025-02-03') {
  const rows = Array.from({ length: 96 }, (_, k) => {
    const time = new Date(Date.parse(`${monday}T00:00Z`) + (k - 24) * 3_600_000);
    return `${time.toISOString().slice(0, 16)}Z,${temperature(k - 24)},80,3,0,0`;
  });
  const head = '# latitude: 54\n# longitude: -2\n# elevation: 10\n';
  const columns = 'time,temperature,relative humidity,wind speed,direct normal,diffuse horizontal';
  return readWeather(`${head}${columns}\n${rows.join('\n')}\n`, 'w.csv');
}
