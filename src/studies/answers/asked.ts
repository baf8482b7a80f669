import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { Change, PlanParts } from '../effects/plan-changes.ts';
import type { PlanFigures } from '../effects/plan-figures.ts';

/** A plan that was run, with all that answers are made from. */
export interface AskedPlan {
  readonly prepared: PreparedPlan;
  readonly measures: PlanMeasures;
  readonly figures: PlanFigures;
  readonly parts: PlanParts;
}

/** One thing that changes, or everything else: several at once, people, prices, or what no part is known of. */
export type Topic = Exclude<Change, 'prices' | 'people'> | 'the rest';

/** What one plan asks. */
export interface Asked {
  readonly plan: AskedPlan;
  readonly against: AskedPlan;
  readonly about: Topic;
}
