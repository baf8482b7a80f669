/*
 * Answers in the shape that the services' public documentation shows; every number is invented:
 * a day of 5 to 15 °C, repeated, with a sun of half a sine from 6 to 18 h.
 */

const HOUR = 3_600_000;
const hoursOf = (year: number) => (Date.UTC(year + 1, 0) - Date.UTC(year, 0)) / HOUR;
const warmth = (hour: number) => 10 - 5 * Math.cos((2 * Math.PI * hour) / 24);
/** Sun at a time of day; 0 at night. [W/m2] */
export const sunAt = (hour: number): number =>
  Math.max(0, 400 * Math.sin((Math.PI * ((((hour % 24) + 24) % 24) - 6)) / 12));

/** A typical year as PVGIS writes it in CSV, with the lines of its head and legend. */
export function typicalYear(latitude = 54.2, longitude = -1.9): string {
  const rows = Array.from({ length: 8760 }, (_, k) => {
    const date = new Date(Date.UTC(2023, 0, 1, k));
    const [day = '', time = ''] = date.toISOString().split('T');
    const stamp = `${2005 + date.getUTCMonth()}${day.slice(5).replace('-', '')}:${time.slice(0, 2)}00`;
    const sun = sunAt(k % 24).toFixed(1);
    const air = `${warmth(k % 24).toFixed(2)},80.0`;
    return `${stamp},${air},${sun},${sun},${sun},300.0,2.5,180.0,99000.0`;
  });
  const months = Array.from({ length: 12 }, (_, month) => `${month + 1},${2005 + month}`);
  return [
    `Latitude (decimal degrees): ${latitude.toFixed(3)}`,
    `Longitude (decimal degrees): ${longitude.toFixed(3)}`,
    'Elevation (m): 35.0',
    'Irradiance Time Offset (h): 0.1761',
    ...['month,year', ...months],
    'time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP',
    ...rows,
    ...['', 'T2m: 2-m air temperature (degree Celsius)', 'RH: relative humidity (%)', ''],
    'PVGIS (c) European Union, 2001-2026',
  ].join('\r\n');
}

/** The irradiance of a year on the horizontal as PVGIS writes it: ten minutes past each hour. */
export function sunOfYear(year: number): string {
  const rows = Array.from({ length: hoursOf(year) }, (_, k) => {
    const text = new Date(Date.UTC(year, 0, 1, k, 10)).toISOString();
    const stamp = `${text.slice(0, 10).replaceAll('-', '')}:${text.slice(11, 13)}10`;
    const sun = (sunAt((k % 24) + 1 / 6) / 2).toFixed(2);
    return `${stamp},${sun},${sun},0.0,0.0,10.0,2.5,0.0`;
  });
  return [
    'Latitude (decimal degrees):\t54.200',
    'Longitude (decimal degrees):\t-1.900',
    'Elevation (m):\t35',
    'Radiation database:\tPVGIS-SARAH3',
    ...['', 'Slope: 0 deg.', 'Azimuth: 0 deg.'],
    'time,Gb(i),Gd(i),Gr(i),H_sun,T2m,WS10m,Int',
    ...rows,
    ...['', 'Gb(i): Beam (direct) irradiance on the inclined plane (W/m2)', ''],
    'PVGIS (c) European Union, 2001-2026',
  ].join('\r\n');
}

/** A year and a day of hours as the archive answers, as values that become JSON. */
export function archiveHours(year: number) {
  const count = hoursOf(year) + 24;
  const list = (value: (hour: number) => number) =>
    Array.from({ length: count }, (_, k) => Number(value(k % 24).toFixed(1)));
  const before = (hour: number) => sunAt(hour - 0.5); // means of the hour that ends
  return {
    latitude: 54.19,
    longitude: -1.88,
    generationtime_ms: 12.3,
    utc_offset_seconds: 0,
    timezone: 'GMT',
    timezone_abbreviation: 'GMT',
    elevation: 35,
    hourly_units: {
      time: 'iso8601',
      temperature_2m: '°C',
      relative_humidity_2m: '%',
      surface_pressure: 'hPa',
      wind_speed_10m: 'm/s',
      wind_direction_10m: '°',
      direct_normal_irradiance: 'W/m²',
      diffuse_radiation: 'W/m²',
    },
    hourly: {
      time: Array.from({ length: count }, (_, k) =>
        new Date(Date.UTC(year, 0, 1, k)).toISOString().slice(0, 16),
      ),
      temperature_2m: list(warmth) as (number | null)[],
      relative_humidity_2m: list(() => 80),
      surface_pressure: list(() => 990),
      wind_speed_10m: list(() => 2.5),
      wind_direction_10m: list(() => 180),
      direct_normal_irradiance: list(before),
      diffuse_radiation: list((hour) => before(hour) / 4),
    },
  };
}
