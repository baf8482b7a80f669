import { describe, expect, test } from 'vitest';
import { InputProblems } from '../../../src/units/problem.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { compare } from '../../reference/compare.ts';

const PLACE = '999990,"SALTMERE, PIER",XX,-5.0,43.000,-78.000,200';
const HEADER =
  'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DNI source,DHI (W/m^2),' +
  'Dry-bulb (C),Dry-bulb source,Dew-point (C),RHum (%),Pressure (mbar),Wdir (degrees),Wspd (m/s)';

/** Made-up lines in the layout: the temperature counts the hours of the day, 1 to 24. */
function line(month: number, day: number, year: number, hour: number, temperature = `${hour}.0`) {
  const two = (n: number) => String(n).padStart(2, '0');
  const ghi = hour === 13 ? 500 : 0;
  return `${two(month)}/${two(day)}/${year},${two(hour)}:00,0,${ghi},1,${ghi},1,${ghi / 5},${temperature},A,-2.0,50,990,270,3.1`;
}

const YEARS = [1980, 1988, 1990, 1981, 1995, 1978, 1980, 1985, 1994, 1978, 1988, 1977];

function typicalYear(): string[] {
  return YEARS.flatMap((year, month) =>
    Array.from({ length: new Date(Date.UTC(2023, month + 1, 0)).getUTCDate() }, (_, day) =>
      Array.from({ length: 24 }, (_, hour) => line(month + 1, day + 1, year, hour + 1)),
    ).flat(),
  );
}

const text = (lines: readonly string[]) => `${[PLACE, HEADER, ...lines].join('\r\n')}\r\n`;

describe('a typical year in TMY3', () => {
  const weather = readWeather(text(typicalYear()), 'tmy3.csv');

  test('is one year that closes on itself, in local standard time', () => {
    expect(weather).toMatchObject({
      title: 'SALTMERE, PIER, XX',
      latitude: 43,
      longitude: -78,
      elevation: 200,
      start: Date.UTC(2023, 0, 1, 5) / 1000,
      step: 3600,
      count: 8760,
      periodic: true,
      sun: 'measured',
      notes: [],
    });
  });

  test('temperatures hold at the end of the hour named', () => {
    expect([...weather.temperature.slice(0, 3)]).toEqual([24, 1, 2]); // midnight comes from 24:00
    expect(weather.temperature[8759]).toBe(23);
  });

  test('irradiance is of the hour that ends then', () => {
    // The row 13:00 is the hour from 12 to 13.
    expect(weather.directNormal[12]).toBe(500);
    expect(weather.diffuseHorizontal[12]).toBe(100);
    expect(weather.directNormal[11]).toBe(0);
    expect(weather.directNormal[13]).toBe(0);
  });

  test('pressure is in Pa, and relative humidity counts before dew point', () => {
    expect(weather.pressure[0]).toBe(99_000);
    compare({
      topic: 'Weather files',
      what: 'humidity ratio of 20 °C and 50 % at 990 hPa, from TMY3 columns',
      unit: 'kg/kg',
      source: 'ASHRAE Fundamentals (2017) ch. 1 eq. 20 with 2338.8 Pa at 20 °C',
      mark: 'published arithmetic',
      expected: (0.621945 * 1169.4) / (99_000 - 1169.4),
      got: weather.humidityRatio[20]!,
      tolerance: { relative: 1e-4 },
      because: 'saturation pressure printed to five digits',
    });
  });
});

test('one and the same year is a measured year, not a typical one', () => {
  const lines = Array.from({ length: 48 }, (_, k) =>
    line(2, 1 + Math.floor(k / 24), 1999, (k % 24) + 1),
  );
  const weather = readWeather(text(lines), 'a.csv');
  expect(weather.periodic).toBe(false);
  expect(weather.start).toBe(Date.UTC(1999, 1, 1, 5) / 1000);
  expect(weather.count).toBe(48);
  expect([...weather.temperature.slice(0, 3)]).toEqual([1, 1, 2]);
  expect(weather.notes.map(({ text }) => text)).toEqual([
    'the file names steps by their end: the first reading also stands one step earlier',
  ]);
});

test('-9900 is a missing reading, filled where the gap is short', () => {
  const lines = typicalYear();
  lines[100] = lines[100]!.replace(',5.0,A', ',-9900,A');
  lines[101] = lines[101]!.replace(',6.0,A', ',-9900,A');
  const weather = readWeather(text(lines), 'a.csv');
  expect(weather.temperature[101]).toBe(5);
  expect(weather.temperature[102]).toBe(6);
  expect(weather.notes.map(({ text }) => text)).toEqual([
    '2 cells with the code -9900 read as missing',
    '2023-01-05T10:00Z, 2 hours: temperature filled by straight lines',
  ]);
});

test('a hole over new year is one hole', () => {
  const lines = typicalYear();
  for (const k of [0, 1, 8758, 8759]) lines[k] = lines[k]!.replace(/,\d+\.0,A/, ',-9900,A');
  expect(() => readWeather(text(lines), 'a.csv')).toThrow(
    'a.csv:8761:30: temperature: expected no gap longer than 3 hours, ' +
      'got no readings from 2024-01-01T04:00Z to 2023-01-01T07:00Z, 4 hours',
  );
});

test('a year that is cut off, and a zone that is none', () => {
  const lines = typicalYear().slice(0, 5000);
  expect(() => readWeather(text(lines), 'a.csv')).toThrow(
    'a.csv:5002:1: time: expected a typical year of 365 days, got 208.33 days',
  );
  const wrong = text(typicalYear()).replace(',-5.0,', ',east,');
  expect(() => readWeather(wrong, 'a.csv')).toThrow(
    new InputProblems([
      {
        file: 'a.csv',
        line: 1,
        column: 28,
        where: 'time zone',
        expected: 'hours ahead of UTC in the fourth cell of line 1',
        got: '"east"',
        hint: '',
      },
    ]),
  );
});
