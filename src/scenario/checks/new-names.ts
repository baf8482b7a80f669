import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { valueAt } from '../yaml/path-words.ts';
import type { Setting } from '../yaml/settings.ts';

/**
 * A name that a setting would add to those of rooms, devices or own species.
 *
 * A room needs nothing but a name, so that a mistyped one would be a further room and the one that was
 * meant would stay as it is. A device is new on purpose where the settings say its kind.
 *
 * @param raw       the scenario as plain values, with the settings laid on that come before
 * @param setting   the one to look at
 * @param settings  all of them
 */
export function newNameFinding(
  raw: unknown,
  { steps }: Setting,
  settings: readonly Setting[],
): Finding | null {
  const [path, what] = NAMED.find(([start]) => start.every((step, k) => steps[k] === step)) ?? [];
  if (path === undefined || steps.length <= path.length) return null;
  const own = steps.slice(0, path.length + 1);
  const name = own.at(-1)!;
  const there = valueAt(raw, path);
  const names = isMapping(there) ? Object.keys(there) : [];
  if (names.includes(name) || (what === 'a device' && saysKind(settings, own))) return null;
  const known = names.length === 0 ? ', of which there is none' : `: ${names.join(', ')}`;
  return {
    ...{ path: own, key: true, names },
    expected: `the name of ${what}${known}`,
    got: JSON.stringify(name),
  };
}

function saysKind(settings: readonly Setting[], device: readonly string[]): boolean {
  return settings.some(({ steps, value }) => {
    if (!device.every((step, k) => steps[k] === step)) return false;
    const [next, ...more] = steps.slice(device.length);
    if (next === undefined) return isMapping(value) && Object.hasOwn(value, 'kind');
    return next === 'kind' && more.length === 0;
  });
}

const NAMED: readonly (readonly [path: readonly string[], what: string])[] = [
  [['home', 'rooms'], 'a room'],
  [['devices'], 'a device'],
  [['air', 'own species'], 'a species'],
];
