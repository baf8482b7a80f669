import { describe, expect, test } from 'vitest';
import { InputProblems } from '../../../src/units/problem.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import type { WeatherOptions } from '../../../src/weather/weather-options.ts';
import { isoHour, tidy, tidyHours } from '../tidy-text.ts';

/** Lines of the complaint about a text; the data of these texts begin in line 7. */
function complaints(text: string, options: WeatherOptions = {}): string[] {
  try {
    readWeather(text, 'out.csv', options);
  } catch (error) {
    if (error instanceof InputProblems) return error.message.split('\n');
    throw error;
  }
  return [];
}

const HEADER = 'time,temperature,relative humidity,wind speed';
const steady = (hours: number) => Array.from({ length: hours }, () => 8);

describe('not a weather file at all', () => {
  test.each([
    ['', 'nothing: the file is empty'],
    ['\n \n', 'nothing: the file is empty'],
    ['PK\u0003\u0004zip', 'a zip archive or spreadsheet'],
    ['\u001f\ufffdgz', 'gzip-compressed data'],
    ['time,\u0000temperature', 'binary data (a zero byte at character 6)'],
    ['\ufffd\ufffd\u0001\u0002picture', 'binary data'],
  ])('%j', (text, got) => {
    expect(complaints(text)).toEqual([
      `out.csv: expected the text of a weather file, got ${got} (unpack archives and export spreadsheets as CSV first)`,
    ]);
  });

  test('a CSV of no known layout', () => {
    expect(complaints('when,T\n1,2\n')).toEqual([
      'out.csv:1:1: expected a roombalance CSV, TMY3, PVGIS typical year or ISD-Lite, got "when,T" ' +
        '(any other CSV can be read with a column map)',
    ]);
  });
});

describe('the head', () => {
  test('a column with a slip of the pen, one that is not known, one twice', () => {
    const text = tidy('time,temprature,relative humidity,wind speed,rain,wind speed', [
      '2023-01-01T00:00Z,8,70,3,0,3',
      '2023-01-01T01:00Z,8,70,3,0,3',
    ]);
    expect(complaints(text)).toEqual([
      'out.csv: columns: expected a temperature, got none',
      'out.csv:6:6: header: expected a column of a roombalance CSV, got "temprature" (did you mean "temperature"?)',
      'out.csv:6:46: header: expected a column of a roombalance CSV, got "rain" (known are time, temperature, ' +
        'relative humidity, dew point, pressure, wind speed, wind direction, global horizontal, direct normal, ' +
        'diffuse horizontal, cloud cover, pm25, no2, pollen, tvoc, co2)',
      'out.csv:6:51: header: expected each column once, got "wind speed" a second time',
    ]);
  });

  test('no place, and keys that are wrong', () => {
    const text = [
      '# latitud: 54',
      '# longitude: west',
      '# elevation: 35',
      '# typical: maybe',
      '# sun: guessed',
      HEADER,
      '2023-01-01T00:00Z,8,70,3',
      '2023-01-01T01:00Z,8,70,3',
    ].join('\n');
    expect(complaints(text)).toEqual([
      'out.csv: latitude: expected -90 to 90 degrees north, got none (say it in the file or beside it)',
      'out.csv: longitude: expected -180 to 180 degrees east, got none (say it in the file or beside it)',
      'out.csv:1:3: latitud: expected one of title, latitude, longitude, elevation, typical, sun, got "latitud" (did you mean "latitude"?)',
      'out.csv:2:14: longitude: expected a number, got "west"',
      'out.csv:4:12: typical: expected true or false, got "maybe"',
      'out.csv:5:8: sun: expected measured, split from global, made from cloud, invented, got "guessed"',
    ]);
  });

  test('no header', () => {
    expect(complaints('# title: nothing more\n')).toEqual([
      'out.csv:1:1: header: expected a header with the column "time", got nothing',
    ]);
    expect(complaints('# title: x\ntemperature,wind speed\n3,4\n')).toEqual([
      'out.csv:2:1: header: expected a header with the column "time", got "temperature,wind speed"',
    ]);
  });

  test('neither humidity nor wind', () => {
    const text = tidy('time,temperature', ['2023-01-01T00:00Z,8', '2023-01-01T01:00Z,8']);
    expect(complaints(text)).toEqual([
      'out.csv: columns: expected a wind speed, got none',
      'out.csv: columns: expected a relative humidity or a dew point, got neither',
    ]);
  });
});

describe('cells', () => {
  test('everything that is wrong, at once, in the order of the file', () => {
    const text = tidy(HEADER, [
      '2023-01-01T00:00Z,8,70,3',
      '2023-01-01 01:00,8,70,3',
      '2023-01-01T02:00Z,abc,170,-3',
      '2023-01-01T03:00Z,"8,5",70,3',
      '2023-02-30T04:00Z,8,70,3',
      '2023-01-01T05:00Z,61,70,3',
      '2023-01-01T06:00Z,63,70,3',
      '2023-01-01T07:00Z,8,999,3',
      '2023-01-01T08:00Z,8,70,3',
    ]);
    expect(complaints(text)).toEqual([
      'out.csv:8:1: time: expected a time with its zone, such as 2023-01-31T05:00Z or 2023-01-31T05:00+01:00, got "2023-01-01 01:00"',
      'out.csv:9:19: temperature: expected a number in °C, got "abc"',
      'out.csv:9:23: relative humidity: expected 0 to 105 %, got 170 (per cent, not a share of one)',
      'out.csv:9:27: wind speed: expected 0 to 75 m/s, got -3 (metres a second: 36 km/h is 10)',
      'out.csv:10:19: temperature: expected a number in °C, got "8,5" (a decimal comma needs a column map that says so, "decimal comma: true")',
      'out.csv:11:1: time: expected a time such as 2023-01-31T05:00Z, got "2023-02-30T04:00Z"',
      'out.csv:12:19: temperature: expected -90 to 60 °C, got 61 and so on to line 13 (a missing reading is an empty cell)',
      'out.csv:14:21: relative humidity: expected 0 to 105 %, got 999 (nines often mean "no reading": leave the cell empty)',
    ]);
  });

  test('Fahrenheit is called by its name', () => {
    const year = Array.from({ length: 240 }, (_, k) => 50 + 25 * Math.sin(k / 30));
    const [only, ...more] = complaints(tidyHours(year));
    expect(more).toEqual([]);
    expect(only).toBe(
      'out.csv:7:19: temperature: expected temperature in °C, got 25 to 75, half of them above 56.99 ' +
        '(this looks like Fahrenheit: read it with a column map whose unit is °F)',
    );
  });

  test('a hot desert is not taken for Fahrenheit', () => {
    const july = Array.from({ length: 240 }, (_, k) => 38 + 10 * Math.sin((2 * Math.PI * k) / 24));
    expect(complaints(tidyHours(july))).toEqual([]);
  });

  test('pressure in hPa', () => {
    const text = tidy(`${HEADER},pressure`, [
      '2023-01-01T00:00Z,8,70,3,1013',
      '2023-01-01T01:00Z,8,70,3,1012',
    ]);
    expect(complaints(text)).toEqual([
      'out.csv:7:26: pressure: expected 45000 to 110000 Pa, got 1013 and so on to line 8 (1013 hPa is 101300 Pa)',
    ]);
  });

  test('a dew point above the temperature', () => {
    const text = tidy('time,temperature,dew point,wind speed', [
      '2023-01-01T00:00Z,8,7,3',
      '2023-01-01T01:00Z,8,9.5,3',
      '2023-01-01T02:00Z,8,19,3',
    ]);
    expect(complaints(text)).toEqual([
      'out.csv:8:21: dew point: expected at most the temperature, 8 °C, got 9.5, and in 1 more',
    ]);
  });

  test('a last line that is cut off', () => {
    const whole = tidyHours(steady(24));
    expect(complaints(whole.slice(0, -6))).toEqual([
      'out.csv:30:20: last line: expected 4 cells, got 2 (the file looks cut off: fetch it again or delete this line)',
    ]);
  });

  test('beyond a hundred only the number of the rest', () => {
    const bad = Array.from({ length: 320 }, (_, k) => (k % 2 === 0 ? 'x' : 8));
    const all = complaints(tidyHours(bad));
    expect(all.length).toBe(101);
    expect(all.at(-1)).toBe('out.csv: expected no more than these, got 60 further problems');
  });
});

describe('times', () => {
  const rows = (hours: readonly number[]) => hours.map((k) => `${isoHour(k)},8,70,3`);

  test('an hour twice, a step back, half an hour', () => {
    const text = tidy(HEADER, [
      ...rows([0, 1, 1, 2, 3, 2, 3, 4]),
      '2023-01-01T04:30Z,8,70,3',
      ...rows([5, 6, 7, 8]),
    ]);
    expect(complaints(text)).toEqual([
      'out.csv:9:1: time: expected 2023-01-01T02:00Z, got 2023-01-01T01:00Z a second time (where summer time ends, local clocks repeat an hour: write UTC)',
      'out.csv:12:1: time: expected 2023-01-01T04:00Z, got 2023-01-01T02:00Z, which is earlier (rows must go forward in time)',
      'out.csv:15:1: time: expected 2023-01-01T05:00Z, got 2023-01-01T04:30Z, 30 minutes after the row before (the rows are 1 hour apart elsewhere)',
      'out.csv:16:1: time: expected 2023-01-01T05:30Z, got 2023-01-01T05:00Z, 30 minutes after the row before (the rows are 1 hour apart elsewhere)',
    ]);
  });

  test('the newest first', () => {
    expect(complaints(tidy(HEADER, rows([3, 2, 1, 0])))).toEqual([
      'out.csv:8:1: time: expected rows with the earliest first, got 2023-01-01T02:00Z after 2023-01-01T03:00Z (rows must go forward in time)',
    ]);
  });

  test('hours written as minutes', () => {
    const minutes = Array.from(
      { length: 24 },
      (_, k) => `2023-01-01T00:${String(k).padStart(2, '0')}Z,8,70,3`,
    );
    expect(complaints(tidy(HEADER, minutes))).toEqual([
      'out.csv:8:1: time: expected rows from 5 minutes to 3 hours apart, got 1 minute ' +
        '(if the second row means 01:00, its hours stand in the place of minutes)',
    ]);
  });

  test('a day a row', () => {
    expect(complaints(tidy(HEADER, rows([0, 24, 48])))).toEqual([
      'out.csv:8:1: time: expected rows from 5 minutes to 3 hours apart, got 1 day (daily values cannot drive a simulation by the hour)',
    ]);
  });

  test('a missing day', () => {
    const hours = Array.from({ length: 72 }, (_, k) => k).filter((k) => k < 24 || k >= 48);
    expect(complaints(tidy(HEADER, rows(hours)))).toEqual([
      'out.csv:31:1: temperature, wind speed, relative humidity: expected no gap longer than 3 hours, ' +
        'got no rows from 2023-01-02T00:00Z to 2023-01-02T23:00Z, 1 day ' +
        '(a longer gap is filled from the days around it only where the longest gap is raised)',
    ]);
  });

  test('four empty hours of one column', () => {
    const temperatures = [8, 8, '', '', '', '', 9, 9];
    expect(complaints(tidyHours(temperatures))).toEqual([
      'out.csv:9:19: temperature: expected no gap longer than 3 hours, ' +
        'got no readings from 2023-01-01T02:00Z to 2023-01-01T05:00Z, 4 hours ' +
        '(a longer gap is filled from the days around it only where the longest gap is raised)',
    ]);
  });

  test('a slip of a century does not eat the memory', () => {
    const text = tidy(HEADER, [...rows([0, 1, 2]), '2123-01-01T03:00Z,8,70,3']);
    expect(complaints(text)).toEqual([
      'out.csv:10:1: time: expected 2023-01-01T03:00Z, got 2123-01-01T03:00Z, more than a year later',
    ]);
  });

  test('a typical year that is none', () => {
    const text = tidyHours(steady(48)).replace('# invented', '# typical: true\n# invented');
    expect(complaints(text)).toEqual([
      'out.csv:55:1: time: expected a typical year of 365 days, got 2 days (leave "typical" away for measured weather of any length)',
    ]);
  });

  test('a single row', () => {
    expect(complaints(tidyHours([8]))).toEqual([
      'out.csv: time: expected at least two rows, got 1',
    ]);
  });
});
