import { CARBON_DIOXIDE } from './carbon-dioxide.ts';
import { COARSE_GRAINS } from './coarse-grains.ts';
import { FINE_PARTICLES } from './fine-particles.ts';
import { NITROGEN_DIOXIDE } from './nitrogen-dioxide.ts';
import { ORGANIC_VAPOURS } from './organic-vapours.ts';
import type {
  SpeciesFacts,
  SpeciesFilter,
  SpeciesSources,
  SpeciesSupplyFilter,
} from './species-facts.ts';

/** One more species is one more file and its name here. */
const ENTRIES = [
  CARBON_DIOXIDE,
  ORGANIC_VAPOURS,
  COARSE_GRAINS,
  NITROGEN_DIOXIDE,
  FINE_PARTICLES,
] as const;

/**
 * What the air is known to carry besides water, from what only tells that air is stale to what harms
 * most. Schema, readings, bands, figures, tables and files follow from it.
 */
export const SPECIES: readonly KnownSpecies[] = ENTRIES;

type Entry = (typeof ENTRIES)[number];

export type SpeciesName = Entry['name'];

/** A species of the table, whose keys the scenario's types know. */
export interface KnownSpecies extends SpeciesFacts<SpeciesName> {
  readonly sources: {
    readonly [By in keyof SpeciesSources]: SpeciesSources[By] & { readonly key: SourceKey<By> };
  };
  readonly filter?: SpeciesFilter & { readonly key?: FilterKey };
  readonly supplyFilter?: SpeciesSupplyFilter & { readonly key: SupplyFilterKey };
}

/** The scenario's key for what sources of one kind give, such as "particles" of an activity. */
export type SourceKey<By extends keyof SpeciesSources> = KeyOf<Entry, By>;

type KeyOf<E, By extends string> = E extends {
  readonly sources: { readonly [K in By]: { readonly key: infer Key extends string } };
}
  ? Key
  : never;

/** The scenario's key for which share of a purifier's rate holds for a species. */
export type FilterKey = FilterKeyOf<Entry>;

/** The scenario's key for which share of a species a filter of supply air holds back. */
export type SupplyFilterKey = Extract<
  Entry,
  { readonly supplyFilter: object }
>['supplyFilter']['key'];

type FilterKeyOf<E> = E extends { readonly filter: { readonly key: infer Key extends string } }
  ? Key
  : never;
