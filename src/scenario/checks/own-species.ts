import { isOfTable } from '../../species/own-species.ts';
import { plainName } from '../../species/plain-name.ts';
import { SPECIES } from '../../species/species-table.ts';
import type { Finding } from '../unplaced-problem.ts';
import { activityNames } from './activity-names.ts';
import { mapping, textOf, type UncheckedMapping } from './tolerant-readers.ts';

/** Species that a scenario names have names of their own, and sources that the scenario has. */
export function ownSpeciesFindings(raw: UncheckedMapping): Finding[] {
  const own = mapping(raw['air'], 'own species');
  const names = Object.keys(own);
  return names.flatMap((name, k) => [
    ...nameFindings(name, names.slice(0, k)),
    ...labelFindings(own, k),
    ...sourceFindings(raw, name, mapping(own[name], 'sources')),
  ]);
}

function nameFindings(name: string, before: readonly string[]): Finding[] {
  const at = { path: ['air', 'own species', name], got: JSON.stringify(name), key: true };
  if (isOfTable(name)) {
    const known = SPECIES.map((facts) => facts.name).join(', ');
    return [{ ...at, expected: `another name than ${known}, which the program knows itself` }];
  }
  if (RESERVED.has(name) || name in {} || plainName(name) === '') {
    return [{ ...at, expected: 'a name that means nothing else in conditions and sensors' }];
  }
  const twin = before.find((other) => plainName(other) === plainName(name));
  if (twin === undefined) return [];
  return [{ ...at, expected: `a name that differs from ${twin} in letters or digits` }];
}

/** What tables call a species, they call no other. */
function labelFindings(own: UncheckedMapping, k: number): Finding[] {
  const labels = Object.entries(own).map(
    ([name, given]) => textOf(mapping(given)['label']) || name,
  );
  const [name, given] = Object.entries(own)[k]!;
  if (textOf(mapping(given)['label']) === '') return [];
  const taken = [...SPECIES.map(({ symbol }) => symbol), ...labels.slice(0, k)];
  const twin = taken.find((other) => plainName(other) === plainName(labels[k]!));
  if (twin === undefined) return [];
  const path = ['air', 'own species', name, 'label'];
  return [{ path, expected: `a label that differs from ${twin} in letters or digits` }];
}

function sourceFindings(raw: UncheckedMapping, name: string, sources: UncheckedMapping): Finding[] {
  const path = ['air', 'own species', name, 'sources'];
  const among = (key: string, known: readonly string[], what: string): Finding[] =>
    Object.keys(mapping(sources[key]))
      .filter((word) => !known.includes(word))
      .map((word) => ({
        ...{ path: [...path, key, word], names: known, key: true, got: JSON.stringify(word) },
        expected: `${what}: ${known.join(', ') || 'there is none'}`,
      }));
  return [
    ...among(
      'activities',
      activityNames(mapping(raw['household'])),
      'an activity of the household',
    ),
    ...among('devices', Object.keys(mapping(raw['devices'])), 'the name of a device'),
  ];
}

/** What else stands where species are named. */
const RESERVED: ReadonlySet<string> = new Set([
  ...['temperature', 'humidity', 'relative humidity', 'absolute humidity'],
  ...['humidity above outdoors', 'dew point', 'presence', 'window', 'hour', 'rooms', 'outdoors'],
  ...['hour since noon', 'electricity price'],
]);
