import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';

const home = `title: Two rooms
weather: w.csv
site: { latitude: 54, longitude: -2, timezone: Europe/London }
home: { rooms: { bedroom: { use: bedroom, floor area: 12 }, hall: { use: hall, floor area: 6 } } }
heating: { source: direct electric, setpoint: 19 }
household: { people: [{ who: adult, pattern: works at home, sleeps in: bedroom }] }
rules:
  - { name: damp, when: [{ room: bedroom, reading: humidity, over: 65, clear: 60 }], on delay: 20 min, response: [{ tell: open the window }] }
`;
/** Any weather: rules here ask for nothing outdoors. */
const weather = [
  '# latitude: 54',
  '# longitude: -2',
  '# elevation: 10',
  'time,temperature,relative humidity,wind speed,direct normal,diffuse horizontal',
  ...Array.from({ length: 72 }, (_, h) => {
    const time = new Date(Date.UTC(2024, 0, 1, h)).toISOString().slice(0, 16);
    return `${time}Z,5,80,3,0,0`;
  }),
].join('\n');

/** Two days by ten minutes; humidity as given by the hour, a window as given. */
function log(humidity: (hour: number) => number | '', window: (hour: number) => string): string {
  const rows = Array.from({ length: 288 }, (_, k) => {
    const time = new Date(Date.UTC(2025, 1, 3, 0, 10 * k)).toISOString().slice(0, 16);
    const h = k / 6;
    return `${time}Z,18,${humidity(h)},${window(h)}`;
  });
  return `Time,Bedroom T,Bedroom RH,Bedroom window\n${rows.join('\n')}\n`;
}
const shut = () => 'closed';

describe('rules on a log, by hand from what they say', () => {
  test('a rule fires once its condition has held for the on delay, and again after it cleared', async () => {
    // Above 65 from 10:00 to 12:00 and from 30:00 on; between it falls below 60.
    const damp = (h: number) => ((h >= 10 && h < 12) || h >= 30 ? 70 : 55);
    const { rules, events } = await replayed(log(damp, (h) => (h >= 30.5 ? 'open' : 'closed')));
    // It is seen at 10:00, held for 20 minutes at 10:20; the same at 06:20 of the next day.
    expect(events.map(({ at }: { at: string }) => at)).toEqual([
      '2025-02-03T10:20Z',
      '2025-02-04T06:20Z',
    ]);
    expect(events[0].local).toBe('2025-02-03 10:20'); // British winter time is UTC
    expect(events.map(({ window }: { window: string }) => window)).toEqual([
      'stayed shut',
      'opened within the hour',
    ]);
    expect(rules[0]).toMatchObject({ name: 'damp', room: 'bedroom', fired: 2, unknown_hours: 0 });
    expect(rules[0].windows).toEqual({
      open_already: 0,
      opened_within_the_hour: 1,
      stayed_shut: 1,
    });
  });

  test('a short rise, and one between edge and clear, says nothing', async () => {
    const short = (h: number) => (h >= 10 && h < 10.3 ? 70 : h > 20 && h < 30 ? 63 : 55);
    expect((await replayed(log(short, shut))).events).toEqual([]);
  });

  test('nothing is known in a gap, and nothing fires in it', async () => {
    const gap = (h: number) => (h >= 10 && h < 20 ? '' : h >= 9.9 && h < 24 ? 70 : 55);
    const { rules, events } = await replayed(log(gap, shut));
    expect(events.map(({ at }: { at: string }) => at)).toEqual(['2025-02-03T20:20Z']);
    expect(rules[0].unknown_hours).toBeCloseTo(10, 6);
  });
});

test('firings are told on the clock of the home', async () => {
  const berlin = home.replace('Europe/London', 'Europe/Berlin');
  const damp = (h: number) => (h >= 10 && h < 12 ? 70 : 55);
  const { io, said } = fakeIo({ 'home.yaml': berlin, 'w.csv': weather, 'l.csv': log(damp, shut) });
  expect(await main(['run', 'home.yaml', '--replay', 'l.csv'], io)).toBe(0);
  // Damp from 10:00 UTC on, for 20 minutes; Berlin is an hour ahead.
  expect(said.out).toMatch(/^2025-02-03 11:20 +damp /m);
  expect(said.out).toContain("Times are those of the home's clock.");
});

test('the text says it in words, within 80 columns', async () => {
  const damp = (h: number) => (h >= 10 && h < 12 ? 70 : 55);
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': weather, 'l.csv': log(damp, shut) });
  expect(await main(['run', 'home.yaml', '--replay', 'l.csv'], io)).toBe(0);
  expect(said.out.replaceAll('\n', ' ')).toContain(
    'damp: would have fired once; somebody at home was awake then or within the hour. ' +
      'The window stood open already in 0, was opened within the hour in 0, and stayed shut in 1.',
  );
  expect(said.out).toMatch(/2025-02-03 10:20 +damp +somebody awake +stayed shut/);
  // Readings are taken as they are, a temperature that stood still for two days among them.
  expect(said.err).toBe('');
  expect(said.out.replaceAll(/\n */g, ' ')).toContain(
    'note: Outdoor air is unknown: nobody logged it, and the weather file is of other days or of a typical year.',
  );
  expect(Math.max(...said.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('a plan without rules is refused', async () => {
  const bare = home.slice(0, home.indexOf('rules:'));
  const { io, said } = fakeIo({
    'home.yaml': bare,
    'w.csv': weather,
    'l.csv': log(() => 55, shut),
  });
  expect(await main(['run', 'home.yaml', '--replay', 'l.csv'], io)).toBe(2);
  expect(said.err).toContain(
    'home.yaml: rules: expected rules that a log can be fed to, got none in plan as-lived',
  );
});

async function replayed(text: string) {
  const { io, said } = fakeIo({ 'home.yaml': home, 'w.csv': weather, 'l.csv': text });
  const status = await main(['run', 'home.yaml', '--replay', 'l.csv', '--json'], io);
  expect([said.err, status]).toEqual(['', 0]);
  return JSON.parse(said.out);
}
