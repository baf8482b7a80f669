import { speciesKeys } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';
import type { Finding } from '../unplaced-problem.ts';
import { items, mapping, textOf, type UncheckedMapping } from './tolerant-readers.ts';

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
function sourced(raw: UncheckedMapping, missing: readonly KnownSpecies[]): Mention[] {
  const owners: readonly (readonly [Mention['path'], unknown])[] = [
    ...Object.entries(mapping(raw['devices'])).map(([k, v]) => [['devices', k], v] as const),
    ...items(mapping(raw['household'])['activities']).map(
      (activity, k) => [['household', 'activities', k], activity] as const,
    ),
  ];
  return owners.flatMap(([path, owner]) =>
    missing.flatMap((facts) =>
      speciesKeys(facts)
        .filter((key) => key in mapping(owner))
        .map((key) => ({ path: [...path, key], name: facts.name })),
    ),
  );
}

interface Mention {
  readonly path: readonly (string | number)[];
  readonly name: string;
}

/** Keys of mappings that are names of species. */
function keyed(raw: UncheckedMapping): Mention[] {
  const rooms = Object.keys(mapping(mapping(raw['home'])['rooms']));
  const places: readonly (readonly string[])[] = [
    ...['outdoors', 'penetration', 'window penetration', 'deposition', 'materials'].map((key) => [
      'air',
      key,
    ]),
    ['bands'],
    ['sensors'],
    ...Object.keys(mapping(mapping(raw['sensors'])['rooms'])).map((r) => ['sensors', 'rooms', r]),
    ...rooms.flatMap((r) => ['bands', 'deposition'].map((key) => ['home', 'rooms', r, key])),
  ];
  return places.flatMap((path) => {
    const at = path.reduce<UncheckedMapping>((inner, key) => mapping(inner[key]), raw);
    return Object.keys(at).map((name) => ({ path: [...path, name], name }));
  });
}

/** Readings of the conditions of rules and of airing. */
function readings(raw: UncheckedMapping): Mention[] {
  const airing = items(mapping(raw['household'])['airing']);
  return [
    ...items(raw['rules']).flatMap((rule, k) => readBy(rule, 'when', ['rules', k])),
    ...airing.flatMap((habit, k) =>
      ['when', 'until'].flatMap((key) => readBy(habit, key, ['household', 'airing', k])),
    ),
  ];
}

const readBy = (owner: unknown, key: string, path: Mention['path']): Mention[] =>
  items(mapping(owner)[key]).map((condition, k) => ({
    path: [...path, key, k, 'reading'],
    name: textOf(mapping(condition)['reading']),
  }));
