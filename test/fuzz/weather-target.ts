import { describeWeather } from '../../src/weather/describe/describe-weather.ts';
import type { ColumnMap } from '../../src/weather/read/column-map.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { writeOwnCsv } from '../../src/weather/write-own-csv.ts';
import { mutateText } from './mutate.ts';
import type { Target } from './targets.ts';
import { wrongWith } from './verdict.ts';

/** Two days of invented hours in every layout, with lines, characters and numbers changed. */
export const weatherTexts: Target = {
  make: (choose) => mutateText(choose.pick(LAYOUTS), choose),
  judge: (text) =>
    wrongWith(() => {
      const options = { ...PLACE, ...(text.includes('when;') && { columns: COLUMNS }) };
      const weather = readWeather(text, 'case.csv', options);
      const described = JSON.stringify(describeWeather(weather));
      if (/Infinity|NaN/.test(described)) return 'described by what is no number';
      readWeather(writeOwnCsv(weather), 'again.csv', PLACE);
      return wrongSeries(weather);
    }),
};

function wrongSeries({ count, temperature, pressure, windSpeed }: Weather): string | null {
  for (let k = 0; k < count; k++) {
    if (!(temperature[k]! >= -90 && temperature[k]! <= 60)) return `temperature ${temperature[k]}`;
    if (!(pressure[k]! > 0)) return `pressure ${pressure[k]}`;
    if (!(windSpeed[k]! >= 0)) return `wind ${windSpeed[k]}`;
  }
  return null;
}

const PLACE = { title: 'Nowhere', latitude: 54.2, longitude: -1.9, elevation: 35 };

const COLUMNS: ColumnMap = {
  delimiter: ';',
  decimalComma: true,
  time: { column: 'when', format: 'DD.MM.YYYY hh:mm' },
  quantities: {
    temperature: { column: 'T' },
    'relative humidity': { column: 'RH' },
    'wind speed': { column: 'wind' },
  },
};

const two = (n: number): string => String(n).padStart(2, '0');
const hours = (line: (hour: number, day: number) => string): string[] =>
  Array.from({ length: 48 }, (_, k) => line(k % 24, 1 + Math.floor(k / 24)));

const OWN = [
  ...['# title: Nowhere', '# latitude: 54.2', '# longitude: -1.9', '# elevation: 35'],
  'time,temperature,relative humidity,wind speed,wind direction,cloud',
  ...hours((h, d) => `2023-01-${two(d)}T${two(h)}:00Z,${h % 7}.5,80,3.1,${15 * h},${h % 9}`),
].join('\n');

const ISD_LITE = hours(
  (h, d) => `2023 01 ${two(d)} ${two(h)}    55    31 10132   240    51     8     0 -9999`,
).join('\n');

const COLUMN_FILE = [
  'when;T;RH;wind',
  ...hours((h, d) => `${two(d)}.01.2023 ${two(h)}:00;${h % 7},5;80;3,1`),
].join('\n');

const PVGIS = [
  ...['Latitude (decimal degrees): 45.500', 'Longitude (decimal degrees): 8.250'],
  ...['Elevation (m): 210.0', 'Irradiance Time Offset (h): 0.25', 'month,year', '1,2018'],
  'time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP',
  ...hours((h, d) => `201801${two(d)}:${two(h)}00,${h}.5,80.0,0,0,0,300,2.5,180.0,99000.0`),
  ...['', 'T2m: 2-m air temperature (degree Celsius)', '', 'PVGIS (c) European Union'],
].join('\r\n');

const TMY3 = [
  '999990,"NOWHERE, PIER",XX,-5.0,43.000,-78.000,200',
  'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,DNI (W/m^2),DNI source,' +
    'DHI (W/m^2),Dry-bulb (C),Dry-bulb source,Dew-point (C),RHum (%),Pressure (mbar),Wdir (degrees),Wspd (m/s)',
  ...hours((h, d) => `01/${two(d)}/1980,${two(h + 1)}:00,0,0,1,0,1,0,${h}.0,A,-2.0,50,990,270,3.1`),
].join('\r\n');

const LAYOUTS = [OWN, ISD_LITE, COLUMN_FILE, PVGIS, TMY3];
