import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { newPurchases } from '../compare/new-purchases.ts';
import { priceOf } from '../compare/plan-money.ts';
import { type Change, heatsByPresence, planParts } from '../effects/plan-changes.ts';
import { judged } from '../effects/plan-figures.ts';
import { newDevices } from '../purchase/new-devices.ts';
import type { Asked, AskedPlan, Topic } from './asked.ts';
import { askedChanges } from './asked-changes.ts';
import { hasRules, movesHeat, titleOf } from './question-title.ts';

/** A question that plans of a scenario ask, such as whether to heat less. */
export interface Question {
  readonly about: Topic;
  /** "19 °C or 21 °C?" */
  readonly title: string;
  readonly asked: readonly {
    readonly plan: AskedPlan;
    /** The plan it is measured by: the one that differs from it in nothing else. */
    readonly against: AskedPlan;
  }[];
}

/**
 * What the plans ask, from what each changes against the baseline, or else against the plan before
 * it that is most like it. Plans that change several things at once ask whether that is worth it.
 *
 * @param plans  the baseline first
 */
export function questionsOf(plans: readonly AskedPlan[]): Question[] {
  const asked = plans.slice(1).flatMap((plan) => {
    const nearest = nearestOf(plan, plans) ?? restOf(plan, plans[0]!);
    return nearest === null ? [] : [{ plan, ...nearest }];
  });
  const titles = [...new Set(asked.map(groupOf))];
  return titles
    .map((title) => asked.filter((each) => groupOf(each) === title))
    .map((group) => ({ about: group[0]!.about, title: titleOf(group[0]!), asked: group }))
    .sort((a, b) => ORDER.indexOf(a.about) - ORDER.indexOf(b.about));
}

/** What one plan asks against another, where it changes one thing; null where it changes several. */
export function questionBetween(against: AskedPlan, plan: AskedPlan): string | null {
  const about = topicBetween(against, plan);
  return about === null ? null : titleOf({ about, plan, against });
}

/** What is answered together; to move heat to other hours answers nobody who asks for less of it. */
function groupOf(asked: Asked): string {
  const moves = asked.about === 'setting' && movesHeat(asked.plan.prepared, asked.against.prepared);
  // Whether rules help at all is another question than which.
  const none = asked.about === 'rules' && !hasRules(asked.plan);
  const apart = moves || none || BY_THEIR_TITLES.includes(asked.about);
  return apart ? titleOf(asked) : asked.about;
}

function nearestOf(plan: AskedPlan, plans: readonly AskedPlan[]): Omit<Asked, 'plan'> | null {
  const found = plans.slice(0, plans.indexOf(plan)).flatMap((against) => {
    const about = topicBetween(against, plan);
    // Nobody asks what it would be to give up what another plan tries.
    if (about === null || (against !== plans[0] && undoes(about, plan, against))) return [];
    return [{ against, about, changes: askedChanges(against, plan).size }];
  });
  const [nearest] = found.toSorted((a, b) => a.changes - b.changes);
  const toBaseline = found.find(({ against }) => against === plans[0]);
  if (nearest === undefined) return null;
  const apart = nearest.changes === 1 && OF_THEIR_OWN.includes(nearest.about);
  return apart || toBaseline === undefined ? nearest : toBaseline;
}

/** What a plan asks that changes no one thing; null for one that only gives up what the baseline has. */
function restOf(plan: AskedPlan, baseline: AskedPlan): Omit<Asked, 'plan'> | null {
  const about = topicOf(askedChanges(baseline, plan));
  return about === null ? { against: baseline, about: 'the rest' } : null;
}

/** What a plan asks about; what is not bought is not asked about, but the device or heat source that goes with it is. */
function topicBetween(against: AskedPlan, plan: AskedPlan): Topic | null {
  const changes = askedChanges(against, plan);
  const about = topicOf(changes);
  if (about !== 'purchase' || buysMore(against, plan)) return about;
  if (newDevices(plan.prepared, against.prepared).length > 0) return 'devices';
  return changes.has('source') ? 'source' : null;
}

const buysMore = ({ prepared: had }: AskedPlan, { prepared: has }: AskedPlan): boolean =>
  newPurchases(had.purchases, has.purchases).length > 0;

/** The one thing that changes, as far as it is one; what is bought stands for what it does. */
function topicOf(changes: ReadonlySet<Change>): Topic | null {
  const rest = [...changes].filter((change) => change !== 'purchase');
  if (rest.includes('people')) return null;
  // Who buys a heat pump or a meter may get a tariff with it.
  if (rest.includes('prices') && !changes.has('purchase')) return null;
  if (rest.length > 0 && rest.every((change) => BY_PRESENCE.includes(change))) {
    if (rest.includes('presence')) return 'presence';
  }
  // What is bought to control heat may come with hours of its own.
  const main = rest.filter((change) => !COMES_WITH.includes(change));
  if (changes.has('purchase')) return main.length < 2 ? 'purchase' : null;
  return rest.length === 1 ? (rest[0] as Topic) : null;
}

function undoes(
  about: Topic,
  { prepared: plan }: AskedPlan,
  { prepared: other }: AskedPlan,
): boolean {
  if (about === 'rules') return plan.automation.rules.length < other.automation.rules.length;
  if (about === 'presence') return !heatsByPresence(plan) && heatsByPresence(other);
  return priceOf(plan.purchases) < priceOf(other.purchases);
}

/** A plan with its figures, once for all that is asked of it. */
export const askedPlan = (prepared: PreparedPlan, measures: PlanMeasures): AskedPlan => ({
  ...{ ...judged(measures), prepared, parts: planParts(prepared) },
});

/** What is asked of a plan on top of another, though it also differs from the baseline in one thing. */
const OF_THEIR_OWN: readonly Topic[] = ['rules', 'sensing'];
/** Titles of these name what they are about. */
const BY_THEIR_TITLES: readonly Topic[] = ['purchase', 'devices', 'the rest'];
const BY_PRESENCE: readonly Change[] = ['presence', 'sensing', 'hours'];
/** What may come with a thing that is bought for something else. */
const COMES_WITH: readonly Change[] = ['sensing', 'hours', 'prices'];
/** What most homes ask comes first. */
const ORDER: readonly Topic[] = [
  ...(['setting', 'presence', 'purchase', 'rules', 'hours', 'sensing', 'airing'] as const),
  ...(['building', 'source', 'cooling', 'devices', 'blinds', 'the rest'] as const),
];
