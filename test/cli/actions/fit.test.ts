import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { all, readMarkup, tableOf, textOf } from '../../report/page/read-markup.ts';
import { fakeIo } from '../fake-io.ts';

// What is refused before any search; test/fit has the searches.

const HOME = `title: Small home
weather: w.csv
site: { timezone: UTC }
step: 60
home: { rooms: { den: { floor area: 14 } } }
`;

/** Rows an hour apart from a day on. */
function hourly(day: string, days: number, cells: (n: number) => string): string {
  const start = Date.parse(`${day}T00:00Z`);
  return Array.from({ length: 24 * days }, (_, n) => {
    const time = new Date(start + n * 3.6e6).toISOString().slice(0, 16);
    return `${time}Z,${cells(n)}\n`;
  }).join('');
}

const WEATHER = `# title: Somewhere
# latitude: 54
# longitude: -2
# elevation: 10
time,temperature,relative humidity,wind speed,wind direction,direct normal,diffuse horizontal
${hourly('2024-01-01', 40, (n) => `${5 + (n % 24) / 12},80,3,200,0,0`)}`;

async function fitting(log: string, ...more: string[]) {
  const { io, said, files } = fakeIo({ 'h.yaml': HOME, 'w.csv': WEATHER, 'log.csv': log });
  const status = await main(['fit', 'h.yaml', '--log', 'log.csv', ...more], io);
  return { status, ...said, files };
}

test('a log of a few days is told to be short, not that its weather is wrong', async () => {
  const log = `time,den temperature\n${hourly('2024-01-08', 5, (n) => `${20 + (n % 5)}`)}`;
  const { status, err } = await fitting(log);
  expect(status).toBe(2);
  expect(err).toMatch(
    /got 5 days: .* \(three weeks of readings are the least from which habits show\)$/m,
  );
});

test('a log of other days than the weather is refused with both spans', async () => {
  const log = `time,den temperature\n${hourly('2024-05-01', 30, (n) => `${20 + (n % 5)}`)}`;
  const { status, out, err } = await fitting(log);
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toContain('expected a log and weather that have at least a week in common');
  expect(err).toContain(
    'log.csv: expected a log and weather that have at least a week in common, got 0 days: the log from 2024-05-01 to 2024-05-30, the weather from 2024-01-01',
  );
  expect(err).toContain(
    'measured weather of the same days is needed; --weather names another file',
  );
});

test('fewer than seven days in common are refused', async () => {
  const log = `time,den temperature\n${hourly('2024-01-05', 5, (n) => `${20 + (n % 5)}`)}`;
  expect((await fitting(log)).err).toMatch(/got 5 days: the log from 2024-01-05/);
});

test('a fit without a log is a usage error', async () => {
  const { io, said } = fakeIo({ 'h.yaml': HOME, 'w.csv': WEATHER });
  expect(await main(['fit', 'h.yaml'], io)).toBe(1);
  expect(said.err).toContain("required option '--log <file>' not specified");
});

test('the log is not written over', async () => {
  const log = `time,den temperature\n${hourly('2024-01-05', 20, (n) => `${20 + (n % 5)}`)}`;
  const { status, err } = await fitting(log, '--out', 'log.csv');
  expect(status).toBe(1);
  expect(err).toContain('It is read by the same call; name another file.');
});

test('one room with humidity alone is fitted, told in words within 80 columns, and nothing is written without skill', async () => {
  // a humidity that follows nothing: noise by a fixed rule about 50 %
  const noise = (n: number) => 50 + 8 * Math.sin(n * n);
  const log = `time,den temperature,den humidity\n${hourly('2024-01-08', 28, (n) => `${20 + ((n * 7) % 3) / 10},${noise(n).toFixed(1)}`)}`;
  const asked = ['--out', 'fitted.yaml', '--page', 'fit.html'];
  const { status, out, err, files } = await fitting(log, ...asked);
  expect(status).toBe(0);
  expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(out).toMatch(/^Small home: 22 days of the log fitted, 6 days withheld, \d+ runs/);
  expect(out).toContain('Parameters (not to be relied on)\n');
  expect(out).toContain('Where the search ended; not findings');
  expect(out).not.toContain('What your log tells');
  expect(out).toContain('relative humidity, den');
  expect(out.replace(/\s+/g, ' ')).toContain(
    'this fit has no skill, and nothing should rest on it',
  );
  expect(err.replaceAll(/\s+/g, ' ')).toMatch(
    /fitted\.yaml was not written, because the home as fitted foresees better than guessing in \d+ of \d+ cases only; --write-anyway writes it/,
  );
  expect(files['fitted.yaml']).toBeUndefined();
  // two pictures of humidity, with temperatures as logged and without, and one of temperature
  expect(files['fit.html']!.match(/<figure /g)).toHaveLength(3);
  expect(files['fit.html']).toContain('den: relative humidity foreseen from the weather alone');
  expect(files['fit.html']).not.toContain('<script');
  // What it finds comes first, then how far off each series was, with the guess beside it.
  const page = readMarkup(files['fit.html']!);
  const [lead] = all(page, 'p').filter(({ attributes }) => attributes['class'] === 'lead');
  expect(textOf(lead!)).toContain('this fit has no skill, and nothing should rest on it');
  const [ended] = tableOf(page, /^Where the search ended; not findings/);
  expect(ended).toEqual(['what', 'fitted', 'was assumed', 'unit']);
  const [heads, ...rows] = tableOf(page, /^How well it foresaw/);
  expect(heads!.slice(0, 4)).toEqual(['what', 'foreseen from', 'off by', 'guess']);
  expect(rows.map(([what]) => what)).toContain('den: relative humidity');
  for (const [, , off] of rows)
    expect(off).toMatch(/^[\d.]+ [▾▴] \((no )?better than the guess\)$/);
}, 120_000);

const GOOD = (n: number) => `${20 + (n % 5)},${50 + (n % 7)}`;
const HEAD = 'time,den temperature,den humidity\n';

test.each([
  ['nothing in it', '', 'log.csv: expected the text of a log, got nothing: the file is empty'],
  ['bytes', 'PK\u0003\u0004abc', 'got a zip archive or spreadsheet (unpack archives and export'],
  [
    'a head without rows',
    HEAD,
    'log.csv: expected rows of a time and readings, with comma, semicolon, tab or bar between',
  ],
  [
    'humidity as a share',
    HEAD + hourly('2024-01-08', 28, (n) => `${20 + (n % 5)},${(0.5 + (n % 7) / 100).toFixed(2)}`),
    'log.csv:2:22: den humidity: expected relative humidity in %, got 0.5 to 0.56, half of them above 0.53 (this looks like a share of 1: say "unit: share")',
  ],
  [
    'hundredths of a degree',
    HEAD + hourly('2024-01-08', 28, (n) => `${2000 + (n % 5)},50`),
    'log.csv:2:19: den temperature: expected temperature in °C, got 2000 to 2004, half of them above 2002 (this may be in steps of 0.01 °C: say "unit: 0.01 °C")',
  ],
  [
    'one value all the time',
    HEAD + hourly('2024-01-08', 28, () => '20,50'),
    'log.csv: expected readings that change, got one and the same value in all rows of every column (is the sensor stuck, or its battery empty?)',
  ],
  [
    'two columns for one reading',
    `time,den temperature,den temp\n${hourly('2024-01-08', 28, GOOD)}`,
    'log.csv: columns and names: expected one for the temperature of den, got "den temperature" and "den temp" (say under "log: readings:" which room each is of, or leave one out with "leave out")',
  ],
  [
    'a room that the home does not have',
    `time,attic temperature\n${hourly('2024-01-08', 28, (n) => `${20 + (n % 5)}`)}`,
    'got none (attic temperature: no room is called "attic") (say what columns are under "log: readings:" of a scenario, whose rooms are den)',
  ],
  [
    'nothing to fit to',
    `time,den window\n${hourly('2024-01-08', 28, (n) => `${n % 2}`)}`,
    'log.csv: expected temperature or humidity of a room: den, got window of den (say under "log: readings:" of the scenario which room and quantity a column is)',
  ],
  [
    'a clock that was set anew',
    `${HEAD}${hourly('2024-01-08', 20, GOOD)}${hourly('2000-01-01', 1, GOOD)}`,
    "log.csv:482:1: time: expected a time after 2024-01-27 23:00, got 2000-01-01 00:00: the logger's clock was set anew (put these rows right, or leave them out)",
  ],
])('%s is refused with its place and the way out', async (_, log, words) => {
  const { status, out, err } = await fitting(log);
  expect({ status, out }).toEqual({ status: 2, out: '' });
  expect(err).toContain(words);
});

test('columns that are not taken are told, with the reason', async () => {
  const log = `time,den temperature,attic temperature,foo\n${hourly('2024-05-01', 5, (n) => `${20 + (n % 5)},9,1`)}`;
  expect((await fitting(log)).err.replaceAll(/\s+/g, ' ')).toContain(
    'note: log.csv: 120 rows, temperature of den; left out: "attic temperature" (no room is called "attic"), "foo" (its name says no quantity that is known)',
  );
});
