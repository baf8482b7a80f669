import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const WEATHER = readFileSync('weather/saltmere-typical.csv', 'utf8');
const HOME = `title: Test cottage
weather: ../weather/saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-08" }
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom }
plans:
  now: { description: as it is, change: { heating: { setpoint: 20 } } }
  cooler: { description: two kelvin less, change: { heating: { setpoint: 18 } } }
`;

/** For calls that run or name other months than January. */
const YEAR = { 'weather/saltmere.csv': WEATHER };

/** Status and what was said after a call beside the cottage. */
async function call(args: string[], files: Record<string, string> = {}) {
  const world = fakeIo({ 'homes/cottage.yaml': HOME, 'weather/saltmere.csv': JANUARY, ...files });
  const status = await main(args, world.io);
  return { status, ...world.said, files: world.files };
}

const RUN = ['run', 'homes/cottage.yaml'];

describe('check', () => {
  test('tells rooms, plans and what is assumed, and runs nothing', async () => {
    const { status, out, err } = await call(['check', 'homes/cottage.yaml']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toContain('Rooms: den, nook\nNothing is wrong.\n');
    expect(out).toMatch(/^now +as it is\ncooler +two kelvin less\n96 hours each$/m);
    expect(out).toContain('Assumed, because the scenario does not say');
  });

  test('--json', async () => {
    const { status, out } = await call(['check', 'homes/cottage.yaml', '--json']);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      scenario: 'Test cottage',
      rooms: ['den', 'nook'],
      weather: { file: 'weather/saltmere.csv' },
      plans: [{ plan: 'now', description: 'as it is', hours: 96 }, { plan: 'cooler' }],
    });
  });

  test('says in one line what is taken for British, elsewhere and where nobody gave it', async () => {
    const told = async (...set: string[]) => {
      const words = set.flatMap((one) => ['--set', one]);
      const { status, out } = await call(['check', 'homes/cottage.yaml', ...words]);
      expect(status).toBe(0);
      return out.replaceAll(/\n\s+/g, ' ').match(/^- .* taken as in Britain.*$/gm) ?? [];
    };
    expect(await told()).toEqual([]);
    expect(await told('/site/timezone=Europe/Dublin')).toEqual([]);
    const abroad = '/site/timezone=Europe/Madrid';
    expect(await told(abroad)).toEqual([
      '- Walls (1.60 W/m2K), windows (2.90 W/m2K) and leakage (10.0 air changes an hour at 50 Pa) are taken as in Britain for a home of such an age and kind, because tables of other countries are not known: put in your own (wall u-value of home.build, window u-value of home.build and ach50 of home.leakage). [as-in-britain]',
    ]);
    const walls = '/home/build/wall u-value=0.5';
    expect(await told(abroad, walls)).toEqual([
      expect.stringMatching(/^- Windows .* and leakage .* are taken as in Britain/),
    ]);
    const windows = '/home/build/window u-value=1.1';
    expect(await told(abroad, walls, windows)).toEqual([
      expect.stringMatching(/^- Leakage \(10\.0 [^)]*\) is taken .* \(ach50 of home\.leakage\)/),
    ]);
    expect(await told(abroad, walls, windows, '/home/leakage/ach50=3')).toEqual([]);
    // Not beside every figure.
    const { out } = await call([...RUN, '--set', abroad]);
    expect(out).not.toContain('as-in-britain');
  });

  test('says in one line when heating is on in months that need none, once for all plans', async () => {
    const year = HOME.replace('period: { from: "01-05", to: "01-08" }\n', '');
    const { status, out } = await call(
      ['check', 'homes/cottage.yaml', '--set', '/heating/season=all year'],
      { 'homes/cottage.yaml': year, ...YEAR },
    );
    expect(status).toBe(0);
    expect(out.match(/heating-without-need/g)).toHaveLength(1);
    expect(out).toContain('- Heating is on in Jun-Aug, months with no need of it here');
    const unasked = await call(['check', 'homes/cottage.yaml'], {
      ...{ 'homes/cottage.yaml': year, ...YEAR },
    });
    expect(unasked.out).not.toContain('heating-without-need');
    expect(unasked.out).toContain('/heating/season/mean below');
  });

  test('every problem at once, of scenario and settings alike, ends with 2', async () => {
    const wrong = HOME.replace('floor area: 14', 'floor area: -14').replace(
      'use: bedroom',
      'use: bedrom',
    );
    const { status, out, err } = await call(['check', 'homes/cottage.yaml'], {
      'homes/cottage.yaml': wrong,
    });
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(
      /^homes\/cottage\.yaml:7:\d+: home\.rooms\.den\.floor area: expected .*, got -14$/m,
    );
    expect(err).toMatch(
      /^homes\/cottage\.yaml:8:\d+: .*got "bedrom" \(did you mean "bedroom"\?\)$/m,
    );
  });

  test('every file that is missing, by the way it was looked for', async () => {
    const { status, err } = await call(['check', 'homes/cottage.yaml'], {
      'homes/cottage.yaml': HOME.replace('saltmere', 'gone'),
    });
    expect(status).toBe(2);
    expect(err).toBe(
      'homes/cottage.yaml:2:10: weather: expected a file to read, got nothing of that name: weather/gone.csv\n',
    );
  });

  test('a period that the weather does not have, by its line', async () => {
    const { status, err } = await call(['check', 'homes/cottage.yaml'], {
      'homes/cottage.yaml': HOME.replace('"01-05", to: "01-08"', '"02-29", to: "02-29"'),
      ...YEAR,
    });
    expect(status).toBe(2);
    expect(err).toBe(
      'homes/cottage.yaml:4:9: period: expected days inside the weather, ' +
        '2023-01-01T00:00Z to 2024-01-01T00:00Z, got 02-29 to 02-29\n',
    );
  });

  test('levels outdoors from a file: by its way, and refused where it ends before the period', async () => {
    const home = `${HOME}air:
  own species:
    radon: { unit: Bq/m3, outdoors: { file: levels.csv } }
`;
    const rows = (days: number) =>
      Array.from({ length: 8 * days }, (_, k) => {
        const at = new Date(Date.UTC(2023, 0, 1, 3 * k)).toISOString().slice(0, 16);
        return `${at}Z,10\n`;
      }).join('');
    const check = (files: Record<string, string>) =>
      call(['check', 'homes/cottage.yaml'], { 'homes/cottage.yaml': home, ...files });
    const covered = await check({ 'homes/levels.csv': `time,radon\n${rows(9)}` });
    expect({ status: covered.status, err: covered.err }).toEqual({ status: 0, err: '' });
    const short = await check({ 'homes/levels.csv': `time,radon\n${rows(7)}` });
    expect({ status: short.status, err: short.err }).toEqual({
      status: 2,
      err:
        'homes/cottage.yaml:14:37: air.own species.radon.outdoors: expected levels for the whole period, ' +
        '2023-01-05T00:00Z to 2023-01-09T00:00Z, got 2023-01-01T00:00Z to 2023-01-08T00:00Z\n',
    });
    const gone = await check({});
    expect(gone.err).toBe(
      'homes/cottage.yaml:14:45: air.own species.radon.outdoors.file: expected a file to read, ' +
        'got nothing of that name: homes/levels.csv\n',
    );
  });

  test('a caution that not all plans have says whose it is', async () => {
    const { out } = await call(['check', 'homes/cottage.yaml', '--json'], {
      'homes/cottage.yaml': HOME.replace('setpoint: 18 }', 'setpoint: 15 }'),
    });
    const { cautions } = JSON.parse(out) as { cautions: { id: string; text: string }[] };
    const low = cautions.filter(({ id }) => id === 'low-setpoint').map(({ text }) => text);
    expect(low).toHaveLength(1);
    expect(low[0]).toMatch(/^cooler: Settings fall below 18 °C in den, nook:/);
  });

  test('broken weather is told once, under the name by which it was reached', async () => {
    const { status, err } = await call(['check', 'homes/cottage.yaml'], {
      'weather/saltmere.csv': WEATHER.replace(/^(2023-01-01T05:00Z),[^,]*/m, '$1,warm'),
    });
    expect(status).toBe(2);
    expect(err).toMatch(
      /^weather\/saltmere\.csv:\d+:\d+: temperature: expected a number in °C, got "warm"\n$/,
    );
  });
});

describe('run', () => {
  test('prints tables of the first plan', async () => {
    const { status, out, err } = await call(RUN);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/^Test cottage: now\n/);
    expect(out).toContain('Handbook cross-check');
  });

  test('--json prints the figures of the plan that was named', async () => {
    const { status, out } = await call([...RUN, '--plan', 'cooler', '--json']);
    expect(status).toBe(0);
    const figures = JSON.parse(out);
    expect(figures).toMatchObject({
      scenario: 'Test cottage',
      plan: 'cooler',
      period: { from: '2023-01-05T00:00:00Z', to: '2023-01-09T00:00:00Z', hours: 96 },
    });
    expect(Object.keys(figures.rooms)).toEqual(['den', 'nook']);
    for (const residual of Object.values(figures.balance)) {
      expect(Math.abs(residual as number)).toBeLessThan(1e-9);
    }
  });

  test('a home that no formula holds for ends with 2 and no trace', async () => {
    const oven = `nook: { floor area: 1, height: 2, elements: [], emitter: none, panes: [{ area: 50,
      faces: south, u-value: 0.2, g-value: 1, shading: 0, frame: 0 }] }`;
    const { status, out, err } = await call([...RUN, '--trace', 't.csv'], {
      'homes/cottage.yaml': HOME.replace(/nook: .*/, oven).replace(
        '"01-05", to: "01-08"',
        '"05-01", to: "09-30"',
      ),
      ...YEAR,
    });
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toMatch(
      /^homes\/cottage\.yaml: expected a home that stays within the range of every formula, got .* of .*, outside .* (?:°C|K) \(/,
    );
  });

  test('--set changes the answer as a plan would', async () => {
    const set = await call([...RUN, '--set', '/heating/setpoint=18', '--json']);
    const plan = await call([...RUN, '--plan', 'cooler', '--json']);
    expect(JSON.parse(set.out).heating).toEqual(JSON.parse(plan.out).heating);
  });

  test('the same call gives the same bytes', async () => {
    expect(await call([...RUN, '--json'])).toEqual(await call([...RUN, '--json']));
  });

  test('--trace writes one row an hour with every room', async () => {
    const { status, files, err } = await call([...RUN, '--trace', 'out.csv']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const [header = '', ...rows] = files['out.csv']!.trimEnd().split('\n');
    expect(rows).toHaveLength(96);
    const columns = header.split(',');
    expect(columns).toContain('den.air_temperature_c');
    expect(columns).toContain('nook.co2_ppm');
    expect(rows[0]).toMatch(/^2023-01-05T00:00:00Z,2023-01-05T00:00:00\+00:00,/);
    for (const row of rows) {
      const cells = row.split(',');
      expect(cells).toHaveLength(columns.length);
      expect(cells.slice(2).every((cell) => /^-?\d+(\.\d+)?$/.test(cell))).toBe(true);
    }
  });

  test('that no trace can be written is told before anything is simulated', async () => {
    const world = fakeIo({ 'homes/cottage.yaml': HOME, 'weather/saltmere.csv': JANUARY });
    const problem = {
      ...{ file: 'no/t.csv', line: 0, column: 0, where: '', hint: '' },
      ...{ expected: 'a file that can be written', got: 'a path whose folder does not exist' },
    };
    let begun = false;
    const io = {
      ...world.io,
      requireWritable: () => Promise.reject(new InputProblems([problem])),
      get terminal() {
        begun = true; // to draw how far the simulation is
        return null;
      },
    };
    expect(await main([...RUN, '--trace', 'no/t.csv'], io)).toBe(2);
    expect({ ...world.said, begun }).toEqual({
      out: '',
      err: 'no/t.csv: expected a file that can be written, got a path whose folder does not exist\n',
      begun: false,
    });
    expect(await main([...RUN], io)).toBe(0);
    expect(begun).toBe(true);
  });

  test('the trace agrees with the figures', async () => {
    const { files, out } = await call([...RUN, '--json', '--trace', 'out.csv']);
    const [header = '', ...rows] = files['out.csv']!.trimEnd().split('\n');
    const at = header.split(',').indexOf('den.heating_w');
    const kwh = rows.reduce((sum, row) => sum + Number(row.split(',')[at]), 0) / 1000;
    // Rows are rounded to 0.1 W, so 96 of them are at most 0.005 kWh off.
    expect(Math.abs(kwh - JSON.parse(out).rooms.den.heating_kwh)).toBeLessThan(0.005);
  });

  test('--weather takes another outdoor file, named as it is reached from here', async () => {
    const { status, err } = await call([...RUN, '--weather', 'short.csv'], {
      'short.csv': WEATHER.split('\n')
        .slice(0, 60)
        .join('\n')
        .replace('typical: true', 'typical: false'),
    });
    expect(status).toBe(2);
    expect(err).toContain('expected days inside the weather, 2023-01-01T00:00Z to 2023-01-03');
  });

  test('weather of another place does not go unnoticed', async () => {
    const { status, err } = await call([...RUN, '--set', '/site/longitude=179', '--json']);
    expect({ status, err }).toEqual({
      status: 0,
      err: 'note: the weather is of latitude and longitude 54.2, -1.9, the home stands at\n      54.2, 179.0\n',
    });
  });

  test('a mistyped plan is a usage error', async () => {
    expect(await call([...RUN, '--plan', 'coller'])).toMatchObject({
      status: 1,
      out: '',
      err: "error: unknown plan 'coller' (did you mean cooler?), known are now, cooler\n",
    });
  });

  test('a setting that cannot be is told with its words', async () => {
    const { status, err } = await call([...RUN, '--set', '/heating/setpoint=21 K']);
    expect(status).toBe(2);
    expect(err).toMatch(/^--set \/heating\/setpoint=21 K: heating\.setpoint: expected /);
  });
});

describe('a plan that nobody asked for', () => {
  const wrong = HOME.replace('setpoint: 18', 'setpoint: 50').concat(
    '  dear: { change: { money: { gas: { prices: gone.csv } } } }\ndoubts: { /heating/setpoint: [30, 20] }\n',
  );
  const files = { 'homes/cottage.yaml': wrong };

  test('does not stop run and compare of others, nor do doubts and its files', async () => {
    const { out, ...ran } = await call([...RUN, '--json'], files);
    expect(ran).toMatchObject({ status: 0, err: '' });
    expect(out).toBe((await call([...RUN, '--json'])).out);
    const compared = await call(['compare', 'homes/cottage.yaml', '--plans', 'now'], files);
    expect(compared).toMatchObject({ status: 0, err: '' });
  });

  test('stops them when it is asked for, and always stops check and report', async () => {
    const cooler =
      /^homes\/cottage\.yaml:11:\d+: heating\.setpoint in plan cooler: expected .*, got 50 \(did you mean "50 °F"\?\)$/m;
    const run = await call([...RUN, '--plan', 'cooler'], files);
    expect(run).toMatchObject({ status: 2, err: expect.stringMatching(cooler) });
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
    for (const words of [['compare'], ['check'], ['report', '--plans', 'now']]) {
      const [command = '', ...more] = words;
      const { status, err } = await call([command, 'homes/cottage.yaml', ...more], files);
      expect({ status, err }).toEqual({ status: 2, err: expect.stringMatching(cooler) });
      expect(err.includes('doubts./heating/setpoint'), command).toBe(command !== 'compare');
    }
  });

  test('stops run where the file itself is wrong', async () => {
    const { status, err } = await call(RUN, {
      'homes/cottage.yaml': HOME.replace('description: two', 'descripton: two'),
    });
    expect(status).toBe(2);
    expect(err).toContain('plans.cooler.descripton: expected one of the keys');
  });
});

describe('compare', () => {
  test('answers the question of the plans, then has a line for each, and says where more is', async () => {
    const { status, out, err } = await call(['compare', 'homes/cottage.yaml']);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    const [title, answer, table] = out.split('\n\n');
    expect(title).toMatch(/^.+\n20\d\d-.+ days\)$/);
    expect(answer).toMatch(
      /^Nobody gave a price: [\s\S]*4\sdays were run,[\s\S]* pays\.\n18 °C or 20 °C\? cooler saves \d+ /,
    );
    expect(table).toMatch(/\nnow +\d+ +\d+ .*\n/);
    expect(table).toMatch(/\ncooler +-\d+ +-\d+ .*\n/);
    expect(out).toContain('\nMore: --rooms, ');
    expect(out).not.toContain('room h');
  });

  test('says how many plans a report would try besides, where it would', async () => {
    const told = async (files: Record<string, string>, ...words: string[]) => {
      const { out } = await call(['compare', 'homes/cottage.yaml', ...words], files);
      return out.replaceAll('\n', ' ').match(/roombalance report.*\.(?= $)/)?.[0];
    };
    // Warmer, aired, a fan and a dehumidifier, and each two of them.
    const ten = 'roombalance report, which also tries 10 plans of its own.';
    expect(await told({})).toBe(ten);
    // From the cooler plan on, two kelvin warmer is a plan of the scenario's own.
    const same = (...alike: string[]) => ten.replace(',', ` with the same ${alike.join(' and ')},`);
    expect(await told({}, '--plans', 'cooler')).toBe(same('--plans').replace('10', '6'));
    expect(await told({}, '--plans', 'now')).toBe(ten);
    const warmer = ['--set', '/heating/setpoint=21', '--weather', 'weather/saltmere.csv'];
    expect(await told({}, ...warmer)).toBe(same('--set', '--weather'));
    expect(await told({}, '--all')).toBe(ten);
    const devices =
      'devices: { fan: { kind: extract fan, room: nook, flow: 36 m3/h, runs: always }, drier: { kind: dehumidifier, room: nook } }\n';
    const one = HOME.replace('plans:\n', `${devices}$&`).replace(
      /$/,
      '  aired: { change: { household: { airing: [{ rooms: all, at: ["07:30", "19:00"], open share: 1 }] } } }\n',
    );
    expect(await told({ 'homes/cottage.yaml': one })).toBe(
      'roombalance report, which also tries a plan of its own.',
    );
    const none = `${one}  warmer: { change: { heating: { setpoint: 22 } } }\n`;
    expect(await told({ 'homes/cottage.yaml': none })).toBe('roombalance report.');
  });

  test('--rooms, --rules and --all have what stands behind; only one of them at a time', async () => {
    const printed = async (...words: string[]) =>
      (await call(['compare', 'homes/cottage.yaml', ...words])).out;
    const rooms = await printed('--rooms');
    expect(rooms).toMatch(/\n\nMean air temperature \[°C\]\n +now .*cooler/);
    expect(rooms).toContain('\nCO2, mean [ppm]\n');
    expect(await printed('--rules')).toContain('No plan has rules.');
    const all = await printed('--all');
    expect(all).toMatch(/heat to rooms \[kWh\] +\d+ most +\d+ least/);
    expect(all).toContain('\nCautions\n');
    const { status, err } = await call(['compare', 'homes/cottage.yaml', '--rooms', '--json']);
    expect(status).toBe(1);
    expect(err).toContain("option '--rooms' cannot be used with option '--json'");
  });

  test('a plan that leaves the formulas is left out and told; for --json all or nothing', async () => {
    const oven = HOME.replace(
      /\nplans:\n/,
      `$&  now: { change: {} }
  oven: { change: { home: { rooms: { nook: { floor area: 1, height: 2, elements: [], emitter: none, panes: [{ area: 50, faces: south, u-value: 0.2, g-value: 1, shading: 0, frame: 0 }] } } } } }
`,
    )
      .replace(/\n {2}now: \{ (?!change: \{\} \}\n {2}oven).*/, '')
      .replace(/from: "[^"]*", to: "[^"]*"/, 'from: "05-01", to: "09-30"');
    const files = { 'homes/cottage.yaml': oven, ...YEAR };
    const { status, out, err } = await call(['compare', 'homes/cottage.yaml'], files);
    expect(status).toBe(2);
    expect(out).toContain('Not run to the end: oven.');
    expect(out).toMatch(/\ncooler +-/);
    expect(err).toContain('expected a home that stays within the range of every formula');
    const json = await call(['compare', 'homes/cottage.yaml', '--json'], files);
    expect({ status: json.status, out: json.out }).toEqual({ status: 2, out: '' });
  });

  test('a caution that does not go for all plans says for which', async () => {
    const cold = HOME.replace('setpoint: 18', 'setpoint: 16');
    const files = { 'homes/cottage.yaml': cold };
    const { out } = await call(['compare', 'homes/cottage.yaml', '--all'], files);
    expect(out).toContain('\n- cooler: Settings fall below 18 °C in den, nook');
    expect(out).toContain('\n- Rooms are taken as well mixed');
  });

  test('--json has the shape of docs/quantities.md', async () => {
    const { out } = await call(['compare', 'homes/cottage.yaml', '--json']);
    const { baseline, plans, differences } = JSON.parse(out);
    expect(baseline).toBe('now');
    expect(plans.map((p: { plan: string }) => p.plan)).toEqual(['now', 'cooler']);
    expect(differences).toHaveLength(1);
    expect(differences[0].useful_kwh).toBeLessThan(0);
    const page = readFileSync('docs/quantities.md', 'utf8');
    const names = [
      ...Object.keys(plans[0]),
      ...Object.keys(plans[0].rooms.den),
      ...Object.keys(differences[0]),
    ];
    expect(
      names.filter((name) => !page.includes(`\`${name}`) && name !== 'heating' && name !== 'rooms'),
    ).toEqual([]);
  });

  test('--plans chooses and orders', async () => {
    const { out } = await call([
      'compare',
      'homes/cottage.yaml',
      '--plans',
      'cooler,now',
      '--json',
    ]);
    const { baseline, differences } = JSON.parse(out);
    expect({ baseline, more: differences[0].useful_kwh > 0 }).toEqual({
      baseline: 'cooler',
      more: true,
    });
  });

  test('on a terminal it shows how far it is, on standard error, and takes that away again', async () => {
    const shown: string[] = [];
    const terminal = new PassThrough().on('data', (piece) => shown.push(String(piece)));
    Object.assign(terminal, { isTTY: true, columns: 80 });
    const world = fakeIo({ 'homes/cottage.yaml': HOME, 'weather/saltmere.csv': JANUARY });
    const io = { ...world.io, terminal: terminal as unknown as NodeJS.WriteStream };
    expect(await main(['compare', 'homes/cottage.yaml', '--json'], io)).toBe(0);
    expect(JSON.parse(world.said.out).plans).toHaveLength(2);
    expect(shown.join('')).toMatch(/0 % {2}0 of 2 plans done/);
  });
});
