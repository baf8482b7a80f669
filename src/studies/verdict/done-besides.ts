import type { PreparedPlan } from '../../scenario/prepared.ts';
import { type Change, changesBetween, planParts } from '../effects/plan-changes.ts';
import { newDevices } from '../purchase/new-devices.ts';

/** Which rivals of a plan could be done as well as it, and whether that makes them no rivals. */
export interface Besides {
  /** Names of rivals that leave alone what the plan changes: laundry outdoors beside a heat pump. */
  readonly besides: ReadonlySet<string>;
  /** Whether the plan heats with something else what was heated before. */
  readonly heatsOtherwise: boolean;
}

/** @param rivals  what could be done instead, or besides */
export function doneBesides(
  baseline: PreparedPlan,
  plan: PreparedPlan,
  rivals: readonly PreparedPlan[],
): Besides {
  const changes = changesFrom(baseline, plan);
  const excludes = (rival: PreparedPlan): boolean =>
    [...changesFrom(baseline, rival)].some(
      (change) => changes.has(change) && touchesTheSame(change, baseline, plan, rival),
    );
  return {
    besides: new Set(rivals.filter((rival) => !excludes(rival)).map((rival) => rival.plan)),
    heatsOtherwise: changes.has('source') && baseline.home.emitters.length > 0,
  };
}

/** What a plan does, but for its money. */
const changesFrom = (baseline: PreparedPlan, plan: PreparedPlan): Set<Change> =>
  new Set(
    [...changesBetween(planParts(baseline), planParts(plan))].filter(
      (change) => change !== 'purchase' && change !== 'prices',
    ),
  );

/** Devices of two kinds go together, as walls and windows do; anything else is done in one way. */
function touchesTheSame(
  change: Change,
  baseline: PreparedPlan,
  plan: PreparedPlan,
  rival: PreparedPlan,
): boolean {
  const [own, other] = [plan, rival].map((each): readonly string[] => {
    if (change === 'devices') return newDevices(baseline, each).map(({ does }) => does.kind);
    return change === 'building' ? partsOfBuilding(baseline, each) : [change];
  }) as [readonly string[], readonly string[]];
  return own.length === 0 || other.length === 0 || own.some((part) => other.includes(part));
}

const partsOfBuilding = ({ home: had }: PreparedPlan, { home }: PreparedPlan): string[] =>
  BUILDING.filter((part) => JSON.stringify(had[part]) !== JSON.stringify(home[part]));

const BUILDING = ['rooms', 'elements', 'panes', 'openings', 'doorways', 'leakage'] as const;
