import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-08" }
step: 60
money: { currency: JPY, gas: 12, electricity: { price: 3100, standing: 40 } }
home: { rooms: { den: { floor area: 14 } } }
heating: { setpoint: 20 }
plans:
  now: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: den, label: 12 L/day } } }, purchases: [{ what: drier, price: 27000, lasts: 8 years }] }
`;

async function told(...args: string[]): Promise<string> {
  const world = fakeIo({ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY });
  expect(await main(args, world.io)).toBe(0);
  const page = args.indexOf('-o');
  return page < 0 ? world.said.out : world.files[args[page + 1]!]!;
}

test('sums of five digits stand in groups on a screen, with blanks that can be typed', async () => {
  const out = await told('compare', 'cottage.yaml');
  expect(out).toContain('Buy drier for 27 000 JPY?');
  // Money under "as it is", 4 days of it.
  expect(out).toMatch(/^now +\d{2,3} \d{3} /m);
  expect(out).not.toContain('\u202f');
  expect(out).not.toMatch(/\d{5}/);
});

test('not where programs read them', async () => {
  for (const form of ['--json', '--csv']) {
    const out = await told('compare', 'cottage.yaml', form);
    expect(out).toMatch(/\b\d{5,6}\.\d/);
    expect(out).not.toMatch(/\d[ \u202f]\d{3}\b/);
  }
  const found = await told('find', 'outdoor-air', 'cottage.yaml', '--money', '90000', '--json');
  expect(found).not.toMatch(/\d[ \u202f]\d{3}\b/);
});

test('in a report the blank keeps a sum on one line', async () => {
  const page = await told(
    'report',
    'cottage.yaml',
    '--about',
    'dry',
    '--doubt',
    '0',
    '-o',
    'a.html',
  );
  expect(page).toContain('27\u202f000.00 JPY, lasts 8 years');
  expect(page).toMatch(/\d\u202f\d{3} JPY/);
  expect(page).not.toMatch(/\d{5}(\.\d+)? JPY/);
});
