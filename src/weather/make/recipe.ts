/** What a synthetic year is made from. Lists hold twelve normals, January first. */
export interface WeatherRecipe {
  readonly title: string;
  /** Latitude, north positive. [deg] */
  readonly latitude: number;
  /** Longitude, east positive. [deg] */
  readonly longitude: number;
  /** Elevation above sea level. [m] */
  readonly elevation: number;
  readonly temperature: {
    /** Mean of the month. [°C] */
    readonly mean: readonly number[];
    /** Mean of each day's highest less its lowest. [K] */
    readonly dailyRange: readonly number[];
    /** Standard deviation of daily means about the season. [K] */
    readonly dayToDay: readonly number[];
    /** How much of a day's departure the next day keeps: correlation of neighbouring days. [-] */
    readonly persistence: number;
  };
  /** Mean of the month, over liquid water. [%] */
  readonly relativeHumidity: readonly number[];
  readonly wind: {
    /** Mean of the month at 10 m. [m/s] */
    readonly mean: readonly number[];
    readonly persistence: number;
    /** Prevailing wind direction, where it comes from, clockwise from north. [deg] */
    readonly prevailing: number;
  };
  readonly sun: {
    /** Mean daily sum of global irradiance on the horizontal. [kWh/m2] */
    readonly global?: readonly number[];
    /** Global irradiance over that outside the atmosphere, in place of `global`. [-] */
    readonly clearness?: readonly number[];
    /** Correlation of cloud from one day to the next. [-] */
    readonly persistence: number;
  };
  /** What nobody said and was taken as usual, in words with its value; the head of the year tells it. */
  readonly usual?: readonly string[];
}

/**
 * What is taken where a recipe does not say: own judgement, of lowlands in the westerlies. Inland the daily
 * range comes to 10 K and the days differ by 4 K in winter.
 */
export const USUAL_RECIPE = {
  /** [K] */
  dailyRange: 7,
  dayToDay: 3,
  /** [-] */
  persistence: { temperature: 0.75, wind: 0.5, sun: 0.45 },
  /** [deg] */
  prevailing: 240,
} as const;
