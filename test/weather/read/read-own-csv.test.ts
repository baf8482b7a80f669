import { describe, expect, test } from 'vitest';
import { vapourPressureFromHumidityRatio } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { relativeHumidity } from '../../../src/physics/moist-air/relative-humidity.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { writeOwnCsv } from '../../../src/weather/write-own-csv.ts';
import { compare } from '../../reference/compare.ts';
import { tidy } from '../tidy-text.ts';

describe('the tidy layout', () => {
  test('is read as it stands', () => {
    const weather = readWeather(
      tidy(
        'time,temperature,relative humidity,pressure,wind speed,wind direction,direct normal,diffuse horizontal,co2',
        [
          '2023-06-01T10:00Z,14.5,70,100900,3.5,240,310,180,421',
          '2023-06-01T11:00Z,15.25,66,100880,4,,0,95,420',
          '2023-06-01T12:00Z,16,61,100860,4.5,250,-3,0,419',
        ],
      ),
      'june.csv',
    );
    expect(weather).toMatchObject({
      title: 'Saltmere',
      latitude: 54.2,
      longitude: -1.9,
      elevation: 35,
      start: Date.UTC(2023, 5, 1, 10) / 1000,
      step: 3600,
      count: 3,
      periodic: false,
      sun: 'measured',
      notes: [],
    });
    expect([...weather.temperature]).toEqual([14.5, 15.25, 16]);
    expect([...weather.pressure]).toEqual([100_900, 100_880, 100_860]);
    expect([...weather.windSpeed]).toEqual([3.5, 4, 4.5]);
    expect([...weather.windDirection]).toEqual([240, Number.NaN, 250]);
    expect([...weather.directNormal]).toEqual([310, 0, 0]);
    expect([...weather.diffuseHorizontal]).toEqual([180, 95, 0]);
    expect([...weather.species['co2']!]).toEqual([421, 420, 419]);
  });

  test('times may stand in any zone', () => {
    const rows = ['2023-06-01T12:00+02:00,14,70,3', '2023-06-01T10:30Z,14,70,3'];
    const weather = readWeather(tidy('time,temperature,relative humidity,wind speed', rows), 'a');
    expect(weather.start).toBe(Date.UTC(2023, 5, 1, 10) / 1000);
    expect(weather.step).toBe(1800);
  });

  test('relative humidity is over liquid water also in frost', () => {
    const rows = ['2023-01-01T00:00Z,-10,80,3', '2023-01-01T01:00Z,-10,80,3'];
    const weather = readWeather(tidy('time,temperature,relative humidity,wind speed', rows), 'a');
    const vapour = vapourPressureFromHumidityRatio(weather.humidityRatio[0]!, weather.pressure[0]!);
    compare({
      topic: 'Weather files',
      what: 'vapour pressure of air reported as -10 °C and 80 %',
      unit: 'Pa',
      source:
        'American Meteorological Society, Glossary: relative humidity is over liquid water; 286.5 Pa at -10 °C by Murphy and Koop 2005, eq. 10 (metformel.de/Dampfdruck_e.php)',
      mark: 'published',
      expected: 0.8 * 286.5,
      got: vapour,
      tolerance: { relative: 0.001 },
      because: 'formulas of supercooled water differ by a part in a thousand',
    });
    expect(relativeHumidity(vapour, -10)).toBeGreaterThan(85); // over ice it is damper than it reads
  });

  test('dew point serves where there is no relative humidity, and where that is missing', () => {
    const head = 'time,temperature,dew point,relative humidity,wind speed';
    const weather = readWeather(
      tidy(head, ['2023-01-01T00:00Z,12,12,,3', '2023-01-01T01:00Z,12,,100,3']),
      'a',
    );
    expect(weather.humidityRatio[0]).toBeCloseTo(weather.humidityRatio[1]!, 12);
  });

  test('a little beyond saturated is read as saturated, and said', () => {
    const rows = ['2023-01-01T00:00Z,12,101.5,3', '2023-01-01T01:00Z,12,100,3'];
    const weather = readWeather(tidy('time,temperature,relative humidity,wind speed', rows), 'a');
    expect(weather.humidityRatio[0]).toBe(weather.humidityRatio[1]);
    expect(weather.notes.map(({ text }) => text)).toEqual([
      '1 relative humidity above 100 % read as 100 %',
      'no pressure in the file: 100905 Pa from the elevation',
      'no sun and no cloud in the file: the sun never shines',
    ]);
  });

  test('what is written is what was read, to the rounding of the layout', () => {
    const head =
      'time,temperature,relative humidity,pressure,wind speed,wind direction,direct normal,diffuse horizontal,pm25';
    const rows = [
      '2023-06-01T10:00Z,14.5,70.1,100900,3.5,240,310,180,7.5',
      '2023-06-01T11:00Z,-0.25,66,100880,4,,0,95,8',
    ];
    const csv = writeOwnCsv(readWeather(tidy(head, rows), 'a'));
    expect(csv.split('\n').slice(-4)).toEqual([head, ...rows, '']);
    expect(writeOwnCsv(readWeather(csv, 'b'))).toBe(csv);
  });

  test('a sun that was derived or made up is not called measured by the file written of it', () => {
    const rows = ['2023-06-01T10:00Z,14,70,3,600', '2023-06-01T11:00Z,14,70,3,600'];
    const head = 'time,temperature,relative humidity,wind speed,global horizontal';
    const csv = writeOwnCsv(readWeather(tidy(head, rows), 'a'));
    expect(csv).toContain('\n# sun: split from global\n');
    expect(readWeather(csv, 'b').sun).toBe('split from global');
    const invented = csv.replace('split from global', 'invented');
    expect(readWeather(invented, 'c').sun).toBe('invented');
  });

  test('carries its notes along in its head', () => {
    const rows = ['2023-06-01T10:00Z,14,70,3', '2023-06-01T11:00Z,14,70,3'];
    const csv = writeOwnCsv(
      readWeather(tidy('time,temperature,relative humidity,wind speed', rows), 'a'),
    );
    expect(csv).toContain('# note: no pressure in the file: 100905 Pa from the elevation\n');
    expect(csv).not.toContain('direct normal');
  });

  test('what the person says of the place overrules the file', () => {
    const text = tidy('time,temperature,relative humidity,wind speed', [
      '2023-06-01T10:00Z,14,70,3',
      '2023-06-01T11:00Z,14,70,3',
    ]);
    expect(readWeather(text, 'a', { elevation: 500, title: 'up' })).toMatchObject({
      title: 'up',
      elevation: 500,
      latitude: 54.2,
    });
  });

  test('byte order mark and Windows line ends do not matter', () => {
    const text = tidy('time,temperature,relative humidity,wind speed', [
      '2023-06-01T10:00Z,14,70,3',
      '2023-06-01T11:00Z,14,70,3',
    ]);
    const windows = `\ufeff${text.replaceAll('\n', '\r\n')}`;
    expect(readWeather(windows, 'a')).toEqual(readWeather(text, 'a'));
  });

  test('the sun comes from the best columns there are', () => {
    const origin = (names: string, cells: string) =>
      readWeather(
        tidy(`time,temperature,relative humidity,wind speed${names}`, [
          `2023-06-01T11:00Z,14,70,3${cells}`,
          `2023-06-01T12:00Z,14,70,3${cells}`,
        ]),
        'a',
      );
    const split = origin(',global horizontal', ',600');
    expect(split.sun).toBe('split from global');
    expect(split.directNormal[0]).toBeGreaterThan(100);
    const cloudless = origin(',cloud cover', ',0');
    expect(cloudless.sun).toBe('made from cloud');
    expect(cloudless.directNormal[0]).toBeGreaterThan(
      origin(',cloud cover', ',100').directNormal[0]!,
    );
    expect(origin('', '').sun).toBe('none');
    const two = origin(',global horizontal,diffuse horizontal', ',600,200');
    const back = origin(',global horizontal,direct normal', `,600,${two.directNormal[0]}`);
    expect(back.diffuseHorizontal[0]).toBeCloseTo(200, 9);
    expect(two.notes.at(-1)!.text).toBe(
      'direct is global less diffuse, over the mean sine of the sun',
    );
  });

  test('a column can be left out', () => {
    const text = tidy('time,temperature,relative humidity,wind speed,cloud cover', [
      '2023-06-01T10:00Z,14,70,3,50',
      '2023-06-01T11:00Z,14,70,3,50',
    ]);
    expect(readWeather(text, 'a', { leaveOut: ['cloud cover'] }).sun).toBe('none');
  });
});
