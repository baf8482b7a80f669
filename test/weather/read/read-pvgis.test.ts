import { expect, test } from 'vitest';
import { readWeather } from '../../../src/weather/read/read-weather.ts';

const HEAD = [
  'Latitude (decimal degrees): 45.500',
  'Longitude (decimal degrees): 8.250',
  'Elevation (m): 210.0',
  'Irradiance Time Offset (h): 0.25',
  'month,year',
  '1,2018',
  'time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP',
];
const FOOT = ['', 'T2m: 2-m air temperature (degree Celsius)', '', 'PVGIS (c) European Union'];

/** Made-up hours in the layout; the sun is a made-up wave. */
function year(years: (month: number) => number): string[] {
  return Array.from({ length: 8760 }, (_, k) => {
    const date = new Date(Date.UTC(2023, 0, 1, k));
    const stamp = date.toISOString();
    const day = `${years(date.getUTCMonth())}${stamp.slice(5, 7)}${stamp.slice(8, 10)}`;
    const sun = Math.max(0, Math.round(400 * Math.sin((Math.PI * ((k % 24) - 6)) / 12)));
    return `${day}:${stamp.slice(11, 13)}00,${k % 24}.5,80.0,${sun},${sun},${sun},300,2.5,180.0,99000.0`;
  });
}
const text = (lines: readonly string[]) => [...HEAD, ...lines, ...FOOT].join('\r\n');

test('a typical year in the layout of PVGIS', () => {
  const lines = year((month) => 2005 + month);
  const weather = readWeather(text(lines), 'pvgis.csv');
  expect(weather).toMatchObject({
    title: 'PVGIS typical year at 45.5, 8.25',
    latitude: 45.5,
    longitude: 8.25,
    elevation: 210,
    start: Date.UTC(2023, 0) / 1000,
    count: 8760,
    periodic: true,
    sun: 'measured',
    notes: [],
  });
  expect([...weather.temperature.slice(0, 2)]).toEqual([0.5, 1.5]);
  expect(weather.pressure[0]).toBe(99_000);
  // Readings a quarter past become means of the hour: nothing of the year's sun is lost.
  const written = lines.reduce((sum, line) => sum + Number(line.split(',')[4]), 0);
  expect(weather.directNormal.reduce((a, b) => a + b)).toBeCloseTo(written, 6);
  // The mean from 9 to 10 lies between the readings at 9:15 and 10:15, nearer the first.
  expect(weather.directNormal[9]).toBeGreaterThan(283);
  expect(weather.directNormal[9]).toBeLessThan((283 + 346) / 2);
});

test('months of one year are that year', () => {
  const weather = readWeather(text(year(() => 2022)), 'pvgis.csv');
  expect(weather.periodic).toBe(false);
  expect(weather.start).toBe(Date.UTC(2022, 0) / 1000);
});

test('cut off in a line, without the legend', () => {
  const lines = year((month) => 2005 + month);
  const cut = [...HEAD, ...lines.slice(0, 4000), '20100616:1600,20.5,8'].join('\n');
  expect(() => readWeather(cut, 'pvgis.csv')).toThrow(
    /^pvgis\.csv:4007:1: time: expected a typical year of 365 days, got 166\.67 days .*\npvgis\.csv:4008:21: last line: expected 10 cells, got 3 /,
  );
});

test('no header', () => {
  expect(() => readWeather('Latitude (decimal degrees): 45\nLongitude: 8\n', 'pvgis.csv')).toThrow(
    'pvgis.csv:2:1: header: expected a line that begins with "time(UTC)", got none',
  );
});

test('an offset of the sun that is no number of hours is told with its line', () => {
  const lines = year((month) => 2005 + month);
  const offset = (value: string) => () =>
    readWeather(text(lines).replace('Offset (h): 0.25', `Offset (h): ${value}`), 'pvgis.csv');
  for (const value of ['1e400', '1.5', '-1.5', 'late']) {
    expect(offset(value)).toThrow(
      `pvgis.csv:4:1: Irradiance Time Offset: expected hours from -1 to 1, got "${value}"`,
    );
  }
  for (const value of ['-1', '1']) expect(offset(value)).not.toThrow();
});
