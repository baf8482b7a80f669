import { describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';
import { JANUARY } from './january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home: { rooms: { den: { floor area: 14 }, nook: { floor area: 9, use: bedroom } } }
heating: { setpoint: 20 }
doubts: { /heating/setpoint: [18, 21] }
plans:
  now: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } } }
`;

/** A plan between the two that leaves the formulas within hours. */
const OVEN = `  hot:
    change:
      home: { rooms: { nook: { floor area: 1, height: 2, elements: [], panes: [], openings: [] } } }
      devices: { fire: { kind: heater, room: nook, power: 9 kW, runs: always } }
`;

async function called(...args: string[]) {
  const files = {
    ...{ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY, 'other.csv': JANUARY },
    'oven.yaml': HOME.replace('  dry:', `${OVEN}  dry:`),
    'whole.yaml': HOME.replace(/^period.*\n/m, ''),
    'week.csv': JANUARY.replace(/^2023-01-08.*/ms, ''),
    'short.csv': JANUARY.replace(/^2023-01-29.*/ms, ''),
  };
  const { io, said } = fakeIo(files);
  const status = await main(args, io);
  return { status, ...said };
}

test('run --doubt tells how far the figures go and what moves them', async () => {
  const { status, out, err } = await called('run', 'cottage.yaml', '--doubt', '4');
  expect({ status, err }).toEqual({ status: 0, err: '' });
  const words = out.replaceAll(/\s+/g, ' ');
  expect(words).toMatch(
    /Doubt: 4 draws of \d+ numbers that were assumed or stated as doubtful, all at once\. /,
  );
  expect(words).toMatch(
    /plan \[money\] \[% of the time\] \[h a day\] now [\d]+ \(\d+ to \d+\) \d+ \(\d+ to \d+\) [\d.]+ \([\d.]+ to [\d.]+\)/,
  );
  expect(words).toContain('No single input moves money more than chance could.');
});

test('compare --doubt sets plans against the first, draw by draw', async () => {
  const { status, out, err } = await called('compare', 'cottage.yaml', '--doubt', '4');
  expect({ status, err }).toEqual({ status: 0, err: '' });
  const words = out.replaceAll(/\s+/g, ' ');
  expect(words).toMatch(
    /dry costs less than now in \d of 4 draws \(median [\d.]+ money a year more; [\d.]+ to [\d.]+ more in the middle 80 %\), has fewer wet hours in \d of 4 draws( \(as many in \d\))? and fewer cold ones in \d of 4 draws/,
  );
});

test('a plan that cannot be run as it is is left out of the draws', async () => {
  const of = async (file: string) => {
    const { status, out, err } = await called('compare', file, '--doubt', '4');
    return { status, err, doubt: out.slice(out.indexOf('Doubt: ')) };
  };
  const without = await of('cottage.yaml');
  const { status, err, doubt } = await of('oven.yaml');
  expect(doubt).toMatch(/^Doubt: 4 draws/);
  expect(doubt).toBe(without.doubt);
  expect(status).toBe(2);
  expect(err).toMatch(/^oven\.yaml: expected a home that stays within the range of every formula/);
});

describe('--json', () => {
  test('has the doubt besides the figures, decided by --seed', async () => {
    const args = ['compare', 'cottage.yaml', '--json', '--doubt', '3'];
    const [one, again, other] = await Promise.all([
      called(...args),
      called(...args, '--seed', '1'),
      called(...args, '--seed', '2'),
    ]);
    const { doubt, ...comparison } = JSON.parse(one!.out);
    expect(comparison).toEqual(JSON.parse((await called(...args.slice(0, 3))).out));
    expect(doubt.plans.map(({ money }: { money: { as_is: number } }) => money.as_is)).toEqual(
      comparison.plans.map(
        ({ money }: { money: { total_per_year: number } }) => money.total_per_year,
      ),
    );
    expect(doubt).toMatchObject({ baseline: 'now', seed: 1, samples: 3, impossible: 0, years: 1 });
    expect(doubt.inputs[0]).toEqual({
      ...{ path: '/heating/setpoint', value: 20, low: 18, high: 21 },
      source: 'stated in the scenario',
    });
    expect(doubt.plans.map(({ plan }: { plan: string }) => plan)).toEqual(['now', 'dry']);
    expect(doubt.plans[1].money.as_is).toBe(comparison.plans[1].money.total_per_year);
    expect(doubt.differences[0].money.as_is).toBe(comparison.differences[0].total_money_per_year);
    expect(again!.out === one!.out).toBe(true);
    expect(other!.out === one!.out).toBe(false);
  });

  test('of run has it behind its own', async () => {
    const { out } = await called('run', 'cottage.yaml', '--json', '--doubt', '2');
    const { doubt, ...figures } = JSON.parse(out);
    expect(figures).toEqual(JSON.parse((await called('run', 'cottage.yaml', '--json')).out));
    expect(doubt.differences).toEqual([]);
  });

  test('several years of weather are drawn too', async () => {
    const years = ['--weather', 'saltmere.csv', '--weather', 'other.csv'];
    const { out } = await called('run', 'cottage.yaml', '--json', '--doubt', '2', ...years);
    expect(JSON.parse(out).doubt.years).toBe(2);
  });
});

describe('what cannot be meant', () => {
  test.each([
    [
      ['run', 'cottage.yaml', '--doubt', '0'],
      1,
      "error: option '--doubt [number]' argument '0' is invalid. Give a whole number of 1 or more.\n",
    ],
    [
      ['run', 'cottage.yaml', '--doubt', '1000000000'],
      1,
      "error: option '--doubt [number]' argument '1000000000' is invalid. Give at most 10000.\n",
    ],
    [
      ['compare', 'cottage.yaml', '--doubt', '4', '--csv'],
      1,
      "error: option '--doubt [number]' cannot be used with option '--csv'\n",
    ],
    [
      ['run', 'cottage.yaml', '--weather', 'saltmere.csv', '--weather', 'other.csv'],
      1,
      'error: --weather more than once is for --doubt\n',
    ],
    [
      ['run', 'cottage.yaml', '--doubt', '2', '--weather', 'saltmere.csv', '--weather', 'gone.csv'],
      2,
      'gone.csv: expected a file to read, got nothing of that name\n',
    ],
    [
      ['run', 'whole.yaml', '--doubt', '2', '--weather', 'other.csv', '--weather', 'week.csv'],
      2,
      'week.csv: expected as many days as the first weather has, 31, got 7 (a period in the scenario says which days of each are run)\n',
    ],
    [
      ['run', 'whole.yaml', '--doubt', '2', '--weather', 'other.csv', '--weather', 'short.csv'],
      2,
      'short.csv: expected as many days as the first weather has, 31, got 28 (a period in the scenario says which days of each are run)\n',
    ],
  ])('%j', async (args, status, err) => {
    expect(await called(...args)).toEqual({ status, out: '', err });
  });
});
