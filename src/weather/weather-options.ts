import type { Quantity } from './quantity.ts';
import type { ColumnMap } from './read/column-map.ts';

/** Known layouts; "columns" is any CSV described by a column map. */
export type WeatherKind = 'own' | 'tmy3' | 'pvgis' | 'isd-lite' | 'columns';

/** What the person may say beside the file; what the file itself says about its place is overruled. */
export interface WeatherOptions {
  /** Layout, where it should not be guessed. */
  readonly kind?: WeatherKind;
  readonly title?: string;
  /** Latitude, north positive. [deg] */
  readonly latitude?: number;
  /** Longitude, east positive. [deg] */
  readonly longitude?: number;
  /** Elevation above sea level. [m] */
  readonly elevation?: number;
  /** How to read a file of no known layout. */
  readonly columns?: ColumnMap;
  /** Columns of the file to ignore, such as a cloud cover full of holes. */
  readonly leaveOut?: readonly Quantity[];
  /**
   * Longest gap to fill. [h] Up to 3 h (the default) by straight lines; a longer one, up to 48 h and
   * only if asked for, by the mean of the same hours of the days around it.
   */
  readonly longestGap?: number;
}

/** Gaps that straight lines may bridge. [h] */
export const SHORT_GAP = 3;
/** No gap beyond this is ever filled. [h] */
export const LONGEST_GAP = 48;
