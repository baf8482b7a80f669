import { byName, MOST_HARMFUL_FIRST } from '../species/species-lists.ts';
import type { SpeciesName } from '../species/species-table.ts';

/** What a column of an outdoor file can be. Names as the roombalance CSV writes them. */
export type Quantity =
  | 'temperature'
  | 'relative humidity'
  | 'dew point'
  | 'pressure'
  | 'wind speed'
  | 'wind direction'
  | 'global horizontal'
  | 'direct normal'
  | 'diffuse horizontal'
  | 'cloud cover'
  | SpeciesName;

export interface QuantityFacts {
  /** Unit of the roombalance CSV, and of every number after reading. */
  readonly unit: string;
  /** Smallest and largest number that can be true outdoors, with room for sensors. */
  readonly range: readonly [number, number];
  /** Mean of an interval (true) or reading at an instant (false). */
  readonly overInterval: boolean;
  /** What a number outside the range most often turns out to be. */
  readonly hint: string;
}

/** Unit, range and kind of every quantity. */
export const QUANTITIES: Readonly<Record<Quantity, QuantityFacts>> = {
  temperature: {
    unit: '°C',
    range: [-90, 60], // the records are -89.2 and 56.7 °C
    overInterval: false,
    hint: 'a missing reading is an empty cell',
  },
  'relative humidity': {
    unit: '%',
    range: [0, 105], // sensors overshoot a little; 100 to 105 is read as 100
    overInterval: false,
    hint: 'per cent, not a share of one',
  },
  'dew point': {
    unit: '°C',
    range: [-100, 36], // the record is 35 °C
    overInterval: false,
    hint: 'a missing reading is an empty cell',
  },
  pressure: {
    unit: 'Pa',
    range: [45_000, 110_000],
    overInterval: false,
    hint: '1013 hPa is 101300 Pa',
  },
  'wind speed': {
    unit: 'm/s',
    range: [0, 75],
    overInterval: false,
    hint: 'metres a second: 36 km/h is 10',
  },
  'wind direction': {
    unit: '°',
    range: [0, 360],
    overInterval: false,
    hint: 'degrees clockwise from north; an empty cell where the wind is calm or variable',
  },
  'global horizontal': {
    unit: 'W/m2',
    range: [-25, 1600], // below 0 is a sensor losing heat to the night sky, read as 0
    overInterval: true,
    hint: 'the mean of the interval in W/m2',
  },
  'direct normal': {
    unit: 'W/m2',
    range: [-25, 1450],
    overInterval: true,
    hint: 'the mean of the interval in W/m2',
  },
  'diffuse horizontal': {
    unit: 'W/m2',
    range: [-25, 1200],
    overInterval: true,
    hint: 'the mean of the interval in W/m2',
  },
  'cloud cover': {
    unit: '%',
    range: [0, 100],
    overInterval: true,
    hint: 'per cent of the sky: 4 of 8 parts is 50',
  },
  ...byName(MOST_HARMFUL_FIRST, ({ unit, limits: { weather: range, weatherHint: hint } }) => ({
    unit,
    range,
    overInterval: true,
    hint,
  })),
};

export const QUANTITY_NAMES = Object.keys(QUANTITIES) as readonly Quantity[];

/** Quantities that become Weather.species, by the same name. */
export const OUTDOOR_SPECIES: readonly SpeciesName[] = MOST_HARMFUL_FIRST.map(({ name }) => name);
