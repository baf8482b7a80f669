import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home:
  build: { walls: solid brick }
  rooms:
    den: { floor area: 14, use: living }
    "+nook": { floor area: 9, use: bedroom }
heating: { setpoint: 20 }
plans:
  now: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } } }
`;
const VARY = ['--vary', '/heating/setpoint=18 to 20 by 1', '--plans', 'now,dry'];

/** A folder with a cottage, in which the program is called. */
function folder(more: Record<string, string> = {}) {
  const world = fakeIo({ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY, ...more });
  const sweep = async (...args: string[]) => {
    Object.assign(world.said, { out: '', err: '' });
    const status = await main(['sweep', 'cottage.yaml', ...args], world.io);
    return { status, ...world.said };
  };
  return { ...world, sweep };
}

test('every setting of every plan as NDJSON, with the figures of run --json', async () => {
  const { sweep, files, io, said } = folder();
  const { status, out, err } = await sweep('-o', 'all.ndjson', ...VARY);
  expect({ status, err }).toEqual({ status: 0, err: '' });
  expect(out).toMatch(/^6 runs in all\.ndjson\n\nMoney against hours outside the bands/);
  const lines = files['all.ndjson']!.trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines.map(({ run, of, home, plan, values }) => [run, of, home, plan, values])).toEqual(
    [18, 19, 20].flatMap((setpoint, k) =>
      ['now', 'dry'].map((plan, p) => [
        ...[2 * k + p + 1, 6, null, plan, { '/heating/setpoint': setpoint }],
      ]),
    ),
  );
  Object.assign(said, { out: '' });
  await main(['run', 'cottage.yaml', '--set', '/heating/setpoint=19', '--json'], io);
  expect(lines[2].figures).toEqual(JSON.parse(said.out));
  expect(files).not.toHaveProperty(['all.ndjson.unfinished']);
});

test('the same as CSV, a row for the home and one for each room', async () => {
  const { sweep, files } = folder();
  await sweep('-o', 'all.ndjson', ...VARY);
  await sweep('-o', 'all.csv', ...VARY);
  const rows: Record<string, string>[] = parse(files['all.csv']!, { columns: true });
  const results = files['all.ndjson']!.trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(rows).toHaveLength(18);
  expect(rows.slice(0, 4).map((row) => [row['run'], row['plan'], row['room']])).toEqual([
    ...[
      ['1', 'now', ''],
      ['1', 'now', 'den'],
      ['1', 'now', "'+nook"],
      ['2', 'dry', ''],
    ],
  ]);
  for (const [k, { figures, sweep: fingerprint }] of results.entries()) {
    const [home, , nook] = rows.slice(3 * k);
    expect(home!['sweep']).toBe(fingerprint);
    expect(Number(home!['money.total_per_year'])).toBe(figures.money.total_per_year);
    expect(Number(nook!['outside_band_hours.temperature_low'])).toBe(
      figures.rooms['+nook'].outside_band_hours.temperature_low,
    );
    const litres = figures.devices.detail.drier?.water_kg;
    expect(home!['devices.detail.drier.water_kg']).toBe(litres === undefined ? '' : String(litres));
  }
});

describe('an interrupted call', () => {
  /** What such a call leaves after so many runs, the line of the next one broken off. */
  async function left(runs: number, words = VARY) {
    const world = folder();
    let lines = 0;
    const openLines: typeof world.io.openLines = async (path, how) => {
      const file = await world.io.openLines(path, how);
      const append = async (line: string) => {
        if (lines++ <= runs) return file.append(line);
        world.files[path] += line.slice(0, 40);
        throw new Error('ended');
      };
      return { ...file, append };
    };
    await main(['sweep', 'cottage.yaml', '-o', 'all.csv', ...words], { ...world.io, openLines });
    return world;
  }

  test('leaves no result, and is gone on with to the same bytes', async () => {
    const whole = folder();
    await whole.sweep('-o', 'all.csv', ...VARY);
    const { files, sweep } = await left(3);
    expect(files).not.toHaveProperty(['all.csv']);
    expect(files['all.csv.unfinished']!.split('\n')).toHaveLength(1 + 3 + 1);
    expect(await sweep('-o', 'all.csv', '--resume', ...VARY)).toMatchObject({ status: 0, err: '' });
    expect(files['all.csv'] === whole.files['all.csv']).toBe(true);
    expect(files).not.toHaveProperty(['all.csv.unfinished']);
  });

  test('has its runs made once', async () => {
    const { files, io } = await left(3);
    let appended = 0;
    const openLines: typeof io.openLines = async (path, how) => {
      const file = await io.openLines(path, how);
      const append = (line: string) => {
        appended++;
        return file.append(line);
      };
      return { ...file, append };
    };
    const args = ['sweep', 'cottage.yaml', '-o', 'all.csv', '--resume', ...VARY];
    expect(await main(args, { ...io, openLines })).toBe(0);
    expect(appended).toBe(3);
    expect(files).toHaveProperty(['all.csv']);
  });

  test('is not gone on with once the scenario has changed', async () => {
    const { files, sweep } = await left(3);
    const before = files['all.csv.unfinished'];
    files['cottage.yaml'] = HOME.replace('floor area: 14', 'floor area: 15');
    const { status, err } = await sweep('-o', 'all.csv', '--resume', ...VARY);
    expect(status).toBe(2);
    expect(err).toBe(
      'all.csv.unfinished: expected the unfinished shard 1/1 of this sweep, got what is left of ' +
        'another: scenario, weather, values or program have changed since (remove it to begin anew)\n',
    );
    expect(files['all.csv.unfinished']).toBe(before);
  });

  test.each([
    ['weather', (files: Record<string, string>) => (files['saltmere.csv'] += '\n'), VARY],
    ['values', () => {}, ['--vary', '/heating/setpoint=18 to 21 by 1', '--plans', 'now,dry']],
    ['settings', () => {}, [...VARY, '--set', '/home/height=2.5']],
  ])('nor once its %s have', async (_, change, words) => {
    const { files, sweep } = await left(1);
    change(files);
    expect(await sweep('-o', 'all.csv', '--resume', ...words)).toMatchObject({ status: 2 });
  });

  test('--resume where nothing was left begins anew', async () => {
    const { sweep } = folder();
    expect(await sweep('-o', 'all.csv', '--resume', ...VARY)).toMatchObject({ status: 0 });
  });

  test('a call that had come to its end is not made again, and says the same', async () => {
    const { sweep, files, io } = folder();
    const first = await sweep('-o', 'all.csv', ...VARY);
    const before = files['all.csv'];
    const openLines: typeof io.openLines = async (path, how) => {
      expect(how).toBe('read');
      return io.openLines(path, how);
    };
    const writeWhole = () => Promise.reject(new Error('written again'));
    const said = { out: '' };
    const out = (text: string) => {
      said.out += text;
    };
    const args = ['sweep', 'cottage.yaml', '-o', 'all.csv', '--resume', ...VARY];
    expect(await main(args, { ...io, openLines, writeWhole, out })).toBe(0);
    expect(said.out).toBe(first.out);
    files['cottage.yaml'] = HOME.replace('floor area: 14', 'floor area: 15');
    expect(await sweep('-o', 'all.csv', '--resume', ...VARY)).toMatchObject({ status: 0 });
    expect(files['all.csv'] === before).toBe(false);
  });

  test('a file that is no such thing is refused', async () => {
    const { sweep } = folder({ 'all.csv.unfinished': 'time,temperature\n1,2\n' });
    expect(await sweep('-o', 'all.csv', '--resume', ...VARY)).toEqual({
      ...{ status: 2, out: '' },
      err: 'all.csv.unfinished:1:1: expected a line of an unfinished sweep, got something else\n',
    });
  });
});

describe('a stock of homes', () => {
  const STOCK =
    'name,/home/build/walls,/home/rooms/den/floor area\nfirst,timber frame,\nsecond,,20\n';

  test('each home with the values of its row', async () => {
    const { sweep, files } = folder({ 'stock.csv': STOCK });
    const { status, out } = await sweep('-o', 'all.ndjson', '--homes', 'stock.csv');
    expect(status).toBe(0);
    expect(out).toMatch(/^2 runs in all\.ndjson\n\nOver 2 homes: /);
    const lines = files['all.ndjson']!.trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines.map(({ home }) => home)).toEqual(['first', 'second']);
    const wall = ({ figures }: (typeof lines)[0]) =>
      figures.assumed.find(({ path }: { path: string }) => path === '/home/build/wall u-value');
    expect(wall(lines[0]).value).not.toBe(wall(lines[1]).value);
  });

  test('homes that cannot be run are told in their order', async () => {
    const rows = Array.from({ length: 9 }, (_, k) => `home ${k + 3},,-4\n`).join('');
    const { sweep } = folder({ 'stock.csv': `${STOCK}${rows}` });
    const { err } = await sweep('-o', 'all.csv', '--homes', 'stock.csv');
    const told = [...err.matchAll(/: run (\d+): /g)].map(([, run]) => Number(run));
    expect(told).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11]);
  });

  test('a home that cannot be run is told, and the others are there', async () => {
    const { sweep, files } = folder({ 'stock.csv': `${STOCK}third,,-4\n` });
    const { status, err } = await sweep('-o', 'all.csv', '--homes', 'stock.csv');
    expect(status).toBe(2);
    const why = 'stock.csv: row of third, column /home/rooms/den/floor area: ';
    expect(err).toContain(`all.csv: run 3: expected a home that can be run, got ${why}`);
    const rows: Record<string, string>[] = parse(files['all.csv']!, { columns: true });
    expect(rows.map(({ run, room }) => `${run} ${room}`)).toEqual([
      ...['1 ', '1 den', "1 '+nook", '2 ', '2 den', "2 '+nook", '3 '],
    ]);
    expect(rows.at(-1)!['problem']).toContain(why);
  });

  test.each([
    [
      'name,/home/bild/walls\na,brick\n',
      /^stock\.csv: row of a, column \/home\/bild\/walls: home\.bild: did you mean "build"\? Expected one of the keys .* got "bild", which is not known\n$/,
    ],
    [
      'name,walls\na,brick\n',
      /^stock\.csv:1:6: head: expected a column "name" or a pointer such as \/home\/leakage\/ach50, got "walls"\n$/,
    ],
    ['/home/height\n3\n', /^stock\.csv:1:1: head: expected a column "name", got none\n/],
    [
      'name,/home/height\na,3\na,4\n',
      /^stock\.csv:3:1: column name: expected a name of its own, on one line, got "a" again\n$/,
    ],
    ['name,/home/height\na,3,4\n', /^stock\.csv:2:6: row of a: expected 2 cells, got 3\n$/],
    [
      'name,/home/height\n"a\nb",3\n',
      /^stock\.csv:2:1: column name: expected a name of its own, on one line, got "a\\nb"\n$/,
    ],
    ['name,/home/height\n', /^stock\.csv: expected at least one home, got none\n$/],
  ])('%j', async (text, expected) => {
    const { sweep, files } = folder({ 'stock.csv': text });
    const { status, err } = await sweep('-o', 'all.csv', '--homes', 'stock.csv');
    expect(status).toBe(2);
    expect(err).toMatch(expected);
    expect(files).not.toHaveProperty(['all.csv']);
  });
});

describe('what cannot be meant is refused before anything runs', () => {
  test.each([
    [
      ['--vary', '/heating/setpont=18, 19'],
      2,
      '--vary /heating/setpont: expected a number of the scenario in plan now, got none at this place (did you mean /heating/setpoint?)\n',
    ],
    [
      ['--vary', '/home/build/walls=1, 2'],
      2,
      '--vary /home/build/walls: expected a number of the scenario in plan now, got "solid brick"\n',
    ],
    [
      ['--vary', '/devices/drier/target=50, 60', '--plans', 'now,dry'],
      2,
      '--vary /devices/drier/target: expected a number of the scenario in plan now, got none at this place\n',
    ],
    [
      ['--vary', '/heating/setpoint=18 to 90 by 1'],
      2,
      '--vary /heating/setpoint: heating.setpoint: expected a temperature in °C or °F from -10 to 40, got 90 (did you mean "90 °F"?)\n',
    ],
    [
      ['--vary', '/heating/setpoint=20 to 18 by 1'],
      2,
      '--vary /heating/setpoint=20 to 18 by 1: expected a range from low to high, got 20 to 18\n',
    ],
    [
      ['--vary', '/heating/setpoint=18 to 20 by 1e-9'],
      1,
      'error: that would be 2,000,000,001 runs, and at most 1,000,000 are made at once; take fewer values or plans, or --sample NUMBER\n',
    ],
    [
      ['--vary', '/heating/setpoint=18, 19', '--sample', '1000000000'],
      1,
      'error: that would be 1,000,000,000 runs, and at most 1,000,000 are made at once; take fewer values or plans, or --sample NUMBER\n',
    ],
    [
      ['--vary', '/heating/setpoint=18 to 20'],
      1,
      'error: --vary /heating/setpoint: a range without steps needs --sample NUMBER, or a step, such as "17 to 21 by 1"\n',
    ],
    [[], 1, 'error: nothing to vary: give --vary, --homes or both\n'],
    [
      ['--vary', '/heating/setpoint=18, 19', '--shard', '3/2'],
      1,
      "error: option '--shard <i/n>' argument '3/2' is invalid. Give a part and their number, such as 2/8.\n",
    ],
    [
      ['--vary', '/heating/setpoint=18, 19', '--shard', '3/3'],
      1,
      "error: option '--shard <i/n>': more parts than the 2 runs there are\n",
    ],
    [
      ['--vary', '/heating/setpoint=18, 19', '--sample', '0'],
      1,
      "error: option '--sample <number>' argument '0' is invalid. Give a whole number of 1 or more.\n",
    ],
  ])('%j', async (words, status, err) => {
    const { sweep, files } = folder();
    expect(await sweep('-o', 'all.csv', ...words)).toEqual({ status, out: '', err });
    expect(Object.keys(files)).toEqual(['cottage.yaml', 'saltmere.csv']);
  });

  test.each([['all.txt'], ['csv'], ['all.json']])('an output called %s', async (name) => {
    const { sweep } = folder();
    expect((await sweep('-o', name, ...VARY)).err).toBe(
      `error: option '-o, --output <file>' argument '${name}' is invalid. End it in .csv or .ndjson.\n`,
    );
  });

  test('an output that is read', async () => {
    const { sweep } = folder({ 'stock.csv': 'name\na\n' });
    expect((await sweep('-o', 'stock.csv', '--homes', 'stock.csv')).err).toContain(
      'It is read by the same call; name another file.',
    );
  });
});

test.each([
  [
    2,
    [
      ['06:00', '22:00'],
      ['22:00', '06:00'],
    ],
    '0/setpoint or /heating/setpoint/1/setpoint',
  ],
  [
    3,
    [
      ['00:00', '06:00'],
      ['06:00', '22:00'],
      ['22:00', '24:00'],
    ],
    '0/setpoint, /heating/setpoint/1/setpoint or one of 1 more',
  ],
])('a list of %i is refused with the numbers in it', async (count, spans, inside) => {
  const list = spans.map(([from, to], k) => ({ from, to, setpoint: 16 + k }));
  const written = HOME.replace('setpoint: 20', `setpoint: ${JSON.stringify(list)}`);
  const { sweep } = folder({ 'cottage.yaml': written });
  const { status, err } = await sweep('-o', 'a.csv', '--vary', '/heating/setpoint=18, 19');
  expect({ status, err }).toEqual({
    status: 2,
    err: `--vary /heating/setpoint: expected a number of the scenario in plan now, got a list of ${count} (vary /heating/setpoint/${inside})\n`,
  });
});

test('a sample is decided by its seed', async () => {
  const { sweep, files } = folder();
  const words = ['--sample', '4', '--vary', '/heating/setpoint=18 to 20'];
  await sweep('-o', 'a.csv', ...words, '--seed', '7');
  await sweep('-o', 'b.csv', ...words, '--seed', '7');
  await sweep('-o', 'c.csv', ...words, '--seed', '8');
  expect(files['b.csv'] === files['a.csv']).toBe(true);
  expect(files['c.csv'] === files['a.csv']).toBe(false);
});

describe('--plot', () => {
  test('draws the frontier as a picture of its own, the same each time', async () => {
    const { sweep, files } = folder();
    const { status, err } = await sweep('-o', 'all.csv', ...VARY, '--plot', 'all.svg');
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const svg = files['all.svg']!;
    expect(svg).toMatch(/^<svg /);
    expect(svg.replaceAll(/<[^>]+>/g, ' ')).toMatch(/of 6 runs|beats all 6 runs/);
    await sweep('-o', 'again.csv', ...VARY, '--plot', 'again.svg');
    expect(files['again.svg'] === svg).toBe(true);
  });

  test('is for all runs of one home', async () => {
    const { sweep } = folder({ 'stock.csv': 'name\na\n' });
    const err = 'error: --plot sets all runs of one home against each other\n';
    const homes = ['--homes', 'stock.csv'];
    expect(await sweep('-o', 'a.csv', ...homes, '--plot', 'a.svg')).toMatchObject({
      status: 1,
      err,
    });
    const part = ['--shard', '1/2', '--plot', 'a.svg'];
    expect(await sweep('-o', 'a.csv', ...VARY, ...part)).toMatchObject({ status: 1, err });
  });

  test('does not meet the output', async () => {
    const { sweep } = folder();
    expect((await sweep('-o', 'a.csv', ...VARY, '--plot', 'a.csv')).err).toContain(
      "option '--plot <file.svg>' argument 'a.csv' is invalid. Something else of the same call goes there",
    );
  });
});
