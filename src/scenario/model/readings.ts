import { byName } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES, type SpeciesName } from '../../species/species-table.ts';

/** What a condition can read. */
export type Reading =
  | 'temperature'
  | 'humidity'
  | 'absolute humidity'
  | 'humidity above outdoors'
  | 'dew point'
  | SpeciesName;

/** Units in which the levels of readings are written, by what is read. */
export const unitsOf = (species: readonly KnownSpecies[]): Readonly<Record<Reading, string>> => ({
  temperature: '°C',
  humidity: '%',
  'absolute humidity': 'g/m3',
  'humidity above outdoors': 'g/m3',
  'dew point': '°C',
  ...byName(species, ({ unit }) => unit),
});

/** Units of the readings that every scenario knows. */
export const READING_UNITS = unitsOf(SPECIES);
