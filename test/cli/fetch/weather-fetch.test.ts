import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { httpGet } from '../../../src/cli/fetch/http-get.ts';
import { main } from '../../../src/cli/main.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { fakeIo } from '../fake-io.ts';
import { type Answer, loopback, says } from './loopback.ts';
import { archiveHours, sunAt, sunOfYear, typicalYear } from './service-answers.ts';

let answer: Answer;
let service: Awaited<ReturnType<typeof loopback>>;
beforeEach(async () => {
  answer = (request, response) => {
    const url = request.url ?? '';
    if (url.startsWith('/tmy')) return says(typicalYear(), 'text/csv')(request, response);
    if (url.startsWith('/seriescalc')) return says(sunOfYear(2023), 'text/csv')(request, response);
    says(JSON.stringify(archiveHours(2023)), 'application/json')(request, response);
  };
  service = await loopback((request, response) => answer(request, response));
});
afterEach(() => service.end());

const QUICK = { time: 5000, size: 2e6, waits: [1], longestWait: 5 };

/** A call of the program whose services are on this machine. */
async function call(args: readonly string[], files: Record<string, string> = {}, yes = ['--yes']) {
  const { io, said } = fakeIo(files);
  const network = { ...io, get: (url: string) => httpGet(url, 'test', QUICK) };
  const to = ['--pvgis', service.address, '--archive', `${service.address}/`];
  const status = await main(['weather', 'fetch', ...args, ...to, ...yes], network);
  return { status, ...said, files };
}

const AT = ['--at', '54.2034,-1.9'];

test('a typical year, with source, licence and attribution in its head', async () => {
  const { status, err, out, files } = await call([...AT, '--typical', '-o', 'w.csv']);
  expect(status, err).toBe(0);
  expect(out).toBe('');
  expect(service.asked).toEqual(['/tmy?lat=54.2&lon=-1.9&outputformat=csv']);
  expect(err).toMatch(
    /^note: PVGIS \(127\.0\.0\.1:\d+\) will be told the place 54\.20° N, 1\.90° W\n$/,
  );
  expect(files['w.csv']).toMatch(/^# source: PVGIS, http.*, fetched 2030-01-02$/m);
  expect(files['w.csv']).toMatch(/^# licence: may be reused with the source named/m);
  expect(files['w.csv']).toMatch(/^# attribution: PVGIS \(c\) European Union/m);
  const weather = readWeather(files['w.csv']!, 'w.csv');
  expect(weather).toMatchObject({ latitude: 54.2, longitude: -1.9, elevation: 35, count: 8760 });
  expect(weather.periodic).toBe(true);
  expect(weather.temperature[12]).toBeCloseTo(15, 9); // the invented noon
});

test('the hours of a year: the sun stands at the beginning of its hour', async () => {
  const { status, err, files } = await call([...AT, '--year', '2023', '-o', 'w.csv']);
  expect(status, err).toBe(0);
  expect(service.asked).toHaveLength(1);
  expect(service.asked[0]).toMatch(
    /^\/archive\?latitude=54\.2&longitude=-1\.9&start_date=2023-01-01&end_date=2024-01-01&timezone=GMT&wind_speed_unit=ms&hourly=temperature_2m,/,
  );
  expect(files['w.csv']).toMatch(/^# licence: CC BY 4\.0/m);
  expect(files['w.csv']).toMatch(/^# attribution: Weather data by Open-Meteo\.com/m);
  const weather = readWeather(files['w.csv']!, 'w.csv');
  expect(weather).toMatchObject({ count: 8760, periodic: false, start: Date.UTC(2023, 0) / 1000 });
  expect(weather.pressure[0]).toBe(99_000);
  // The mean from 11 to 12 h, which the archive stamps 12:00.
  expect(weather.directNormal[11]).toBeCloseTo(sunAt(11.5), 0);
});

test('with the sun of satellites, two services are asked', async () => {
  const { status, err, files } = await call([
    ...AT,
    '--year',
    '2023',
    '--sun',
    'satellite',
    '-o',
    'w.csv',
  ]);
  expect(status, err).toBe(0);
  expect(service.asked).toHaveLength(2);
  expect(service.asked[1]).toBe(
    '/seriescalc?lat=54.2&lon=-1.9&startyear=2023&endyear=2023&components=1&angle=0&aspect=0&usehorizon=1&outputformat=csv',
  );
  expect(files['w.csv']!.match(/^# source: /gm)).toHaveLength(2);
  const weather = readWeather(files['w.csv']!, 'w.csv');
  // Half of the invented sun is diffuse; the hour from 11 is read at 11:10 and 12:10.
  // Straight lines under the crest of a sine lose less than 1 %.
  expect(Math.abs(weather.diffuseHorizontal[11]! / (sunAt(11.5) / 2) - 1)).toBeLessThan(0.01);
});

describe('the cache', () => {
  test('answers the second time, without asking and without a word to the network', async () => {
    const files = {};
    expect((await call([...AT], files)).status).toBe(0);
    const again = await call([...AT], files, []);
    expect(again.status, again.err).toBe(0);
    expect(service.asked).toHaveLength(1);
    expect(again.err).toMatch(
      /^note: kept since 2030-01-02, not fetched again: 127\.0\.0\.1:\d+\n$/,
    );
  });

  test('is left alone by --no-cache', async () => {
    const files = {};
    await call([...AT], files);
    await call([...AT, '--no-cache'], files);
    expect(service.asked).toHaveLength(2);
    expect(Object.keys(files)).toHaveLength(1);
  });

  test('keeps nothing that turned out wrong, and passes over what it cannot read', async () => {
    const files: Record<string, string> = {};
    const right = answer;
    answer = says(typicalYear().slice(0, 9000), 'text/csv');
    expect((await call([...AT], files)).status).toBe(2);
    expect(files).toEqual({});
    answer = right;
    expect((await call([...AT], files)).status).toBe(0);
    for (const path of Object.keys(files)) files[path] = '{"half":';
    expect((await call([...AT], files)).status).toBe(0);
  });
});

describe('it asks before it goes out', () => {
  test('and without a keyboard it refuses', async () => {
    const { status, err } = await call([...AT, '-o', 'w.csv'], {}, []);
    expect(status).toBe(1);
    expect(err).toMatch(
      /^error: nobody is at the keyboard to ask: PVGIS \(127\.0\.0\.1:\d+\) will be told the place 54\.20° N, 1\.90° W\.\nGive --yes to let it; nothing was sent\.\n$/,
    );
    expect(service.asked).toEqual([]);
  });

  test.each([true, false])('with one it goes by the answer %s', async (yes) => {
    const { io, said } = fakeIo();
    const questions: string[] = [];
    const asking = async () => ({
      confirm: async (question: string) => {
        questions.push(question);
        return yes;
      },
      line: () => Promise.reject(),
      one: () => Promise.reject(),
      several: () => Promise.reject(),
    });
    const network = { ...io, asking, get: (url: string) => httpGet(url, 'test', QUICK) };
    const args = ['weather', 'fetch', ...AT, '--year', '2023', '--archive', service.address];
    expect(await main(args, network)).toBe(yes ? 0 : 1);
    expect(questions[0]).toMatch(/^Use the network\? Open-Meteo archive .* non-commercial use\.?$/);
    expect(service.asked).toHaveLength(yes ? 1 : 0);
    if (!yes) expect(said.err).toBe('Nothing was fetched.\n');
  });
});

describe('wrong answers of services', () => {
  const hours = () => archiveHours(2023);
  const wrong: [string, () => unknown, string][] = [
    ['not JSON', () => '<no>', 'expected JSON, got 4 characters that are none, or are cut off'],
    ['cut off', () => JSON.stringify(hours()).slice(0, 5000), 'got 5000 characters that are none'],
    ['no object', () => [1], 'expected a number of metres in elevation, got nothing'],
    [
      'another unit',
      () => ({ ...hours(), hourly_units: { ...hours().hourly_units, wind_speed_10m: 'km/h' } }),
      'expected "m/s" in hourly_units.wind_speed_10m, got "km/h"',
    ],
    [
      'a column missing',
      () => ({ ...hours(), hourly: { ...hours().hourly, diffuse_radiation: undefined } }),
      'expected a list in hourly.diffuse_radiation, got nothing',
    ],
    [
      'columns of two lengths',
      () => ({ ...hours(), hourly: { ...hours().hourly, temperature_2m: [1, 2] } }),
      'expected lists of one length, got 8784 and 2 hours',
    ],
    ['another year', () => archiveHours(2021), 'expected the hours of 2023 and one more, got'],
  ];
  test.each(wrong)('%s', async (_, made, words) => {
    const body = made();
    answer = says(typeof body === 'string' ? body : JSON.stringify(body), 'application/json');
    const { status, err, files } = await call([...AT, '--year', '2023', '-o', 'w.csv']);
    expect(status).toBe(2);
    expect(err).toMatch(/answer of 127\.0\.0\.1:\d+: /);
    expect(err).toContain(words);
    expect(files).toEqual({});
  });

  test('hours without a reading are told with their place', async () => {
    const body = hours();
    body.hourly.temperature_2m.fill(null, 100, 200);
    answer = says(JSON.stringify(body), 'application/json');
    const { status, err } = await call([...AT, '--year', '2023', '-o', 'w.csv']);
    expect(status).toBe(2);
    expect(err).toMatch(/answer of .*, as CSV:\d+:\d+: /);
  });

  test.each([
    ['cut off', sunOfYear(2023).slice(0, 9000), 'expected 8760 hours of 2023, got'],
    ['another year', sunOfYear(2022), 'expected 20230101:0010, got 20220101:0010'],
    ['no header', 'x', 'expected a header with time, Gb(i) and Gd(i), got none'],
  ])('a sun that is %s', async (_, body, words) => {
    const right = answer;
    answer = (request, response) => {
      if (request.url?.startsWith('/seriescalc')) return says(body, 'text/csv')(request, response);
      right(request, response);
    };
    const { status, err } = await call([...AT, '--year', '2023', '--sun', 'satellite']);
    expect(status).toBe(2);
    expect(err).toContain(words);
  });
});

describe('wrong calls', () => {
  test.each([
    [['--at', '91,0'], 'got "91,0" (are they swapped? did you mean 0,91?)'],
    [['--at', '-1.9,200'], 'got "-1.9,200"'],
    [['--at', '54,2,-1,9'], '(decimals have a point, such as 54.2)'],
    [['--at', '1.9 W, 54.2 N'], '(the latitude, north or south, comes first)'],
    [['--at', 'Saltmere'], 'expected latitude and longitude in degrees, such as 54.2,-1.9'],
    [[...AT, '--year', '2030'], 'expected a whole year from 1940 to 2029, got 2030'],
    [[...AT, '--year', '1939'], 'expected a whole year from 1940 to 2029, got 1939'],
    [[...AT, '--year', '2023', '--typical'], "'--typical'"],
    [[...AT, '--sun', 'satellite'], 'needs a --year'],
    [[...AT, '--archive', 'x'], 'Give an address'],
  ])('%j', async (args, words) => {
    const { status, err } = await call(args);
    expect(status).toBe(1);
    expect(err).toContain(words);
    expect(service.asked).toEqual([]);
  });

  test('a file that is there is never written over', async () => {
    const { status, err, files } = await call([...AT, '-o', 'w.csv'], { 'w.csv': 'mine' });
    expect(status).toBe(2);
    expect(err).toBe(
      'w.csv: expected the name of a file that is not there yet, got one that is (nothing is ever written over it: name another, or move it away)\n',
    );
    expect(files['w.csv']).toBe('mine');
    expect(service.asked).toEqual([]);
  });
});
