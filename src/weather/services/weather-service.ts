import type { Coordinates } from '../../units/coordinates.ts';

/** A public service that hands out weather: how to ask it, and what it asks of who uses its data. */
export interface WeatherService {
  /** Its name in sentences. */
  readonly name: string;
  /** Where it answers, without the path of a request; no slash at the end. */
  readonly address: string;
  readonly licence: string;
  readonly attribution: string;
  /** What it says it is for, where that is not everything. */
  readonly terms: string;
}

/** PVGIS of the Joint Research Centre of the European Commission. */
export const PVGIS: WeatherService = {
  name: 'PVGIS',
  address: 'https://re.jrc.ec.europa.eu/api/v5_3',
  licence: 'may be reused with the source named (Commission Decision 2011/833/EU)',
  attribution: 'PVGIS (c) European Union, https://joint-research-centre.ec.europa.eu/pvgis',
  terms: '',
};

/** Open-Meteo's archive of hourly reanalysis. */
export const ARCHIVE: WeatherService = {
  name: 'Open-Meteo archive',
  address: 'https://archive-api.open-meteo.com/v1',
  licence: 'CC BY 4.0, https://creativecommons.org/licenses/by/4.0/',
  attribution:
    'Weather data by Open-Meteo.com, https://open-meteo.com/; contains modified Copernicus ' +
    'Climate Change Service information (ERA5)',
  terms: 'free for non-commercial use',
};

/** First year of the archive. */
export const FIRST_YEAR = 1940;

/** Where a typical year of a place is had as CSV. @param address  of PVGIS */
export const typicalYearAt = (address: string, place: Coordinates): string =>
  `${address}/tmy?lat=${place.latitude}&lon=${place.longitude}&outputformat=csv`;

/** Where the irradiance of a year on the horizontal is had as CSV. @param address  of PVGIS */
export const sunOfYearAt = (address: string, place: Coordinates, year: number): string =>
  `${address}/seriescalc?lat=${place.latitude}&lon=${place.longitude}&startyear=${year}` +
  `&endyear=${year}&components=1&angle=0&aspect=0&usehorizon=1&outputformat=csv`;

/**
 * Where the hours of a year are had as JSON, in UTC, with the day after it, whose first row has the
 * sun of the year's last hour.
 *
 * @param address  of the archive
 */
export const hoursOfYearAt = (address: string, place: Coordinates, year: number): string =>
  `${address}/archive?latitude=${place.latitude}&longitude=${place.longitude}` +
  `&start_date=${year}-01-01&end_date=${year + 1}-01-01&timezone=GMT&wind_speed_unit=ms` +
  `&hourly=${ARCHIVE_COLUMNS.map(([name]) => name).join(',')}`;

/** Columns of the archive: name, unit as it writes it, column of the own layout, factor to its unit. */
export const ARCHIVE_COLUMNS = [
  ['temperature_2m', '°C', 'temperature', 1],
  ['relative_humidity_2m', '%', 'relative humidity', 1],
  ['surface_pressure', 'hPa', 'pressure', 100],
  ['wind_speed_10m', 'm/s', 'wind speed', 1],
  ['wind_direction_10m', '°', 'wind direction', 1],
  ['direct_normal_irradiance', 'W/m²', 'direct normal', 1],
  ['diffuse_radiation', 'W/m²', 'diffuse horizontal', 1],
] as const;

/** A place as it is sent: to a hundredth of a degree, some kilometre. */
export const rounded = ({ latitude, longitude }: Coordinates): Coordinates => ({
  latitude: Number(latitude.toFixed(2)),
  longitude: Number(longitude.toFixed(2)),
});
