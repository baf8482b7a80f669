/** Changes of single items of a list, in place of the whole list. */
export interface ListEdit {
  /** Put at the end. */
  readonly add?: unknown;
  /** By name: a merge patch of that item. */
  readonly change?: unknown;
  /** Names of items that go. */
  readonly drop?: unknown;
}

/** An item of a list that was edited, and where it comes from. */
export interface EditedItem {
  readonly value: unknown;
  /** Patch that is still to be laid on, absent for none, and the name it goes by. */
  readonly change?: unknown;
  readonly name?: string;
  /** Place among the items of before, or among those added. */
  readonly old?: number;
  readonly added?: number;
}

/**
 * Whether a mapping laid on a value edits it as a list: on a list, one with any of the three words; where
 * nothing is yet, only one that adds.
 */
export function isListEdit(target: unknown, patch: object): patch is ListEdit {
  const keys = Object.keys(patch);
  if (Array.isArray(target)) return keys.some((key) => VERBS.includes(key));
  return target === undefined && keys.length === 1 && Array.isArray((patch as ListEdit).add);
}

/** Items of a list once it is edited; names that none has, or several have, change nothing. */
export function editedItems(target: unknown, { add, change, drop }: ListEdit): EditedItem[] {
  const list: readonly unknown[] = Array.isArray(target) ? target : [];
  const changes = typeof change === 'object' && change !== null ? change : {};
  const gone: readonly unknown[] = Array.isArray(drop) ? drop : [];
  const kept = list.flatMap((value, old): EditedItem[] => {
    const names = namesOf(value).filter((name) => itemsCalled(list, name).length === 1);
    if (names.some((name) => gone.includes(name))) return [];
    const name = names.find((one) => Object.hasOwn(changes, one));
    const patch = name === undefined ? null : (changes as Record<string, unknown>)[name];
    if (name === undefined || typeof patch !== 'object' || patch === null) return [{ value, old }];
    return [{ value, old, name, change: patch }];
  });
  const added = (Array.isArray(add) ? add : []).map((value: unknown, k) => ({ value, added: k }));
  return [...kept, ...added];
}

/** Items that go by a name. */
export const itemsCalled = (list: readonly unknown[], name: unknown): unknown[] =>
  list.filter((item) => namesOf(item).includes(String(name)));

/** Names by which items of a list may be called, each once. */
export const itemNames = (list: readonly unknown[]): string[] => [
  ...new Set(list.flatMap((item) => namesOf(item).slice(0, 1))),
];

/**
 * What an item may be called, the likeliest first: its `name`; what is done; the rooms that a doorway
 * lies between, in either order; or the item itself where it is a word.
 */
function namesOf(item: unknown): readonly string[] {
  if (typeof item === 'string') return [item];
  if (typeof item !== 'object' || item === null) return [];
  const { name, what, between } = item as Record<string, unknown>;
  const [one, other] = Array.isArray(between) ? between : [];
  const doorway = one === undefined ? [] : [`${one} and ${other}`, `${other} and ${one}`];
  return [name, what, ...doorway].filter((word) => typeof word === 'string');
}

export const VERBS: readonly string[] = ['add', 'change', 'drop'];
