import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
home:
  rooms:
    den: { floor area: 14, use: living }
    "+nook": { floor area: 9, use: bedroom }
plans:
  now: { change: { heating: { setpoint: 20 } } }
  cooler: { change: { heating: { setpoint: 18 } } }
`;

async function compare(...args: string[]) {
  const world = fakeIo({
    'cottage.yaml': HOME,
    'saltmere.csv': JANUARY,
  });
  const status = await main(['compare', 'cottage.yaml', ...args], world.io);
  return { status, out: world.said.out, err: world.said.err };
}

test('compare --csv prints the figures of --json', async () => {
  const { status, out, err } = await compare('--csv');
  expect({ status, err }).toEqual({ status: 0, err: '' });
  const rows: Record<string, string>[] = parse(out, { columns: true });
  expect(rows.map((row) => [row['plan'], row['room']])).toEqual([
    ...[
      ['now', ''],
      ['now', 'den'],
      ['now', "'+nook"],
    ],
    ...[
      ['cooler', ''],
      ['cooler', 'den'],
      ['cooler', "'+nook"],
    ],
  ]);
  const { plans, differences } = JSON.parse((await compare('--json')).out);
  expect(Number(rows[0]!['money.energy'])).toBe(plans[0].money.energy);
  expect(Number(rows[3]!['differences.useful_kwh'])).toBe(differences[0].useful_kwh);
  expect(Number(rows[5]!['outside_band_hours.temperature_low'])).toBe(
    plans[1].rooms['+nook'].outside_band_hours.temperature_low,
  );
});

test('--csv together with --json is a usage error', async () => {
  expect(await compare('--csv', '--json')).toEqual({
    status: 1,
    out: '',
    err: "error: option '--csv' cannot be used with option '--json'\n",
  });
});
