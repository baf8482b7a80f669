import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';
import { JANUARY } from '../january.ts';

const HOME = `title: Test cottage
weather: saltmere.csv
site: { timezone: Europe/London }
period: { from: "01-05", to: "01-08" }
step: 60
home: { rooms: { den: { floor area: 14 } } }
heating: { setpoint: 20 }
plans:
  boiler: { change: {} }
  pump: { change: { heating: { source: heat pump, power: 200 W, cop: [{ outdoor: 12, cop: 3 }, { outdoor: 15, cop: 4 }] } } }
`;

async function compared(...args: string[]): Promise<string> {
  const { io, said } = fakeIo({ 'cottage.yaml': HOME, 'saltmere.csv': JANUARY });
  expect(await main(['compare', 'cottage.yaml', ...args], io)).toBe(0);
  return said.out.replaceAll(/\s+/g, ' ');
}

test('that a heat source came to its limits is told beside the plans', async () => {
  expect(await compared()).toMatch(
    /Some plans: .*the source of heat is too small for the coldest days; the COP of the coldest days is not known/,
  );
  const all = await compared('--all');
  expect(all).toMatch(
    /pump: The heat pump gave all it could \(200 W at most\) .*\[source-too-small\]/,
  );
  expect(all).toMatch(
    /pump: The heat pump gave \d+ % of its heat below 12 °C .*\[cop-beyond-table\]/,
  );
  // What every run of a part of a year says stands in run.
  expect(all).not.toContain('[not-a-year]');
  expect(await compared('--plans', 'boiler')).not.toContain('too small');
});
