import type { DayInputs } from '../control/day-inputs.ts';
import type { Household } from '../control/household.ts';
import type { Home } from '../home/home.ts';
import type { Weather } from '../weather/weather.ts';
import type { Model } from './layout/model.ts';
import type { Outdoors } from './outdoors/outdoors.ts';
import type { Season } from './outdoors/season.ts';
import type { SunSeries } from './outdoors/sun-series.ts';
import type { Sunlight } from './outdoors/sunlight.ts';

/**
 * What all runs of one home under one weather have in common: its layout, the sun on it, and the days
 * that runs have walked so far. Runs read it and change nothing that another run would see.
 */
export interface Preparation {
  readonly home: Home;
  readonly weather: Weather;
  readonly dt: number;
  /** Laid out and never stepped. */
  readonly model: Model;
  readonly sun: SunSeries;
  readonly sunlight: Sunlight;
  readonly season: Season;
  readonly saturation: (temperature: number) => number;
  /** By the instant at which the weather of a day is looked up [s UTC]. */
  readonly outdoors: Map<number, Outdoors>;
  /** Of each household, by the instant at which a day begins [s UTC]. */
  readonly days: WeakMap<Household, Map<number, DayInputs>>;
}
