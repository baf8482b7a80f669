import type { Finding } from '../unplaced-problem.ts';
import { isListEdit, itemNames, itemsCalled, type ListEdit, VERBS } from '../yaml/list-edit.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import type { Path } from '../yaml/place-of.ts';

/**
 * What a plan's change removes, changes or drops that is not there.
 *
 * @param target  what it is laid on
 * @param path    of the patch
 */
export function changeFindings(patch: unknown, target: unknown, path: Path): Finding[] {
  if (!isMapping(patch)) return [];
  if (isListEdit(target, patch)) return listFindings(patch, target ?? [], path);
  return Object.entries(patch).flatMap(([key, value]): Finding[] => {
    const at = [...path, key];
    const there = isMapping(target) ? target[key] : undefined;
    if (value !== null) return changeFindings(value, there, at);
    if (there !== undefined) return [];
    return [{ path: at, expected: 'something to remove', got: 'null where nothing is given' }];
  });
}

function listFindings(edit: ListEdit, target: unknown, path: Path): Finding[] {
  const list = Array.isArray(target) ? target : [];
  const { add, change, drop } = edit;
  const findings: Finding[] = Object.keys(edit)
    .filter((key) => !VERBS.includes(key))
    .map((key) => ({
      path: [...path, key],
      expected: 'add, change or drop, for items of the list',
      got: JSON.stringify(key),
      names: VERBS,
      key: true,
    }));
  if (add !== undefined && !Array.isArray(add)) {
    findings.push({ path: [...path, 'add'], expected: 'a list of items to add' });
  }
  if (drop !== undefined && !Array.isArray(drop)) {
    findings.push({ path: [...path, 'drop'], expected: 'a list of names of items to drop' });
  }
  if (change !== undefined && !isMapping(change)) {
    const expected = 'a mapping from names of items to their changes';
    findings.push({ path: [...path, 'change'], expected });
  }
  (Array.isArray(drop) ? drop : []).forEach((name: unknown, k) => {
    findings.push(...unknownItem(list, name, [...path, 'drop', k], false));
  });
  for (const [name, patch] of Object.entries(isMapping(change) ? change : {})) {
    const at = [...path, 'change', name];
    const unknown = unknownItem(list, name, at, true);
    findings.push(...unknown);
    if (unknown.length > 0) continue;
    if (isMapping(patch)) findings.push(...changeFindings(patch, itemsCalled(list, name)[0], at));
    else findings.push({ path: at, expected: 'what changes in that item; drop takes it away' });
  }
  return findings;
}

function unknownItem(list: readonly unknown[], name: unknown, path: Path, key: boolean): Finding[] {
  const found = itemsCalled(list, name).length;
  if (found === 1) return [];
  const names = itemNames(list);
  if (found > 1) {
    const got = `${JSON.stringify(name)}, which ${found} items are called`;
    return [{ path, expected: 'the name of one item; give each a name', got, key }];
  }
  const known = names.length === 0 ? 'none has a name' : names.join(', ');
  return [
    { path, expected: `the name of an item: ${known}`, got: JSON.stringify(name), names, key },
  ];
}
