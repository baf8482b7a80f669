import type { Change } from '../effects/plan-changes.ts';
import type { Judged } from '../effects/plan-figures.ts';
import type { PlanOfParts } from './asked-changes.ts';

/** A plan that was run, with all that answers are made from. */
export interface AskedPlan extends Judged, PlanOfParts {}

/** One thing that changes, or everything else: several at once, people, prices, or what no part is known of. */
export type Topic = Exclude<Change, 'prices' | 'people'> | 'the rest';

/** What one plan asks. */
export interface Asked {
  readonly plan: AskedPlan;
  readonly against: AskedPlan;
  readonly about: Topic;
}
