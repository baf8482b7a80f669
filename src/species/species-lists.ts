import { type KnownSpecies, SPECIES, type SpeciesName } from './species-table.ts';

/** The table the other way round: what harms most comes first, as people would list it. */
export const MOST_HARMFUL_FIRST = SPECIES.toReversed();

/**
 * Something for each of some species, by name. What is left out reads as undefined, so a list that
 * lacks species suits optional fields only.
 */
export function byName<T, K extends KnownSpecies = KnownSpecies>(
  species: readonly K[],
  of: (facts: K) => T,
): Readonly<Record<SpeciesName, T>> {
  return Object.fromEntries(species.map((facts) => [facts.name, of(facts)])) as Record<
    SpeciesName,
    T
  >;
}

/** Name of the species that people call so otherwise, such as "co2" of "Carbon dioxide"; null where none is. */
export function speciesCalled(typed: string): string | null {
  const plain = typed
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ');
  const all: readonly KnownSpecies[] = SPECIES;
  return all.find(({ alsoCalled = [] }) => alsoCalled.includes(plain))?.name ?? null;
}

/** The species for which a purifier's clean-air delivery rate is stated, and by which it may run. */
export const FILTER_RATED = SPECIES.find(({ filter }) => filter?.by === 'rate')!;

/** Every key by which a scenario speaks of a species. */
export const speciesKeys = ({ name, sources, filter, supplyFilter }: KnownSpecies): string[] => [
  name,
  ...Object.values(sources).map(({ key }) => key),
  ...(filter?.by === 'share' ? [filter.key] : []),
  ...(supplyFilter === undefined ? [] : [supplyFilter.key]),
];
