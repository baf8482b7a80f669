import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { askedDays, daysOfPeriod } from '../../../src/cli/plot/plot-days.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-08" }
home:
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom }
`;

/** Status and what was said after a call beside the cottage. */
async function run(...args: string[]) {
  const world = fakeIo({ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY });
  const status = await main(['run', 'cottage.yaml', ...args], world.io);
  return { status, ...world.said, files: world.files };
}

describe('run --plot', () => {
  test('draws the days named, in place of the tables', async () => {
    const { status, out, err } = await run('--plot', 'nook', '--from', '01-06', '--to', '01-07');
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(out).toMatch(/^Test cottage: .*\nnook, 6 January 2023 to 7 January 2023 \(2 days\)\n/);
    expect(out).not.toContain('Handbook cross-check');
    expect(out).toMatch(/^Of these 48 hours, nook .*\.\n$/ms);
    expect(out.match(/^(Fri 01-06|Sat 01-07) \d\d:00 /gm)).toHaveLength(2 * 16);
  });

  test('draws the coldest week where no days are named', async () => {
    const { out } = await run('--plot', 'den', '--set', '/period={}');
    expect(out).toMatch(/^den, .* 2023 to .* 2023 \(7 days, the coldest week\)$/m);
    // By the demonstration weather: the mean of these seven days is the least.
    const means = dailyMeans();
    const weeks = means.map((_, d) => means.slice(d, d + 7)).filter((week) => week.length === 7);
    const sums = weeks.map((week) => week.reduce((sum, mean) => sum + mean, 0));
    const coldest = sums.indexOf(Math.min(...sums));
    const first = new Date(Date.UTC(2023, 0, 1 + coldest)).toISOString().slice(5, 10);
    expect(/^[A-Z][a-z]{2} (\d\d-\d\d) 00:00/m.exec(out)![1]).toBe(first);
  });

  test('draws all of a period that has no seven days, and keeps the trace beside', async () => {
    const { out, files } = await run('--plot', 'den', '--trace', 't.csv');
    expect(out).toContain('\nden, 5 January 2023 to 8 January 2023 (4 days, the whole period)\n');
    expect(files['t.csv']!.split('\n')).toHaveLength(98);
  });

  test('hours of somebody in are those of the figures', async () => {
    const { out } = await run('--plot', 'nook');
    const { rooms } = JSON.parse((await run('--json')).out);
    const all = /^all .* (\d+\.\d)$/m.exec(out)![1];
    expect(all).toBe(rooms.nook.occupied_hours.toFixed(1));
  });
});

describe('usage errors of --plot', () => {
  test('everything at once, with the nearest room', async () => {
    expect(await run('--plot', 'nok', '--from', '06-01', '--to', '6 Jan')).toMatchObject({
      status: 1,
      out: '',
      err:
        "error: unknown room 'nok' (did you mean nook?), known are den, nook\n" +
        "error: option '--from <MM-DD>' argument '06-01' is invalid. The period has the days 2023-01-05 to 2023-01-08.\n" +
        "error: option '--to <MM-DD>' argument '6 Jan' is invalid. Give a day as MM-DD, like 01-09.\n",
    });
  });

  test('days without a room', async () => {
    expect(await run('--from', '01-06', '--to', '01-07')).toMatchObject({
      status: 1,
      out: '',
      err:
        "error: option '--from <MM-DD>' needs option '--plot <room>'\n" +
        "error: option '--to <MM-DD>' needs option '--plot <room>'\n",
    });
  });

  test('together with --json', async () => {
    expect(await run('--plot', 'den', '--json')).toMatchObject({
      status: 1,
      out: '',
      err: "error: option '--plot <room>' cannot be used with option '--json'\n",
    });
  });

  test('from after to', async () => {
    expect(await run('--plot', 'den', '--from', '01-07', '--to', '01-06')).toMatchObject({
      status: 1,
      err: "error: option '--from <MM-DD>' argument '01-07' is invalid. In the period 2023-01-05 to 2023-01-08 it comes after --to 01-06.\n",
    });
  });
});

describe('days', () => {
  const day = (iso: string): number => Date.parse(`${iso}T00:00Z`) / 86_400_000;
  const winter = { first: day('2022-11-01'), last: day('2023-02-28') };

  test('may run over new year', () => {
    expect(askedDays({ from: '12-30', to: '01-02' }, winter)).toEqual({
      first: day('2022-12-30'),
      last: day('2023-01-02'),
    });
    expect(() => askedDays({ from: '01-02', to: '12-30' }, winter)).toThrow(/comes after --to/);
  });

  test('one left out is the end of the period; both, nothing', () => {
    expect(askedDays({ from: '02-20' }, winter)).toEqual({ ...winter, first: day('2023-02-20') });
    expect(askedDays({ to: '11-02' }, winter)).toEqual({ ...winter, last: day('2022-11-02') });
    expect(askedDays({}, winter)).toBeNull();
  });

  test.each(['02-29', '13-01', '1-2', '0102', ''])('"%s" is none of them', (from) => {
    expect(() => askedDays({ from }, winter)).toThrow(
      `error: option '--from <MM-DD>' argument '${from}' is invalid. `,
    );
  });

  test('go by the wall clock', () => {
    const period = { start: day('2023-01-05') * 86_400, hours: 24 };
    expect(daysOfPeriod(period, { from: [0], offset: [0] })).toEqual({
      first: day('2023-01-05'),
      last: day('2023-01-05'),
    });
    expect(daysOfPeriod(period, { from: [0], offset: [-3600] })).toEqual({
      first: day('2023-01-04'),
      last: day('2023-01-05'),
    });
  });
});

/** Hourly temperatures of the demonstration weather's year, which begins on 1 January. [°C] */
function dailyMeans(): number[] {
  const rows = JANUARY.split('\n').filter((line) => /^2023-/.test(line));
  const hours = rows.map((line) => Number(line.split(',')[1]));
  return Array.from({ length: hours.length / 24 }, (_, d) =>
    hours.slice(24 * d, 24 * d + 24).reduce((sum, t) => sum + t / 24, 0),
  );
}

test.each([[['--look', 'den']], [['--look=den']], [['--look']]])(
  'the option by its old name is refused with the new one: %s',
  async (words) => {
    expect(await run(...words)).toMatchObject({
      status: 1,
      out: '',
      err: "error: option '--look' is now called '--plot'\n",
    });
  },
);
