import type { SpeciesName } from '../species/species-table.ts';

/** How long a room was beyond each edge of its bands. [h] */
export type BandHours = Readonly<Record<BandEdge, number>>;

export type BandEdge =
  | 'temperature_low'
  | 'temperature_high'
  | 'humidity_low'
  | 'humidity_high'
  | `${SpeciesName}_high`;

/** The upper edge of a species' band; scenarios may name more species than the type has. */
export const highKey = (name: string): BandEdge => `${name as SpeciesName}_high`;
