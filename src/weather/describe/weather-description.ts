import type { SunOrigin, WeatherNote } from '../weather.ts';

/** What a series holds, in figures and words. Units are in the names. */
export interface WeatherDescription {
  readonly title: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation_m: number;
  readonly from: string;
  readonly to: string;
  readonly hours: number;
  readonly step_minutes: number;
  readonly typical: boolean;
  readonly temperature: {
    readonly mean_c: number;
    readonly lowest_c: number;
    readonly lowest_at: string;
    readonly highest_c: number;
    readonly highest_at: string;
    readonly hours_below_0_c: number;
  };
  readonly humidity: HumidityMeans;
  readonly wind: {
    readonly mean_m_per_s: number;
    readonly highest_m_per_s: number;
    /** One of eight points of the compass; null where no direction is known. */
    readonly prevailing: string | null;
  };
  readonly sun: {
    readonly origin: SunOrigin;
    readonly global_kwh_per_m2: number;
    readonly direct_share: number;
  };
  readonly degree_days: readonly DegreeDayFigures[];
  readonly months: readonly MonthFigures[];
  readonly notes: readonly WeatherNote[];
  readonly words: readonly string[];
}

export interface HumidityMeans {
  readonly mean_relative_humidity_pct: number;
  readonly mean_vapour_pressure_pa: number;
  readonly mean_vapour_density_g_per_m3: number;
}

/** Degree-days by three ways of counting. [K d] */
export interface DegreeDayFigures {
  readonly base_c: number;
  readonly heating: DegreeDayWays;
  readonly cooling: DegreeDayWays;
}

interface DegreeDayWays {
  readonly by_daily_mean: number;
  readonly by_max_min: number;
  readonly by_hour: number;
}

export interface MonthFigures extends HumidityMeans {
  /** "2016-05", or "05" in a typical year. */
  readonly month: string;
  readonly hours: number;
  readonly mean_c: number;
  readonly lowest_c: number;
  readonly highest_c: number;
  readonly global_kwh_per_m2_day: number;
  readonly mean_wind_m_per_s: number;
  /** Base 15.5 °C, by daily means; days of the place. [K d] */
  readonly heating_degree_days: number;
}
