import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';

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

test('what is odd about a log is said beside it, and nothing of one that is not', async () => {
  const odd = `Time,Bedroom T,Bedrom RH,Bedroom hmidity\n${rows
    .map((row) => {
      const [time, warm, damp] = row.split(',');
      return `${time},${(Number(warm) * 1.8 + 32).toFixed(1)},${damp},${damp}`;
    })
    .join('\n')}\n`;
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': odd });
  expect(await main(['run', 'home.yaml', '--against', 'log.csv'], io)).toBe(0);
  expect(said.err.replaceAll(/\s+/g, ' ').split(' note: ')).toEqual([
    'note: log.csv: left out: "Bedrom RH" (no room is called "bedrom"), "Bedroom hmidity" (its name says no quantity that is known)',
    'log.csv: "Bedroom T" is taken for °F, as its numbers show ',
  ]);
});

test('what speaks against readings of a room is said too, but not that the log is short', async () => {
  const stuck = `Time,Bedroom T,Hall T\n${rows.map((row, h) => `${row.split(',').slice(0, 2)},${h < 30 ? 17 : 17 + (h % 5)}`).join('\n')}\n`;
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': stuck });
  expect(await main(['run', 'home.yaml', '--against', 'log.csv'], io)).toBe(0);
  expect(said.err.replaceAll(/\s+/g, ' ')).toBe(
    'note: Temperature of hall stood at 17 for 30 hours from 2023-03-10 00:00: a sensor that sticks? ',
  );
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

test('a typical year is told where it has the days of the log', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': weather, 'log.csv': log });
  expect(await main(['run', 'home.yaml', '--against', 'log.csv'], io)).toBe(0);
  expect(said.out).toContain('note: The weather is a typical year, not that of the log');
});

test('--plot draws a room beside its log within 80 columns', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': log });
  const words = ['run', 'home.yaml', '--against', 'log.csv', '--plot', 'bedroom'];
  expect(await main([...words, '--from', '03-11'], io)).toBe(0);
  expect(said.out).toMatch(/^Two rooms: as-lived\nbedroom, 11 March 2023 to 12 March 2023\n/);
  expect(said.out).toContain('\nTemperature [°C]\n');
  expect(said.out).toContain('\nVapour excess [g/m3]\n');
  // 18 + sin(h / 4), read at 24 to 27 and joined by straight lines: 18.09 on average
  expect(said.out).toMatch(/Sat 03-11 00:00 +[.=]*[ox*][.=ox]*.* 18\.1 /);
  expect(Math.max(...said.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  const last = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': log });
  expect(await main([...words, '--from', '03-12'], last.io)).toBe(0);
  // 55 + 5 cos(h / 7), read at 57 to 59: 53.2 and 52.6 in the two hours that are left of the log
  expect(last.said.out).toMatch(/Sun 03-12 09:00 +[.=ox*]+ +52\.9 /);
});

test('--page draws every room and quantity, with a policy that lets in nothing but its style', async () => {
  const hostile = home.replace('Two rooms', '"<script>x</script>"');
  const { io, said, files } = fakeIo({ 'home.yaml': hostile, 'w.csv': some, 'log.csv': log });
  const words = ['run', 'home.yaml', '--against', 'log.csv', '--page', 'beside.html', '--json'];
  expect(await main(words, io)).toBe(0);
  const page = files['beside.html']!;
  expect(said.err).toContain('beside.html written');
  expect(page).toMatch(
    /content="default-src 'none'; style-src 'sha256-[^']+'; base-uri 'none'; form-action 'none'"/,
  );
  expect(page).not.toContain('<script');
  expect(page.match(/<figure /g)).toHaveLength(3);
  expect(page).toMatch(
    /<p class="lead">The simulation comes nearer to the log than every guess in \d of 3 series\.<\/p>/,
  );
  expect(page).toMatch(
    /<p class="meta">Plan .+, \d+ March 2023 to \d+ March 2023, \d+ hours\.<\/p>/,
  );
  expect(page).toMatch(/bedroom: temperature simulated [\d.]+ K (above|below) the log on average/);
});

test('a page without a log, over the log, or a room that is not there is refused', async () => {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': some, 'log.csv': log });
  const against = ['run', 'home.yaml', '--against', 'log.csv'];
  expect(await main(['run', 'home.yaml', '--page', 'a.html'], io)).toBe(1);
  expect(said.err).toContain("option '--page <file.html>' needs option '--against <file.csv>'");
  expect(await main([...against, '--page', 'log.csv'], io)).toBe(1);
  expect(said.err).toContain('It is read by the same call; name another file.');
  expect(await main([...against, '--plot', 'bedrom'], io)).toBe(1);
  expect(said.err).toContain('bedroom');
});
