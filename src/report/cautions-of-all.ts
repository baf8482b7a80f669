import type { PlanMeasures } from '../measures/plan-measures.ts';

type Remark = PlanMeasures['cautions'][number];

/** A plan by its name, and what it cautions about. */
export interface CautionedPlan {
  readonly plan: string;
  readonly cautions: readonly Remark[];
}

/** What to know of a plan that is set beside others: its cautions, and that its heat source came to its limits. */
export const comparedCautions = ({
  plan,
  cautions,
  notices,
}: Pick<PlanMeasures, 'plan' | 'cautions' | 'notices'>): CautionedPlan => ({
  plan,
  cautions: [...cautions, ...notices.filter(({ id }) => AT_LIMITS.has(id))],
});

const AT_LIMITS: ReadonlySet<string> = new Set(['source-too-small', 'cop-beyond-table']);

/** Cautions by whom they concern: of all plans first, for which `plans` is null, each once. */
export function cautionGroups(
  plans: readonly CautionedPlan[],
): { readonly plans: readonly string[] | null; readonly texts: readonly string[] }[] {
  const groups = new Map<string, { plans: readonly string[] | null; texts: string[] }>();
  for (const text of new Set(plans.flatMap(({ cautions }) => cautions.map((one) => one.text)))) {
    const those = plans.filter(({ cautions }) => cautions.some((one) => one.text === text));
    const names = those.map(({ plan }) => plan);
    const of = those.length === plans.length ? null : names;
    const key = JSON.stringify(of);
    groups.set(key, { plans: of, texts: [...(groups.get(key)?.texts ?? []), text] });
  }
  return [...groups.values()].sort((a, b) => Number(b.plans === null) - Number(a.plans === null));
}

/** What any of the plans cautions about, each once; what does not go for all says for which. */
export function cautionsOfAll(plans: readonly CautionedPlan[]): readonly Remark[] {
  const all = new Map(plans.flatMap((p) => p.cautions).map((caution) => [caution.text, caution]));
  return [...all.values()].map(({ id, text }) => {
    const those = plans.filter((p) => p.cautions.some((caution) => caution.text === text));
    const names = those.map(({ plan }) => plan).join(', ');
    return { id, text: those.length === plans.length ? text : `${names}: ${text}` };
  });
}
