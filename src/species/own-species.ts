import { preset } from '../units/preset.ts';
import { plainName } from './plain-name.ts';
import type { SensorErrors } from './sensor-errors.ts';
import { type KnownSpecies, SPECIES, type SpeciesName } from './species-table.ts';

/** What a scenario says first of a species of its own. */
export interface OwnSpecies {
  /** Key of the scenario, chosen by whoever wrote it. */
  readonly name: string;
  /** Name that tables print. */
  readonly label: string;
  /** Unit of its concentration: see `isConcentrationUnit`. */
  readonly unit: string;
}

/**
 * A species that the scenario names, as if it stood in the table: nothing is known of it but what the
 * scenario says, so that it settles nowhere, passes everything, and is measured without error unless
 * told otherwise.
 */
export const ownSpecies = ({ name, label, unit }: OwnSpecies): KnownSpecies => ({
  // Types know the names of the table; a name of the scenario's goes through the same doors.
  name: name as SpeciesName,
  symbol: label,
  words: label,
  plainName: label,
  unit,
  role: 'pollutant',
  outdoors: preset(0, 0, 0, UNKNOWN),
  penetration: preset(1, 0, 1, UNKNOWN),
  windowPenetration: preset(1, 0, 1, UNKNOWN),
  deposition: preset(0, 0, 1, UNKNOWN),
  materials: preset(0, 0, 0, UNKNOWN),
  band: { high: Number.POSITIVE_INFINITY, hours: 0, reason: UNKNOWN, counted: 'any time' },
  limits: { level: MOST, band: MOST, weather: [0, MOST], weatherHint: '' },
  sensor: EXACT,
  sources: {},
});

/** Whether the table has a species that is called so, however it is spelled. */
export const isOfTable = (name: string): boolean =>
  SPECIES.some((known) => plainName(known.name) === plainName(name));

const UNKNOWN = 'nothing is known of it but what the scenario says';
const MOST = 1e9;
const NONE = preset(0, 0, 0, 'taken as exact: nobody knows how such a sensor errs');
/** A sensor of a species of which nobody knows how its sensors err. */
export const EXACT: SensorErrors = {
  bias: NONE,
  noise: NONE,
  step: NONE,
  lag: NONE,
  every: preset(5, 1, 15),
};
