import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { type AskedOption, type Asking, Interrupted } from '../../../src/cli/asking.ts';
import { httpGet } from '../../../src/cli/fetch/http-get.ts';
import { main } from '../../../src/cli/main.ts';
import { QUESTIONNAIRE } from '../../../src/scenario/start/questionnaire.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { fakeIo } from '../fake-io.ts';
import { loopback, says } from '../fetch/loopback.ts';
import { typicalYear } from '../fetch/service-answers.ts';

const SALTMERE = readFileSync('weather/saltmere-typical.csv', 'utf8');
const atHand = () =>
  ({ 'package/weather/saltmere-typical.csv': SALTMERE }) as Record<string, string>;

describe('a newcomer, from nothing to a first answer', () => {
  let service: Awaited<ReturnType<typeof loopback>>;
  beforeAll(async () => {
    service = await loopback(says(typicalYear(51.5, -0.1), 'text/csv'));
  });
  afterEach(() => vi.unstubAllEnvs());
  afterAll(() => service.end());

  const ANSWERS = `place: London
weather: fetch
kind: flat
built: 1930-1949
size: "2"
heat: gas boiler
setpoint: 20
people: 1 adult
laundry: main bedroom
electricity: 0.27
fuel price: 0.07
bothers: [damp]
worst room: main bedroom
`;

  test('takes at most 25 answers and a minute of machine time', async () => {
    expect(ANSWERS.trim().split('\n').length).toBeLessThanOrEqual(25);
    vi.stubEnv('ROOMBALANCE_PVGIS', service.address);
    const { io, said, files } = fakeIo({ ...atHand(), 'answers.yaml': ANSWERS });
    const get = (address: string) => httpGet(address, 'test');
    const before = performance.now();
    const status = await main(['start', 'home.yaml', '--answers', 'answers.yaml'], { ...io, get });
    const { out, err } = said;
    expect(status, err).toBe(0);
    expect(performance.now() - before).toBeLessThan(60_000);
    expect(service.asked).toEqual(['/tmy?lat=51.5&lon=-0.1&outputformat=csv']);
    expect(err).toContain('PVGIS (127.0.0.1:');
    expect(err).toContain('Written: home.yaml, and its weather, home-weather.csv.\n');
    expect(err).toMatch(/^As usual, because nobody answered: title, timezone, rooms, /m);
    for (const line of `${out}${err}`.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect(out).not.toContain('The weather is not that of this home');
    expect(out).toMatch(/^My home\n/);
    expect(out).toMatch(/^Buy dehumidifier for 180 GBP\?/m);
    expect(out).toMatch(/^Three answers would narrow this most \(cold corners over 80 %/m);
    expect(out.match(/^[123]\. /gm)).toEqual(['1. ', '2. ', '3. ']);
    expect(files['home-weather.csv']).toMatch(/^# licence: /m);
    expect(files['home.yaml']).toMatch(
      /^# yaml-language-server: \$schema=.*docs\/scenario\.schema\.json\n/,
    );
    expect(Object.keys(files).filter((name) => name.startsWith('home'))).toEqual([
      'home-weather.csv',
      'home.yaml',
    ]);
  }, 90_000);
});

/** A person who gives the usual answers, but for some, and breaks off at one question. */
function person(given: Record<string, string | string[]>, breaksOffAt: string | null = null) {
  const heard: string[] = [];
  const answer = <T>(question: string, initial: T): Promise<T> => {
    const id = QUESTIONNAIRE.find(({ text }) => question.endsWith(text({})))?.id ?? question;
    heard.push(id);
    if (id === breaksOffAt) return Promise.reject(new Interrupted());
    return Promise.resolve((given[id] ?? initial) as T);
  };
  const asking: Asking = {
    confirm: answer,
    line: async (question, initial, check) => {
      const line = await answer(question, initial);
      const wrong = check(line);
      if (wrong === null) return line;
      heard.push(wrong);
      return initial;
    },
    one: (question, _: readonly AskedOption[], initial) => answer(question, initial),
    several: (question, _: readonly AskedOption[], initial) => answer(question, initial),
  };
  return { asking: async () => asking, heard };
}

/** What is quick to run: one room, and few plans, in the two months that are always run. */
const SMALL = { size: '1', bothers: ['cost'], heat: 'electric heaters' };
/** The two hottest months, and what their spin-up needs. */
const SUMMER = SALTMERE.replace('# typical: true\n', '')
  .replace(/^2023-01-01.*(?=^2023-05-31T00:00)/ms, '')
  .replace(/^2023-09-02.*/ms, '');
const TWO_MONTHS = SALTMERE.replace('# typical: true\n', '').replace(/^2023-03-01.*/ms, '');

test('dry air is narrowed by what makes it dry, and a name that tells no use is told', async () => {
  const answers =
    'place: 54.2,-1.9\nweather: saltmere-typical.csv\nrooms: studio 20, Erker 4, bathroom 4\nheat: electric heaters\nbothers: [dry]\n';
  const files = { 'package/weather/saltmere-typical.csv': TWO_MONTHS, 'a.yaml': answers };
  const { io, said } = fakeIo(files);
  expect(await main(['start', '--answers', 'a.yaml'], io), said.err).toBe(0);
  expect(said.err.replaceAll(/\s+/g, ' ')).toContain(
    'Taken as rooms to live in, because their names do not tell: Erker. "use" in home.yaml says what a room is.',
  );
  // This home is damp for thousands of hours, and hardly ever dry.
  expect(said.out.replaceAll(/\s+/g, ' ')).toMatch(
    /would narrow this most \(too dry, all rooms in the two coldest months, \d{1,2} h as it is\)/,
  );
}, 60_000);

test('heat is narrowed in the hottest months, by what lets the sun in', async () => {
  const answers =
    'place: 54.2,-1.9\nweather: saltmere-typical.csv\nsize: "1"\nkind: flat under the roof\nheat: electric heaters\nbothers: [heat]\n';
  const files = { 'package/weather/saltmere-typical.csv': SUMMER, 'a.yaml': answers };
  const { io, said } = fakeIo(files);
  expect(await main(['start', '--answers', 'a.yaml'], io), said.err).toBe(0);
  expect(said.out.replaceAll(/\s+/g, ' ')).toMatch(
    /answers? would narrow this most \(too warm with somebody in, all rooms in the two hottest months, \d+ h as it is\): 1\. how far windows are opened[\s\S]* 2\. share of the sun that is kept off windows/,
  );
}, 60_000);

test('weather in the folder of the scenario is at hand too, and no other table is', async () => {
  const here = TWO_MONTHS.replace(/^# title: .*/m, '# title: My own hill');
  const files: Record<string, string> = {
    'package/weather/saltmere-typical.csv': TWO_MONTHS,
    ...{ 'hill.csv': here, 'prices.csv': 'time,price\n', 'broken.csv': '# title: x\n' },
    'a.yaml': 'weather: hill.csv\nsize: "1"\nheat: electric heaters\nbothers: [cost]\n',
    'b.yaml': 'weather: hil.csv\n',
  };
  const { io, said } = fakeIo(files);
  expect(await main(['start', '--answers', 'b.yaml'], io)).toBe(2);
  expect(said.err).toContain(
    'weather: expected one of: fetch, hill.csv, saltmere-typical.csv, got "hil.csv" (did you mean "hill.csv"?)',
  );
  expect(await main(['start', '--answers', 'a.yaml'], io), said.err).toBe(0);
  expect(files['home-weather.csv']).toBe(here);
}, 60_000);

describe('a questionnaire that is broken off', () => {
  test('is kept, and the same call goes on from there', async () => {
    const files: Record<string, string> = { 'package/weather/saltmere-typical.csv': TWO_MONTHS };
    const { io, said } = fakeIo(files);
    const first = person({ ...SMALL, title: 'Mill' }, 'heat');
    expect(await main(['start'], { ...io, asking: first.asking })).toBe(1);
    expect(said.err).toBe(
      'Broken off; nothing was written. Your answers are in home.answers.yaml; the same command goes on from there.\n',
    );
    expect(first.heard).toHaveLength(11);
    expect(files['home.yaml']).toBeUndefined();
    expect(files['home.answers.yaml']).toMatch(/^title: Mill\nplace: "?54\.2,-1\.9"?\n/);

    said.err = '';
    const second = person(SMALL);
    expect(await main(['start'], { ...io, asking: second.asking }), said.err).toBe(0);
    expect(said.err).toContain('Going on: 10 answers are in home.answers.yaml');
    expect(second.heard[0]).toBe('heat');
    expect(files['home.yaml']).toContain('title: Mill\n');
    expect(files['home.yaml']).toMatch(
      /^# The weather is not that of this home: it is that of an invented/m,
    );
    expect(said.out).toMatch(
      /\nThe weather is not that of this home: it is that of an[\s\S]*\n\nNext: change home\.yaml/,
    );
    expect(files['home.answers.yaml']).toBeUndefined();
  }, 60_000);

  test('before the first answer leaves nothing', async () => {
    const { io, said, files } = fakeIo(atHand());
    expect(await main(['start'], { ...io, asking: person({}, 'title').asking })).toBe(1);
    expect(said.err).toBe('Broken off; nothing was written.\n');
    expect(Object.keys(files)).toHaveLength(1);
  });

  test('kept answers that somebody spoilt are told, not asked over', async () => {
    const files = { ...atHand(), 'home.answers.yaml': 'kind: tent\n' };
    const { io, said } = fakeIo(files);
    expect(await main(['start'], { ...io, asking: person({}).asking })).toBe(2);
    expect(said.err).toMatch(/^home\.answers\.yaml:1:7: kind: expected one of: flat, /);
  });
});

describe('without the network', () => {
  const place = { file: 're.example', line: 0, column: 0, where: '', hint: '' };
  const problem = { ...place, expected: 'weather', got: 'no connection' };
  const get = () => Promise.reject(new InputProblems([problem]));

  test('a person is told, and asked again; nothing is lost by breaking off there', async () => {
    const { io, said, files } = fakeIo(atHand());
    const one = person({ weather: 'fetch' });
    let tries = 0;
    const asking = async (): Promise<Asking> => {
      const usual = await one.asking();
      return {
        ...usual,
        one: (question, options, initial) =>
          question.endsWith('Which weather?') && ++tries === 2
            ? Promise.reject(new Interrupted())
            : usual.one(question, options, initial),
      };
    };
    expect(await main(['start'], { ...io, get, asking })).toBe(1);
    expect(tries).toBe(2);
    expect(said.err).toContain('re.example: expected weather, got no connection\nBroken off;');
    expect(files['home.answers.yaml']).toMatch(/^weather: fetch$/m);
  });

  test('a script is told what is nearest in climate', async () => {
    const files = { ...atHand(), 'a.yaml': 'place: London\nweather: fetch\n' };
    const { io, said } = fakeIo(files);
    expect(await main(['start', '--answers', 'a.yaml'], { ...io, get })).toBe(2);
    // By hand: 2.7° of latitude are 300 km, 1.8° of longitude at 53° are 121 km, together 324.
    expect(said.err).toContain(
      'Without the network, answer "weather: saltmere-typical.csv": of those at hand it is nearest in climate, 320 km away, 2.7° further north.\n',
    );
    expect(files).not.toHaveProperty('home.yaml');
  });
});

describe('wrong calls', () => {
  test.each([
    [{ 'home.yaml': 'mine' }, 'home.yaml'],
    [{ 'home-weather.csv': 'mine' }, 'home-weather.csv'],
  ])('%j is never written over', async (there, name) => {
    const { io, said, files } = fakeIo({ ...atHand(), ...there });
    expect(await main(['start', '--yes'], io)).toBe(2);
    expect(said.err).toMatch(new RegExp(`^${name}: expected the name of a file that is not there`));
    expect(files[name]).toBe('mine');
  });

  test('a terminal without a keyboard', async () => {
    const { io, said } = fakeIo(atHand());
    expect(await main(['start'], io)).toBe(1);
    expect(said.err).toBe(
      'error: there is no terminal with a keyboard to ask at.\nGive --yes for the usual answers, or --answers FILE with your own.\n',
    );
  });

  test('a file of prices that is not there', async () => {
    const answers = 'tariff: file\nelectricity: half-hours.csv\n';
    const { io, said, files } = fakeIo({ ...atHand(), 'a.yaml': answers });
    expect(await main(['start', 'x/h.yaml', '--answers', 'a.yaml'], io)).toBe(2);
    expect(said.err).toBe('x/half-hours.csv: expected a file to read, got nothing of that name\n');
    expect(Object.keys(files)).not.toContain('x/h.yaml');
  });

  test('a line that will not do is asked again with the reason', async () => {
    const { io } = fakeIo(atHand());
    const one = person({ place: '200,0' }, 'timezone');
    expect(await main(['start'], { ...io, asking: one.asking })).toBe(1);
    expect(one.heard[2]).toMatch(/^Expected latitude and longitude in degrees/);
  });
});

describe('--add', () => {
  const FLAT = readFileSync('scenarios/flat.yaml', 'utf8');

  test('puts a device among the others by answers of a file', async () => {
    const answers = 'device: purifier\nin: living\nname: quiet one\n';
    const { io, said, files } = fakeIo({ 'f.yaml': FLAT, 'a.yaml': answers });
    const args = ['start', 'f.yaml', '--add', 'device', '--answers', 'a.yaml'];
    expect(await main(args, io), said.err).toBe(0);
    expect(said).toEqual({ out: '', err: 'Added to f.yaml: devices, quiet one.\n' });
    expect(files['f.yaml']).toBe(
      `${FLAT}\ndevices:\n  quiet one: { kind: purifier, room: living }\n`,
    );
  });

  test('asks, and breaking off changes nothing', async () => {
    const { io, said, files } = fakeIo({ 'f.yaml': FLAT });
    const asking: Asking = {
      confirm: () => Promise.reject(new Interrupted()),
      line: () => Promise.reject(new Interrupted()),
      one: async (_, __, initial) => initial,
      several: async (_, __, initial) => initial,
    };
    expect(
      await main(['start', 'f.yaml', '--add', 'rule'], { ...io, asking: async () => asking }),
    ).toBe(1);
    expect(said.err).toBe('Broken off; nothing was changed.\n');
    expect(files['f.yaml']).toBe(FLAT);
  });

  test.each([
    ['room: living 9', 'expected another room than living, got "living 9"'],
    ['use: ballroom', 'expected one of: living, kitchen'],
    ['opens to: attic', 'expected one of: living, bedroom, bathroom'],
  ])('refuses %s', async (answers, words) => {
    const { io, said, files } = fakeIo({ 'f.yaml': FLAT, 'a.yaml': answers });
    expect(await main(['start', 'f.yaml', '--add', 'room', '--answers', 'a.yaml'], io)).toBe(2);
    expect(said.err).toContain(words);
    expect(files['f.yaml']).toBe(FLAT);
  });

  test('needs a scenario that is there, and one that is right', async () => {
    const { io, said } = fakeIo({ 'f.yaml': 'title: x\n' });
    expect(await main(['start', 'gone.yaml', '--add', 'plan', '--yes'], io)).toBe(2);
    expect(await main(['start', 'f.yaml', '--add', 'plan', '--yes'], io)).toBe(2);
    expect(said.err).toMatch(/gone\.yaml: expected a file[\s\S]*f\.yaml:1:1: weather: expected /);
  });
});
