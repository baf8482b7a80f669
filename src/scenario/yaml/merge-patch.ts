/**
 * A value with a merge patch laid on: mappings are merged key by key, null removes a key, anything
 * else takes the place of what was there. Neither argument is changed.
 *
 * Source: RFC 7386, section 2.
 */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isMapping(patch)) return patch;
  const merged: Record<string, unknown> = isMapping(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete merged[key];
    else merged[key] = mergePatch(merged[key], value);
  }
  return merged;
}

export const isMapping = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
