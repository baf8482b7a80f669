import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import type { Effect } from '../effects/effect.ts';
import { effectsOf, NOTICED } from '../effects/plan-effects.ts';
import { type Judged, judged, type PlanFigures } from '../effects/plan-figures.ts';
import { asGood } from './as-good.ts';
import { billSaved } from './bill-saved.ts';
import type { Besides } from './done-besides.ts';
import { effectsGuarded, type Guard, happening, harmOf } from './guards.ts';

/** What a plan comes to. */
export type Verdict =
  | 'worth it'
  /** Nothing that it guards against happens without it. */
  | 'not needed'
  /** Another option does as much for less. */
  | 'something else first'
  /** It changes too little, or for the worse, for its money. */
  | 'too little'
  /** It saves or helps, and makes something else clearly worse. */
  | 'a trade-off';

/** What a plan is weighed by. */
export interface WeighSetup extends Partial<Besides> {
  readonly baseline: PlanMeasures;
  readonly plan: PlanMeasures;
  /** What the plan is for. */
  readonly guards: readonly Guard[];
  /** The room that what it brings stands in; null where it is for the whole home. */
  readonly room: string | null;
  /** What could be done instead: other plans, proposals, the room kept warmer. */
  readonly rivals: readonly PlanMeasures[];
  /** Extra money a year of the plan over the baseline, without the lowest and highest tenth of draws. */
  readonly range: { readonly low: number; readonly high: number };
}

/** How a plan comes out. */
export interface Weighing {
  readonly verdict: Verdict;
  /** Distance from turning round, in money or as a share of what is noticed; above 0 for "worth it" alone. */
  readonly standing: number;
  /** Money a year beyond the baseline, purchase cost included. */
  readonly extra: number;
  /** What it guards against that happens without it, and that it makes better. */
  readonly helped: readonly Guard[];
  /** Whether it helps against damp air or wet corners where no mould is likely to start without it. */
  readonly dampAlone: boolean;
  /** What people notice of it, what matters most first. */
  readonly effects: readonly Effect[];
  /** Of these, what it makes clearly worse though it was or becomes a harm. */
  readonly harms: readonly Effect[];
  /** The cheapest of the rivals that are as good; null for none. */
  readonly rival: PlanMeasures | null;
  /** That rival where it costs less than the plan and the plan is worth asking about; else null. */
  readonly better: PlanMeasures | null;
  /** The cheapest that is as good for less and no rival, because it could be done as well; null for none. */
  readonly aside: PlanMeasures | null;
}

/**
 * Six questions in this order:
 *
 * 1. Does it make something clearly worse that is a harm then? If it helps or saves, that is a
 *    trade-off, otherwise too little.
 * 2. Does it save money in nine of ten draws of the doubtful inputs? Then what it guards against
 *    need not be asked about.
 * 3. Does anything that it guards against happen without it? If not, it is not needed, unless it is
 *    bought to save money and saves too little.
 * 4. Does it change that so that people notice? If not, it does too little.
 * 5. Is something else as good for less money a year? Then that comes first, unless it could be done
 *    as well and the plan saves money or heats with something else.
 * 6. Otherwise it is worth it.
 */
export function weighPlan(setup: WeighSetup): Weighing {
  const [baseline, plan] = [setup.baseline, setup.plan].map(judged) as [Judged, Judged];
  const extra = extraPerYear(setup.baseline, setup.plan);
  const saves = savesMoney(setup);
  const effects = effectsOf(baseline.figures, plan.figures);
  const harms = harmsOf(effects, plan, baseline.figures);
  const { hours } = setup.baseline.period;
  const margins = setup.guards.flatMap((guard) =>
    effectsGuarded(guard).map((of) => ({
      ...{ guard, of, helps: strengthOf(of, effects) },
      happens: happening(of, baseline.figures, plan.figures, hours),
    })),
  );
  const helped = margins.filter(({ happens, helps }) => happens >= 0 && helps >= 0);
  const known = {
    ...{ extra, effects, harms, helped: [...new Set(helped.map(({ guard }) => guard))] },
    dampAlone:
      helped.some(({ guard }) => guard === 'damp') &&
      happening('mould', baseline.figures, plan.figures, hours) < 0,
  };
  const rivals = setup.rivals.map(judged);
  const good = asGood({ ...setup, ...known, baseline, plan, rivals });
  const isAside = besidesOf(setup);
  const rival = good.find((each) => !isAside(each)) ?? null;
  const aside = good.find((each) => isAside(each) && extraPerYear(setup.plan, each) < 0) ?? null;
  const found = { ...known, rival, aside, better: null };

  if (harms.length > 0) {
    const verdict = helped.length > 0 || extra < 0 ? 'a trade-off' : 'too little';
    return { ...found, verdict, standing: -Math.max(...harms.map(({ weight }) => weight)) };
  }
  const most = Math.max(...margins.map(({ happens }) => happens));
  const forMoney = billSaved(setup.baseline, setup.plan) !== null;
  if (!saves && most < 0 && extra >= 0 && !forMoney) {
    return { ...found, verdict: 'not needed', standing: most };
  }
  if (!saves && helped.length === 0) {
    const helps = Math.max(...margins.map((each) => Math.min(each.helps, each.happens)));
    return { ...found, verdict: 'too little', standing: Math.min(helps, -Number.EPSILON) };
  }
  const apart = rival === null ? null : extraPerYear(setup.plan, rival);
  if (apart !== null && apart < 0) {
    return { ...found, better: rival, verdict: 'something else first', standing: apart };
  }
  const helps = Math.max(...helped.map((each) => Math.min(each.helps, each.happens)));
  const ahead = apart ?? (saves ? -extra : helps);
  return { ...found, verdict: 'worth it', standing: Math.max(ahead, Number.EPSILON) };
}

/** Whether it does in nine of ten draws. */
const savesMoney = ({ baseline, plan, range }: WeighSetup): boolean =>
  range.high < 0 && extraPerYear(baseline, plan) < 0;

/** Whether something could be done as well as the plan, and does not make it needless. */
function besidesOf(setup: WeighSetup): (rival: PlanMeasures) => boolean {
  const counts = setup.heatsOtherwise === true || savesMoney(setup);
  return ({ plan }) => counts && setup.besides?.has(plan) === true;
}

/** Rivals that do as much as a plan, cheapest first; behind them what does so and could be done as well. */
export function rivalsByMerit(setup: WeighSetup): PlanMeasures[] {
  const { helped } = weighPlan({ ...setup, rivals: [] });
  const [baseline, plan] = [setup.baseline, setup.plan].map(judged) as [Judged, Judged];
  const good = asGood({
    ...{ baseline, plan, room: setup.room, helped },
    rivals: setup.rivals.map(judged),
  });
  const isAside = besidesOf(setup);
  return [...good.filter((each) => !isAside(each)), ...good.filter(isAside)];
}

/** Whether two verdicts come to the same for who has to decide. */
export const asksTheSame = (one: Verdict, other: Verdict): boolean =>
  one === other || (LEAVE_IT.has(one) && LEAVE_IT.has(other));

/** How far the greatest help against something is beyond what people would notice. [share of that] */
function strengthOf(of: Effect['of'], effects: readonly Effect[]): number {
  const better = effects.filter((effect) => effect.better && effect.of === of);
  return better.length === 0 ? -1 : Math.max(...better.map(({ weight }) => weight)) / NOTICED - 1;
}

function harmsOf(effects: readonly Effect[], plan: Judged, before: PlanFigures): Effect[] {
  const { hours } = plan.measures.period;
  return effects.filter(
    (effect) =>
      !effect.better &&
      effect.weight >= CLEAR &&
      happening(harmOf(effect), plan.figures, before, hours) >= 0,
  );
}

const LEAVE_IT: ReadonlySet<Verdict> = new Set(['not needed', 'too little']);
/** Weight of an effect that is clear to anybody. */
export const CLEAR = 1;
