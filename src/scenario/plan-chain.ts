import { USUAL } from './choices.ts';
import { isMapping, mergePatch } from './yaml/merge-patch.ts';

/** Names of plans in the order their changes are laid on, or why there is no such order. */
export type PlanChain =
  | { readonly names: readonly string[] }
  | { readonly missing: { readonly child: string; readonly parent: string } }
  | { readonly cycle: readonly string[] };

/** A plan and what it builds on, first the one that builds on nothing. */
export function planChain(raw: unknown, name: string): PlanChain {
  const plans = plansOf(raw);
  const names: string[] = [];
  let at: string | undefined = name;
  while (at !== undefined) {
    if (names.includes(at)) return { cycle: names.slice(names.indexOf(at)) };
    if (!Object.hasOwn(plans, at)) {
      return { missing: { child: names.at(-1) ?? name, parent: at } };
    }
    names.push(at);
    const plan: unknown = plans[at];
    const on: unknown = isMapping(plan) ? plan['based on'] : undefined;
    at = typeof on === 'string' ? on : undefined;
  }
  return { names: names.reverse() };
}

/** The scenario with the changes of these plans laid on, without its plans. */
export function mergedFor(raw: unknown, names: readonly string[]): unknown {
  const { plans, ...base } = isMapping(raw) ? raw : {};
  return names.reduce<unknown>((merged, name) => {
    const plan = isMapping(plans) ? plans[name] : undefined;
    return mergePatch(merged, isMapping(plan) ? (plan['change'] ?? {}) : {});
  }, withUsualAiring(base));
}

/** A home of which nobody says how it is aired is aired as usual, and what plans add comes on top. */
function withUsualAiring(base: Record<string, unknown>): Record<string, unknown> {
  const household = base['household'] ?? {};
  if (!isMapping(household) || household['airing'] !== undefined) return base;
  return { ...base, household: { ...household, airing: [USUAL] } };
}

/** Names of the plans of a scenario, in the order of the file. */
export const planNames = (raw: unknown): string[] => Object.keys(plansOf(raw));

const plansOf = (raw: unknown): Record<string, unknown> => {
  const plans = isMapping(raw) ? raw['plans'] : undefined;
  return isMapping(plans) ? plans : {};
};
