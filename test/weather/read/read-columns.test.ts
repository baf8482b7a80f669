import { describe, expect, test } from 'vitest';
import type { ColumnMap } from '../../../src/weather/read/column-map.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';

const PLACE = { latitude: 54.2, longitude: -1.9, elevation: 35 };

const AMERICAN: ColumnMap = {
  time: { column: ['Day', 'Clock'], format: 'MM/DD/YYYY hh:mm A', utcOffset: -5, stamp: 'ending' },
  quantities: {
    temperature: { column: 'Temp', unit: '°F' },
    'relative humidity': { column: 'Hum', unit: 'share' },
    pressure: { column: 'Baro', unit: 'inHg' },
    'wind speed': { column: 'Wind', unit: 'mph' },
    'global horizontal': { column: 'Solar' },
  },
};

test('Fahrenheit, miles an hour, inches of mercury, AM and PM, hour ending, date and time apart', () => {
  const text = [
    'Day,Clock,Temp,Hum,Baro,Wind,Solar',
    '1/31/2023,11:00 AM,50,0.8,29.92,10,250',
    '1/31/2023,12:00 PM,59,0.7,29.92,20,300',
    '1/31/2023,1:00 PM,68,0.6,29.92,0,350',
  ].join('\n');
  const weather = readWeather(text, 'a.csv', { ...PLACE, columns: AMERICAN });
  expect(weather.start).toBe(Date.UTC(2023, 0, 31, 15) / 1000); // the hour before 11:00, five behind
  [10, 10, 15].forEach((t, k) => {
    expect(weather.temperature[k]).toBeCloseTo(t, 12);
  });
  expect(weather.pressure[0]).toBeCloseTo(101_320.75, 1);
  expect(weather.windSpeed[2]).toBeCloseTo(8.9408, 12);
  expect(weather.sun).toBe('split from global');
});

test('decimal commas that no map tells of are one problem, not one a cell and a gap', () => {
  const text = ['Zeit;Luft;Wind', '2023-01-01T00:00Z;-4,5;3,0', '2023-01-01T01:00Z;-5;3,5'];
  const columns: ColumnMap = {
    time: { column: 'Zeit' },
    quantities: { temperature: { column: 'Luft' }, 'wind speed': { column: 'Wind' } },
  };
  expect(() => readWeather(text.join('\n'), 'a.csv', { ...PLACE, columns })).toThrow(
    /^a\.csv:2:19: Luft: expected a number in °C, got "-4,5", and 2 more like it \(a decimal comma needs a column map that says so, "decimal comma: true"\)$/m,
  );
});

test('semicolons, decimal commas, lines above the header, codes of its own, km/h and hPa', () => {
  const text = [
    'Station 7;;',
    'Zeit;Luft;Feuchte;Druck;Wind',
    '31.01.2023 23:00;4,5;80;1000;36',
    '31.01.2023 24:00;--;80;1000;36',
    '01.02.2023 01:00;6,5;80;1000;36',
  ].join('\n');
  const columns: ColumnMap = {
    time: { column: 'Zeit', format: 'DD.MM.YYYY hh:mm', utcOffset: 1, stamp: 'instant' },
    quantities: {
      temperature: { column: 'Luft', unit: 'degC' },
      'relative humidity': { column: 'Feuchte' },
      pressure: { column: 'Druck', unit: 'hPa' },
      'wind speed': { column: 'Wind', unit: 'km/h' },
    },
    decimalComma: true,
    skipLines: 1,
    missing: ['--'],
  };
  const weather = readWeather(text, 'a.csv', { ...PLACE, columns });
  expect(weather.start).toBe(Date.UTC(2023, 0, 31, 22) / 1000);
  expect([...weather.temperature]).toEqual([4.5, 5.5, 6.5]);
  expect(weather.pressure[0]).toBe(100_000);
  expect(weather.windSpeed[0]).toBeCloseTo(10, 12);
});

describe('what a stamp means', () => {
  const text = (stamp: 'beginning' | 'ending' | 'instant', airIsMean: boolean) =>
    readWeather(
      [
        't,T,h,w,d,b',
        ...[0, 1, 2, 3].map((k) => `${1_700_000_000 - 800 + k * 3600},${k},80,3,${k * 100},0`),
      ].join('\n'),
      'a.csv',
      {
        ...PLACE,
        columns: {
          time: { column: 't', format: 'epoch s', stamp, airIsMean },
          quantities: {
            temperature: { column: 'T' },
            'relative humidity': { column: 'h' },
            'wind speed': { column: 'w' },
            'diffuse horizontal': { column: 'd' },
            'direct normal': { column: 'b' },
          },
        },
      },
    );
  const FIRST = 1_700_000_000 - 800;

  test.each([
    ['beginning', false, 0, [0, 1, 2, 3], [0, 100, 200, 300]],
    ['beginning', true, 0, [0, 0.5, 1.5, 2.5], [0, 100, 200, 300]],
    ['ending', false, -3600, [0, 0, 1, 2], [0, 100, 200, 300]],
    ['ending', true, -3600, [0, 0.5, 1.5, 2.5], [0, 100, 200, 300]],
    ['instant', false, 0, [0, 1, 2, 3], [50, 150, 250, 300]],
  ] as const)('%s, air is mean: %s', (stamp, airIsMean, shift, temperature, diffuse) => {
    const weather = text(stamp, airIsMean);
    expect(weather.start).toBe(FIRST + shift);
    expect([...weather.temperature]).toEqual(temperature);
    expect([...weather.diffuseHorizontal]).toEqual(diffuse);
  });
});

describe('a wrong map', () => {
  const text = 'time,T,RH,wind\n2023-01-01T00:00,8,70,3\n2023-01-01T01:00,8,70,3\n';
  const quantities: ColumnMap['quantities'] = {
    temperature: { column: 'T' },
    'relative humidity': { column: 'RH' },
    'wind speed': { column: 'wind' },
  };

  test('everything that can be told without the file', () => {
    const columns = {
      time: { column: 'time', format: 'HH o clock', utcOffset: 27, stamp: 'begining' },
      quantities: {
        temprature: { column: 'T' },
        'wind speed': { column: 'wind', unit: 'knot s' },
        pressure: { column: 'p', unit: 'bananas' },
      },
    } as unknown as ColumnMap;
    expect(() => readWeather(text, 'a.csv', { ...PLACE, columns })).toThrow(
      [
        'column map: time.format: expected "iso", "epoch s", "epoch ms", or a pattern with YYYY, MM, DD and hh, got "HH o clock"',
        'column map: time.utcOffset: expected hours ahead of UTC, -13 to 14, got 27',
        'column map: time.stamp: expected beginning, ending, instant, got "begining" (did you mean "beginning"?)',
        'column map: quantities.temprature: did you mean "temperature"? Expected temperature, relative humidity, dew point, ' +
          'pressure, wind speed, wind direction, global horizontal, direct normal, diffuse horizontal, cloud cover, pm25, ' +
          'no2, pollen, tvoc, co2, got "temprature"',
        'column map: quantities.wind speed.unit: expected m/s, km/h, mph, knots, ft/s, got "knot s" (did you mean "knots"?)',
        'column map: quantities.pressure.unit: expected Pa, hPa, kPa, mbar, mmHg, inHg, got "bananas"',
      ].join('\n'),
    );
  });

  test('columns that the file has not', () => {
    const columns = {
      time: { column: 'times' },
      quantities: { ...quantities, co2: { column: 'CO2' } },
    };
    expect(() => readWeather(text, 'a.csv', { ...PLACE, columns })).toThrow(
      'a.csv:1:1: time: expected a column "times", got the columns time, T, RH, wind (did you mean "time"?)\n' +
        'a.csv:1:1: co2: expected a column "CO2", got the columns time, T, RH, wind',
    );
  });

  test('times without a zone', () => {
    const columns = { time: { column: 'time' }, quantities };
    expect(() => readWeather(text, 'a.csv', { ...PLACE, columns })).toThrow(
      'a.csv:2:1: time: expected a time with its zone (or a column map with the offset from UTC), got "2023-01-01T00:00"',
    );
    const mapped = { ...columns, time: { column: 'time', utcOffset: 0 } };
    expect(readWeather(text, 'a.csv', { ...PLACE, columns: mapped }).count).toBe(2);
  });
});

test('a gap of half a day is filled from the days around only where that is asked for', () => {
  const hours = Array.from({ length: 72 }, (_, k) => {
    const stamp = new Date(Date.UTC(2023, 0, 1, k)).toISOString();
    const gap = k >= 30 && k < 42;
    return `${stamp.slice(0, 16)}Z,${gap ? '' : (k % 24) + Math.floor(k / 24)},80,3`;
  });
  const text = ['time,T,RH,wind', ...hours].join('\n');
  const columns: ColumnMap = {
    time: { column: 'time' },
    quantities: {
      temperature: { column: 'T' },
      'relative humidity': { column: 'RH' },
      'wind speed': { column: 'wind' },
    },
  };
  expect(() => readWeather(text, 'a.csv', { ...PLACE, columns })).toThrow('12 hours');
  const filled = readWeather(text, 'a.csv', { ...PLACE, columns, longestGap: 12 });
  expect([...filled.temperature.slice(29, 43)]).toEqual([
    6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19,
  ]);
  expect(filled.notes[0]!.text).toBe(
    '2023-01-02T06:00Z, 12 hours: temperature filled by the mean of the same hours of the days around',
  );
});
