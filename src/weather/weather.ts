/**
 * The outdoor series of one place: evenly spaced, complete, checked, in SI units; never changed once
 * made, so that what is worked out from it may be kept with it.
 *
 * Two kinds of column, as in the files they come from:
 * - at an instant: number k holds at `start + k * step`; between instants values are interpolated;
 * - over an interval: number k is the mean of `start + k * step` to `start + (k + 1) * step`.
 */
export interface Weather {
  /** Title of the file: place, station, typical or measured. */
  readonly title: string;
  /** Latitude, north positive. [deg] */
  readonly latitude: number;
  /** Longitude, east positive. [deg] */
  readonly longitude: number;
  /** Elevation above sea level. [m] */
  readonly elevation: number;
  /** Instant of the first value. [s UTC] */
  readonly start: number;
  /** Spacing of the values. [s] */
  readonly step: number;
  /** Number of values in every column. */
  readonly count: number;
  /** True for a year that closes on itself (typical years), so that its end may precede its start. */
  readonly periodic: boolean;

  /** Air temperature, at an instant. [°C] */
  readonly temperature: Float64Array;
  /** Mass of vapour per mass of dry air, at an instant. [kg/kg] */
  readonly humidityRatio: Float64Array;
  /** Station pressure, at an instant. [Pa] */
  readonly pressure: Float64Array;
  /** Wind speed at 10 m, at an instant. [m/s] */
  readonly windSpeed: Float64Array;
  /** Direction the wind comes from, clockwise from north, at an instant; NaN where unknown. [deg] */
  readonly windDirection: Float64Array;
  /** Direct irradiance on a plane facing the sun, over an interval. [W/m2] */
  readonly directNormal: Float64Array;
  /** Diffuse irradiance on the horizontal, over an interval. [W/m2] */
  readonly diffuseHorizontal: Float64Array;
  /** Origin of the irradiances: measured or derived. */
  readonly sun: SunOrigin;

  /** Outdoor levels of species, over an interval, where the file has them; by species name. */
  readonly species: Readonly<Record<string, Float64Array>>;
  /** What a careful reader of the file should know: hours filled, codes met, columns derived. */
  readonly notes: readonly WeatherNote[];
}

/**
 * direct and diffuse measured (or of a typical year); split from global (Erbs); global made from cloud;
 * invented with the rest of the weather; or none at all.
 */
export type SunOrigin = 'measured' | 'split from global' | 'made from cloud' | 'invented' | 'none';

export interface WeatherNote {
  readonly id: string;
  readonly text: string;
}
