import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-06" }
step: 60
home: { rooms: { den: { floor area: 14 }, nook: { floor area: 9, use: bedroom } } }
heating: { setpoint: 20 }
plans:
  now: { change: {} }
  cold: { change: { heating: { source: none } } }
`;

async function find(...args: string[]) {
  const { io, said } = fakeIo({ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY });
  const status = await main(['find', ...args], io);
  return { status, ...said };
}

test('an answer in words, with the runs that led there', async () => {
  const { status, out, err } = await find('setpoint', 'cottage.yaml', '--hours', '48');
  expect({ status, err }).toEqual({ status: 0, err: '' });
  expect(out).toMatch(
    /^The lowest setpoint that keeps every cold spot under 80 % for all but 48 h\n\n/,
  );
  expect(out.replaceAll(/\s+/g, ' ')).toContain(
    'keeps every cold spot under 80 % for all but 48 h;',
  );
  expect(out).toMatch(/\n +money\n?/);
  expect(out).toMatch(/Searched from [\d.]+ to 28\.0 °C, to 0\.100 °C/);
});

test.each([
  ['setpoint', '--hours', '20'],
  ['heat-or-dry'],
  ['dehumidifier', '--target', '65'],
  ['airing', '--hours', '20'],
  ['outdoor-air', '--hours', '20', '--money', '30'],
])('%s as JSON', async (what, ...options) => {
  const { status, out, err } = await find(what, 'cottage.yaml', '--json', ...options);
  expect({ status, err }).toEqual({ status: 0, err: '' });
  const found = JSON.parse(out);
  expect(Object.keys(found).sort()).toEqual([
    ...['answer', 'figure', 'high', 'low', 'question', 'runs', 'tolerance', 'unit', 'value'],
  ]);
  expect(found.runs.length).toBeGreaterThanOrEqual(2);
  expect(found.answer.length).toBeGreaterThanOrEqual(1);
});

test('outdoor air is looked for where air is stale longest, not in the first bedroom', async () => {
  const people = '{ who: adult, schedule: [{ room: nook, from: "00:00", to: "24:00" }] }';
  const home = HOME.replace('nook: {', 'bedroom: { floor area: 9 }, nook: {').replace(
    'heating:',
    `household: { people: [${people}], airing: [] }\nheating:`,
  );
  const { io, said } = fakeIo({ 'cottage.yaml': home, 'saltmere.csv': JANUARY });
  expect(await main(['find', 'outdoor-air', 'cottage.yaml', '--json'], io)).toBe(0);
  expect(JSON.parse(said.out).question).toContain(
    ' leaves the nook stuffy for no more than 100 h ',
  );
});

describe('what cannot be meant', () => {
  test.each([
    [
      ['setpoint', 'cottage.yaml', '--plan', 'cold'],
      2,
      'Test cottage: plan cold: expected a home that is heated, got none\n',
    ],
    [
      ['heat-or-dry', 'cottage.yaml', '--plan', 'cold'],
      2,
      'Test cottage: plan cold: expected a heated home without a dehumidifier yet, got another\n',
    ],
    [
      ['outdoor-air', 'cottage.yaml', '--room', 'nok'],
      1,
      "error: unknown room 'nok' (did you mean nook?), known are den, nook\n",
    ],
    [
      ['warmth', 'cottage.yaml'],
      1,
      "error: command-argument value 'warmth' is invalid for argument 'what'. Allowed choices are setpoint, heat-or-dry, dehumidifier, airing, outdoor-air.\n",
    ],
    [
      ['airing', 'cottage.yaml', '--hours', '-1'],
      1,
      "error: option '--hours <number>' argument '-1' is invalid. Give a number of 0 or more.\n",
    ],
    ...(
      [
        ['hours', 'heat-or-dry', 'find setpoint, find airing, find outdoor-air'],
        ['hours', 'dehumidifier', 'find setpoint, find airing, find outdoor-air'],
        ...['setpoint', 'heat-or-dry', 'airing', 'outdoor-air'].map(
          (what) => ['target', what, 'find dehumidifier'] as const,
        ),
        ...['setpoint', 'heat-or-dry', 'airing', 'dehumidifier'].map(
          (what) => ['money', what, 'find outdoor-air'] as const,
        ),
      ] as const
    ).map(([option, what, searches]): [string[], number, string] => [
      [what, 'cottage.yaml', `--${option}`, '50'],
      1,
      `error: option '--${option}' does nothing for find ${what}; it is for ${searches}\n`,
    ]),
  ])('%j', async (args, status, err) => {
    expect(await find(...args)).toEqual({ status, out: '', err });
  });
});
