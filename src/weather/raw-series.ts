import type { Quantity } from './quantity.ts';
import type { TextTable } from './text-table.ts';
import type { SunOrigin, WeatherNote } from './weather.ts';

/** What a reader found: rows as they stand, in the units of `QUANTITIES`, nothing checked yet. */
export interface RawSeries {
  readonly table: TextTable;
  readonly place: Place;
  /** Months of several years sewn together: the times stand in one year and the end meets the start. */
  readonly typical: boolean;
  /** Stamp of each row. [s UTC] */
  readonly time: readonly number[];
  /** Line of each row, counted from 1. */
  readonly line: readonly number[];
  readonly columns: ReadonlyMap<Quantity, RawColumn>;
  readonly stamps: Stamps;
  /** Pressure is reduced to sea level, as weather services exchange it. */
  readonly pressureAtSeaLevel: boolean;
  /** Where direct and diffuse irradiance come from, where the file says so; otherwise measured. */
  readonly sun?: SunOrigin | undefined;
  readonly notes: readonly WeatherNote[];
}

/** Position of a weather file's place; NaN where not given. */
export interface Place {
  readonly title: string;
  /** [deg] */
  readonly latitude: number;
  /** [deg] */
  readonly longitude: number;
  /** [m] */
  readonly elevation: number;
}

export interface RawColumn {
  /** One a row; NaN where the cell says nothing. */
  readonly values: Float64Array;
  /** Name of the column as the file has it. */
  readonly name: string;
  /** Which cell of a line, counted from 0. */
  readonly cell: number;
}

/** What the time of a row means. */
export interface Stamps {
  /** For means over an interval: where in it the stamp stands; or a spot value. */
  readonly interval: 'beginning' | 'ending' | 'instant';
  /** How long after the stamp a spot value was taken. [s] */
  readonly spotDelay: number;
  /** True where temperature, humidity and wind too are means of that interval. */
  readonly airIsMean: boolean;
}
