import { speciesKeys } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { everyAt, mapping, textOf, type UncheckedMapping } from './tolerant-readers.ts';

/** Species that are spoken of though the scenario does not ask for them. */
export function undeclaredSpeciesFindings(raw: UncheckedMapping): Finding[] {
  const air = mapping(raw['air']);
  const asked: readonly unknown[] = Array.isArray(air['species']) ? air['species'] : [];
  const missing = SPECIES.filter(
    ({ name, onRequest }) => onRequest === true && !asked.includes(name),
  );
  const names: readonly string[] = missing.map(({ name }) => name);
  return [
    ...[...keyed(raw), ...readings(raw)].filter(({ name }) => names.includes(name)),
    ...sourced(raw, missing),
  ].map(({ path, name }) => ({ path, expected: 'a species that air.species lists', got: name }));
}

/** What devices and activities do to some species, under keys of these. */
const sourced = (raw: UncheckedMapping, missing: readonly KnownSpecies[]): Mention[] =>
  everyAt(raw, 'devices/*', 'household/activities/#').flatMap(({ path, value }) =>
    missing.flatMap((facts) =>
      speciesKeys(facts)
        .filter((key) => key in mapping(value))
        .map((key) => ({ path: [...path, key], name: facts.name })),
    ),
  );

interface Mention {
  readonly path: Path;
  readonly name: string;
}

/** Keys of mappings that are names of species. */
const keyed = (raw: UncheckedMapping): Mention[] =>
  everyAt(raw, ...KEYED).map(({ path }) => ({ path, name: String(path.at(-1)) }));

const KEYED = [
  ...['outdoors', 'penetration', 'window penetration', 'deposition', 'materials'].map(
    (key) => `air/${key}/*`,
  ),
  ...['bands/*', 'sensors/*', 'sensors/rooms/*/*', 'home/rooms/*/bands/*'],
  'home/rooms/*/deposition/*',
];

/** Readings of the conditions of rules and of airing. */
const readings = (raw: UncheckedMapping): Mention[] =>
  everyAt(raw, ...READINGS).map(({ path, value }) => ({ path, name: textOf(value) }));

const READINGS = ['rules/#/when', 'household/airing/#/when', 'household/airing/#/until'].map(
  (conditions) => `${conditions}/#/reading`,
);
