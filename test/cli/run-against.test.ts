import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

const weather = readFileSync('weather/saltmere-typical.csv', 'utf8');
/** Two March days of it, as if they had been measured. */
const some = weather
  .split('\n')
  .filter(
    (line) =>
      (line.startsWith('#') && !line.includes('typical: true')) ||
      /^time|^2023-03-1[0-2]/.test(line),
  )
  .join('\n');
const home = `title: Two rooms
weather: w.csv
site: { latitude: 54, longitude: -2, timezone: Europe/London }
home: { rooms: { bedroom: { use: bedroom, floor area: 12 }, hall: { use: hall, floor area: 6 } } }
heating: { source: direct electric, setpoint: 19 }
`;
const rows = Array.from({ length: 60 }, (_, h) => {
  const stamp = new Date(Date.UTC(2023, 2, 10, h)).toISOString().slice(0, 16);
  return `${stamp}Z,${(18 + Math.sin(h / 4)).toFixed(2)},${(55 + 5 * Math.cos(h / 7)).toFixed(1)}`;
});
const log = `Time,Bedroom T,Bedroom RH\n${rows.join('\n')}\n`;

test('run --against prints words, misfits and figures within 80 columns', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': log });
  const status = await main(['run', 'home.yaml', '--against', 'log.csv'], io);
  expect([said.err, status]).toEqual(['', 0]);
  expect(said.out).toMatch(
    /^Two rooms, plan as-lived: simulated beside what was logged, 2023-03-10T00:00Z to\n2023-03-12T11:00Z, 59 hours\./,
  );
  expect(said.out).toMatch(/Temperature: [\d.]+ K (above|below) the log on average, off by/);
  expect(said.out).toMatch(/bedroom +temp \[°C\] +59 /);
  expect(said.out).toMatch(/bedroom +excess \[g\/m3\] +59 /);
  expect(Math.max(...said.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('--json has the same', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': log });
  expect(await main(['run', 'home.yaml', '--against', 'log.csv', '--json'], io)).toBe(0);
  const found = JSON.parse(said.out);
  expect(found.period.hours).toBe(59);
  expect(found.misfits.map(({ quantity }: { quantity: string }) => quantity)).toEqual([
    'temperature',
    'relative humidity',
    'vapour excess',
  ]);
  expect(found.rooms.bedroom.logged.hours_with_humidity).toBe(59);
});

test('a typical year is told where it has the days of the log, and a picture beside is refused', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': weather, 'log.csv': log });
  expect(await main(['run', 'home.yaml', '--against', 'log.csv'], io)).toBe(0);
  expect(said.out).toContain('note: The weather is a typical year, not that of the log');
  expect(await main(['run', 'home.yaml', '--against', 'log.csv', '--plot', 'hall'], io)).toBe(1);
  expect(said.err).toContain('cannot be used with option');
});
