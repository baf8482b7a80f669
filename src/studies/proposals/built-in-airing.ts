import { addAiring, isAiredDaily } from '../../scenario/edits/add-airing.ts';
import type { BuiltIn, BuiltInContext } from './built-in.ts';

/**
 * Airing every room for ten minutes, mornings and evenings. Not proposed where a plan has half of the
 * rooms or more aired so already.
 */
export function builtInAiring({ raw, plans }: BuiltInContext): BuiltIn | null {
  if ([raw, ...plans.map((plan) => plan.raw)].some(isAiredDaily)) return null;
  return {
    name: 'aired',
    description: 'all windows wide open for ten minutes every morning and evening',
    change: addAiring(raw),
    purchases: [],
  };
}
