import { editedItems, isListEdit } from './list-edit.ts';

/**
 * A value with a merge patch laid on: mappings are merged key by key, null removes a key, anything
 * else takes the place of what was there. Neither argument is changed.
 *
 * A list takes single items too: a mapping of `add`, `change` and `drop` laid on it edits it.
 *
 * Source: RFC 7386, section 2; the edit of lists is this program's own.
 */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isMapping(patch)) return patch;
  if (isListEdit(target, patch)) {
    return editedItems(target, patch).map(({ value, change }) =>
      change === undefined ? value : mergePatch(value, change),
    );
  }
  const merged: Record<string, unknown> = isMapping(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete merged[key];
    else merged[key] = mergePatch(merged[key], value);
  }
  return merged;
}

export const isMapping = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
