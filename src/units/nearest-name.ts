import { everydayName } from './everyday-words.ts';

/**
 * The known name that a mistyped one most likely meant, or null when none is near.
 *
 * Near: at most a third of the letters (and at least one) inserted, dropped, changed or swapped; before
 * more than one such difference counts which name, alone, has all its words in what was typed or the other
 * way round, such as "double" of "double glazed" and "semi-detached" of "semi"; then, or before a name of which it is
 * a part, which people call so otherwise, such as "flat" of "apartment".
 * Case, spaces, hyphens and underscores do not count. Names of more than 100 characters are near to
 * none: nobody mistypes them, and the search would take long.
 */
export function nearestName(typed: string, known: Iterable<string>): string | null {
  if (typed.length > LONGEST) return null;
  const wanted = plain(typed);
  const names = [...known].filter((name) => name.length <= LONGEST);
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const candidate = plain(name);
    const allowed = Math.max(1, Math.floor(Math.max(wanted.length, candidate.length) / 3));
    if (Math.abs(wanted.length - candidate.length) > allowed) continue;
    const distance = editDistance(wanted, candidate);
    if (distance <= allowed && distance < least) {
      best = name;
      least = distance;
    }
  }
  if (least <= 1) return best;
  const byWords = nameByWords(typed, names);
  const everyday = everydayName(wordsOf(typed), names);
  // What people say for one name may be a part of another, such as "temperature" of "water temperature".
  const isPart = byWords !== null && wordsOf(byWords).length > wordsOf(typed).length;
  return isPart ? (everyday ?? byWords) : (byWords ?? everyday ?? best);
}

/** A hint at the known name that was most likely meant; empty where none is near. */
export function nearestHint(typed: string, known: Iterable<string>): string {
  const near = nearestName(typed, known);
  return near === null ? '' : `did you mean "${near}"?`;
}

/** The name that shares most words with what was typed, all of its own or all of that; null for none or several. */
function nameByWords(typed: string, known: readonly string[]): string | null {
  const own = wordsOf(typed);
  const shared = known.map((name) => {
    const words = wordsOf(name);
    const common = words.filter((word) => own.includes(word)).length;
    return common === words.length || common === own.length ? common : 0;
  });
  const most = Math.max(0, ...shared);
  const first = shared.indexOf(most);
  return most === 0 || first !== shared.lastIndexOf(most) ? null : known[first]!;
}

/** Least number of insertions, deletions, changes and swaps of neighbours that turn a into b. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const current = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(previous[j]! + 1, current[j - 1]! + 1, previous[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, before[j - 2]! + 1);
      }
      current.push(cost);
    }
    before = previous;
    previous = current;
  }
  return previous[b.length]!;
}

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[\s_-]+/)
    .filter((word) => word !== '');

const plain = (text: string): string => text.toLowerCase().replaceAll(/[\s_-]/g, '');

const LONGEST = 100;
