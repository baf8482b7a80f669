import type { PlanMeasures } from '../measures/plan-measures.ts';

type Remark = PlanMeasures['cautions'][number];

/** A plan by its name, and what it cautions about. */
export interface CautionedPlan {
  readonly plan: string;
  readonly cautions: readonly Remark[];
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
