import { expect, test } from 'vitest';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { compare } from '../../reference/compare.ts';

// Made-up hours in the layout: year month day hour, temperature, dew point, sea level pressure,
// wind direction and speed, sky, rain of one and six hours.
const HOURS = [
  '2023 01 31 22    55    31 10132   240    51     8     0 -9999',
  '2023 01 31 23   -12   -25 10130 -9999     0     4 -9999 -9999',
  '2023 02 01 00   -15 -9999 10128   350    26     0     0     3',
  '2023 02 01 01   -18   -30 10126    10    31    19     0 -9999',
];
const PLACE = { title: 'Saltmere', latitude: 54.2, longitude: -1.9, elevation: 35 };

test('numbers are tenths, -9999 is missing, the sky is a code', () => {
  const weather = readWeather(HOURS.join('\n'), '999990-99999-2023', PLACE);
  expect(weather).toMatchObject({
    ...PLACE,
    start: Date.UTC(2023, 0, 31, 22) / 1000,
    step: 3600,
    count: 4,
    periodic: false,
    sun: 'made from cloud',
  });
  [5.5, -1.2, -1.5, -1.8].forEach((t, k) => {
    expect(weather.temperature[k]).toBeCloseTo(t, 12);
  });
  [5.1, 0, 2.6, 3.1].forEach((u, k) => {
    expect(weather.windSpeed[k]).toBeCloseTo(u, 12);
  });
  expect([...weather.windDirection]).toEqual([240, Number.NaN, 350, 10]);
  expect(weather.notes.map(({ text }) => text)).toEqual([
    '2 cells with the code -9999 read as missing',
    '2023-02-01T00:00Z, 1 hour: dew point filled by straight lines',
    'pressure taken from sea level to the elevation',
    'sun made from cloud cover (Kasten and Czeplak) and split (Erbs): single hours are rough',
  ]);
});

test('pressure is taken from the sea to the place', () => {
  compare({
    topic: 'Weather files',
    what: 'pressure at 500 m where 1013.25 hPa is reported at sea level',
    unit: 'Pa',
    source: 'standard atmosphere as in ASHRAE Fundamentals (2017) ch. 1: 95461 Pa at 500 m',
    mark: 'published',
    expected: 95_461,
    got: readWeather(HOURS.map((line) => line.replace(/ 101\d\d /, ' 10132 ')).join('\n'), 'a', {
      ...PLACE,
      elevation: 500,
    }).pressure[0]!,
    tolerance: { absolute: 6 },
    because: 'pressure reported to 0.1 hPa',
  });
});

test('a file that says nothing of its place needs it said', () => {
  expect(() => readWeather(HOURS.join('\n'), '999990-99999-2023')).toThrow(
    '999990-99999-2023: latitude: expected -90 to 90 degrees north, got none (say it in the file or beside it)\n' +
      '999990-99999-2023: longitude: expected -180 to 180 degrees east, got none (say it in the file or beside it)\n' +
      '999990-99999-2023: elevation: expected -450 to 6000 m above the sea, got none (say it in the file or beside it)',
  );
});

test('says the place of what is wrong in the line as it stands', () => {
  const wrong = [
    HOURS[0],
    HOURS[1]!.replace('  -12', ' 6120'),
    '2023 02 30 00',
    HOURS[3]!.slice(0, 30),
  ];
  expect(() => readWeather(wrong.join('\n'), 'isd', PLACE)).toThrow(
    'isd:2:16: air temperature: expected -90 to 60 °C, got 612 (a missing reading is an empty cell)\n' +
      'isd:3:14: expected at least 10 cells, got 4\n' +
      'isd:4:31: last line: expected 10 cells, got 7 (the file looks cut off: fetch it again or delete this line)',
  );
});

test.each(['-1', '-1e400', '1e400', '1.5', '25', 'NaN'])('an hour of %s is none', (hour) => {
  const wrong = [HOURS[0], HOURS[1], HOURS[2]!.replace('02 01 00', `02 01 ${hour}`), HOURS[3]];
  expect(() => readWeather(wrong.join('\n'), 'isd', PLACE)).toThrow(
    `isd:3:1: time: expected year, month, day and hour, got "2023 02 01 ${hour}"`,
  );
});
