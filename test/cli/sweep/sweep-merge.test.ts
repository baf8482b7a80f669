import { beforeAll, describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { csvFields } from '../../../src/report/csv-fields.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home: { rooms: { "den, \\"warm\\"": { floor area: 14 }, "two, \\"lines\\"": { floor area: 9 } } }
heating: { setpoint: 20 }
plans:
  now: { change: {} }
  "+dry": { change: { devices: { drier: { kind: dehumidifier, room: "two, \\"lines\\"", label: 12 L/day } } } }
`;
const VARY = ['--vary', '/heating/setpoint=18 to 20 by 1', '--plans', 'now,+dry'];

const made: Record<string, string> = { 'cottage.yaml': HOME, 'saltmere.csv': JANUARY };
let summary = '';

async function called(files: Record<string, string>, ...args: string[]) {
  const { io, said } = fakeIo(files);
  const status = await main(['sweep', ...args], io);
  return { status, ...said };
}

beforeAll(async () => {
  for (const end of ['csv', 'ndjson']) {
    const shard = (i: number) => ['-o', `${i}.${end}`, '--shard', `${i}/3`];
    const calls = [['-o', `all.${end}`], shard(1), shard(2), shard(3)];
    for (const words of calls) {
      const { status, out, err } = await called(made, 'cottage.yaml', ...VARY, ...words);
      expect({ status, err }).toEqual({ status: 0, err: '' });
      if (words.length === 2) summary = out;
    }
  }
});

describe.each(['csv', 'ndjson'])('parts as %s', (end) => {
  const parts = [3, 1, 2].map((i) => `${i}.${end}`);

  test('equal the whole sweep to the byte, whatever their order', async () => {
    const { [`all.${end}`]: whole, ...files } = made;
    const { status, out, err } = await called(files, '--merge', ...parts, '-o', `all.${end}`);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(files[`all.${end}` as keyof typeof files] === whole).toBe(true);
    expect(out).toBe(summary.replace('all.ndjson', `all.${end}`));
  });

  test('missing and doubled ones are named', async () => {
    const words = [`1.${end}`, `3.${end}`, `again.${end}`];
    const files = { ...made, [`again.${end}`]: made[`1.${end}`]! };
    expect(await called(files, '--merge', ...words, '-o', `new.${end}`)).toEqual({
      ...{ status: 2, out: '' },
      err:
        `again.${end}: expected each run in one part only, got runs 1, 4, which 1.${end} has too\n` +
        `new.${end}: expected all 6 runs of the sweep, got none for runs 2, 5\n`,
    });
    expect(files).not.toHaveProperty([`new.${end}`]);
  });

  test('a shard of another scenario is refused', async () => {
    const files: Record<string, string> = { ...made };
    files['cottage.yaml'] = HOME.replace('floor area: 14', 'floor area: 15');
    await called(files, 'cottage.yaml', ...VARY, '-o', `2.${end}`, '--shard', '2/3');
    const merged = ['--merge', `1.${end}`, `2.${end}`, `3.${end}`, '-o', `new.${end}`];
    expect(await called(files, ...merged)).toEqual({
      ...{ status: 2, out: '' },
      err: `2.${end}: expected a part of the sweep in 1.${end}, got one of another: scenario, weather, values or program differ\n`,
    });
  });

  test('one that breaks off is refused', async () => {
    const files = { ...made, [`2.${end}`]: made[`2.${end}`]!.slice(0, -20) };
    expect((await called(files, '--merge', ...parts, '-o', `new.${end}`)).err).toBe(
      `2.${end}: expected whole lines, got one that breaks off at the end\n`,
    );
  });

  test.each([
    ['empty', ''],
    ['something else', 'time,temperature\n1,2\n'],
  ])('%s is no part', async (_, text) => {
    const files = { ...made, [`2.${end}`]: text };
    expect((await called(files, '--merge', ...parts, '-o', `new.${end}`)).err).toBe(
      `2.${end}: expected a file that sweep has written, got another, or one that was changed\n`,
    );
  });
});

test('parts of both kinds, several scenarios, and an output among the parts are usage errors', async () => {
  const err = async (...args: string[]) => {
    const { status, err: said } = await called({ ...made }, ...args);
    expect(status).toBe(1);
    return said;
  };
  expect(await err('--merge', '1.csv', '2.ndjson', '-o', 'new.csv')).toBe(
    'error: --merge: 2.ndjson is not .csv, as new.csv is\n',
  );
  expect(await err('cottage.yaml', 'b.yaml', '-o', 'new.csv', ...VARY)).toBe(
    'error: one scenario at a time; several files only with --merge\n',
  );
  expect(await err('--merge', '1.csv', '2.csv', '-o', '2.csv')).toContain(
    'It is read by the same call',
  );
  expect(await err('--merge', '1.csv', '-o', 'new.csv', '--resume')).toBe(
    "error: option '--merge' cannot be used with option '--resume'\n",
  );
});

test.each([
  ['a,,b', ['a', '', 'b']],
  ['"a,b","say ""so""",c', ['a,b', 'say "so"', 'c']],
  ['"two, lines",', ['two, lines', '']],
  ['"",x', ['', 'x']],
])('fields of %j', (line, fields) => {
  expect(csvFields(line)).toEqual(fields);
});

test('parts of a sample are parts of the same draw', async () => {
  const files: Record<string, string> = { ...made };
  const sample = ['--vary', '/heating/setpoint=18 to 20', '--sample', '5', '--seed', '3'];
  for (const words of [['whole'], ['a', '1/2'], ['b', '2/2']]) {
    const [name, part] = words;
    const shard = part === undefined ? [] : ['--shard', part];
    await called(files, 'cottage.yaml', ...sample, '-o', `${name}.csv`, ...shard);
  }
  await called(files, '--merge', 'b.csv', 'a.csv', '-o', 'merged.csv');
  expect(files['merged.csv'] === files['whole.csv']).toBe(true);
});
