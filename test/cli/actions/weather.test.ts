import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { fakeIo } from '../fake-io.ts';

const RECIPE = readFileSync('weather/saltmere-typical.recipe.yaml', 'utf8');
const MADE = readFileSync('weather/saltmere-typical.csv', 'utf8');

describe('weather make', () => {
  test('prints the year that the repository keeps, byte for byte', async () => {
    const { io, said } = fakeIo({ 'r.yaml': RECIPE });
    expect(await main(['weather', 'make', 'r.yaml'], io)).toBe(0);
    expect(said.err).toBe('');
    expect(said.out).toBe(MADE);
  });

  test('with -o writes it and prints nothing', async () => {
    const { io, said, files } = fakeIo({ 'r.yaml': RECIPE });
    expect(await main(['weather', 'make', 'r.yaml', '-o', 'y.csv'], io)).toBe(0);
    expect(said).toEqual({ out: '', err: '' });
    expect(files['y.csv']).toBe(MADE);
  });

  test('another seed is another year of the same length', async () => {
    const { io, said } = fakeIo({ 'r.yaml': RECIPE });
    expect(await main(['weather', 'make', 'r.yaml', '--seed', '7'], io)).toBe(0);
    expect(said.out).not.toBe(MADE);
    expect(said.out.split('\n')).toHaveLength(MADE.split('\n').length);
  });

  test('a wrong recipe ends with 2, and nothing is written', async () => {
    const { io, said, files } = fakeIo({
      'r.yaml': RECIPE.replace('latitude: 54.2', 'latitude: 94.2'),
    });
    expect(await main(['weather', 'make', 'r.yaml', '-o', 'y.csv'], io)).toBe(2);
    expect(said.err).toMatch(
      /^r\.yaml:\d+:11: latitude: expected -66 to 66 degrees north, got 94\.2\n$/,
    );
    expect(files['y.csv']).toBeUndefined();
  });
});

describe('weather describe', () => {
  test('says it in words and months', async () => {
    const { io, said } = fakeIo({ 'y.csv': MADE });
    expect(await main(['weather', 'describe', 'y.csv'], io)).toBe(0);
    expect(said.err).toBe('');
    expect(said.out).toMatch(/K d of heating below 15\.5 °C by daily means/);
    expect(said.out).toMatch(/^07 +1\d\.\d/m);
    expect(Math.max(...said.out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('--json prints the figures', async () => {
    const { io, said } = fakeIo({ 'y.csv': MADE });
    expect(await main(['weather', 'describe', 'y.csv', '--json'], io)).toBe(0);
    expect(JSON.parse(said.out)).toMatchObject({ hours: 8760, typical: true, latitude: 54.2 });
  });
});

describe('weather import', () => {
  const CSV = ['when;T;RH;v', ...Array.from({ length: 48 }, (_, k) => row(k))].join('\n');
  const MAP = `time: { column: when, format: DD.MM.YYYY hh:mm, utc offset: 1 }
quantities:
  temperature: { column: T }
  relative humidity: { column: RH }
  wind speed: { column: v, unit: km/h }
decimal comma: true
`;
  const PLACE = ['--latitude', '50', '--longitude', '8', '--elevation', '100', '--title', 'Log'];

  function row(k: number): string {
    const two = (n: number) => String(n).padStart(2, '0');
    return `${two(1 + Math.floor(k / 24))}.01.2024 ${two(k % 24)}:00;${String(k / 10).replace('.', ',')};80;36`;
  }

  test('reads a CSV by a column map and writes the own layout, with notes aside', async () => {
    const { io, said, files } = fakeIo({ 'log.csv': CSV, 'm.yaml': MAP });
    const args = ['weather', 'import', 'log.csv', '--map', 'm.yaml', '-o', 'tidy.csv', ...PLACE];
    const status = await main(args, io);
    expect(status, said.err).toBe(0);
    expect(said.out).toBe('');
    expect(said.err).toMatch(/^note: /);
    const weather = readWeather(files['tidy.csv']!, 'tidy.csv');
    expect(weather).toMatchObject({ title: 'Log', latitude: 50, count: 48, step: 3600 });
    expect(weather.temperature[1]).toBeCloseTo(0.1, 9);
    expect(weather.windSpeed[0]).toBeCloseTo(10, 9);
  });

  test('without a place it says what is missing', async () => {
    const { io, said, files } = fakeIo({ 'log.csv': CSV, 'm.yaml': MAP });
    const args = ['weather', 'import', 'log.csv', '--map', 'm.yaml', '-o', 'tidy.csv'];
    expect(await main(args, io)).toBe(2);
    expect(said.err).toContain('latitude');
    expect(files['tidy.csv']).toBeUndefined();
  });
});
