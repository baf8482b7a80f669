import type { Finding } from '../unplaced-problem.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Names that people choose can be written in a table, on the command line, and mean nothing else. */
export function plainNameFindings(raw: UncheckedMapping): Finding[] {
  const home = ['home', 'rooms'];
  return [
    ...namesOf(mapping(raw['home'])['rooms'], home, RESERVED),
    ...namesOf(raw['devices'], ['devices'], []),
    ...namesOf(mapping(raw['air'])['own species'], ['air', 'own species'], []),
    ...namesOf(raw['plans'], ['plans'], [], ','),
  ];
}

function namesOf(
  named: unknown,
  path: readonly string[],
  reserved: readonly string[],
  unfit = '',
): Finding[] {
  return Object.keys(mapping(named)).flatMap((name): Finding[] => {
    const at = { path: [...path, name], got: JSON.stringify(name), key: true };
    if (reserved.includes(name)) {
      return [{ ...at, expected: `another name than ${reserved.join(' or ')}, which mean more` }];
    }
    if (name.trim() !== name || name === '' || BREAKS.test(name)) {
      return [{ ...at, expected: 'a name on one line, with no blanks at its ends' }];
    }
    if (unfit === '' || !name.includes(unfit)) return [];
    return [{ ...at, expected: 'a name without commas, which stand between names' }];
  });
}

const RESERVED = ['all', 'outdoors', 'here']; // where rooms are named, these are something else
const BREAKS = /\p{Cc}/u;
