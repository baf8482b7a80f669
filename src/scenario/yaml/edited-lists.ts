import { type EditedItem, editedItems, isListEdit } from './list-edit.ts';
import { isMapping } from './merge-patch.ts';
import type { Path } from './place-of.ts';

/** A list that a change edits item by item: its path, and where each of its items comes from. */
export interface EditedList {
  readonly path: Path;
  readonly items: readonly EditedItem[];
}

/** Every list that a patch edits, wherever it lies. */
export function editedLists(target: unknown, patch: unknown, path: Path = []): EditedList[] {
  if (!isMapping(patch)) return [];
  if (isListEdit(target, patch)) return [{ path, items: editedItems(target, patch) }];
  return Object.entries(patch).flatMap(([key, value]) =>
    editedLists(isMapping(target) ? target[key] : undefined, value, [...path, key]),
  );
}
