import type { Scenario } from '../scenario/read-scenario.ts';
import type { AboutPlan } from './about-plan.ts';
import { decisionFlips } from './doubts/decision-flips.ts';
import type { DoubtfulInput } from './doubts/doubtful-inputs.ts';
import type { Flip } from './doubts/flip.ts';
import { type OneAtATime, oneAtATime } from './doubts/one-at-a-time.ts';
import type { PlanDraws } from './doubts/plan-draws.ts';
import { steadyShare } from './doubts/steady-share.ts';
import { type InputWords, verdictFlips } from './doubts/verdict-flips.ts';
import type { Option } from './options.ts';
import type { RunVariant } from './plan-variant.ts';
import { labelOf } from './purchase/drying-figures.ts';
import { type EqualSafety, equalSafety } from './purchase/equal-safety.ts';
import { fuelPrices, pricesOfBoth } from './purchase/mean-prices.ts';
import { bringsDehumidifier } from './purchase/new-devices.ts';
import { type PurchaseSum, purchaseSum } from './purchase/purchase-sum.ts';
import { warmerOption } from './purchase/warmer-option.ts';
import { type Decision, decision } from './verdict/decision.ts';
import { doneBesides } from './verdict/done-besides.ts';
import { smokeFirst } from './verdict/smoke-first.ts';
import { rivalsByMerit, type WeighSetup, weighPlan } from './verdict/weigh-plan.ts';

/** Everything that is found out about one plan. */
export interface PlanStudy {
  readonly about: AboutPlan;
  /** The money as a sum; null where nothing is bought and no device is new. */
  readonly sum: PurchaseSum | null;
  /** All doubtful inputs drawn at once; null where none were. */
  readonly draws: PlanDraws | null;
  /** Extra money a year with each of the inputs that matter most low and high, all else as it is. */
  readonly doubt: OneAtATime;
  /** Whether to do or buy it, and what would turn that round. */
  readonly decision: Decision;
  /** Prices, water, thermostats far from today's; then doubtful inputs that turn it within their range. */
  readonly flips: readonly Flip[];
  /**
   * Share of the draws in which the plan comes out beside doing nothing as it does as things are taken to
   * be; null where there are none.
   */
  readonly steady: number | null;
  /** What a room must be warmer to be as safe as with a dehumidifier; null for anything else. */
  readonly equalSafety: EqualSafety | null;
  /** The room kept so much warmer, as an option of its own; null where not found or not needed. */
  readonly warmer: Option | null;
  /** What could be done instead, as good or not. */
  readonly rivals: readonly Option[];
}

/** A study of a plan whose money is told as a sum. */
export type PurchaseStudy = PlanStudy & { readonly sum: PurchaseSum };

export interface PlanStudySetup {
  readonly scenario: Scenario;
  /** Texts of `Scenario.files`. */
  readonly files: ReadonlyMap<string, string>;
  readonly about: AboutPlan;
  /** The baseline first. */
  readonly options: readonly Option[];
  readonly draws: PlanDraws | null;
  /** Doubtful inputs to try low and high by themselves, those that move the answer most first. */
  readonly inputs: readonly DoubtfulInput[];
  readonly inputWords: InputWords;
  readonly run: RunVariant;
}

/**
 * A plan against every other way to the same, with its inputs low and high and the values at which
 * the answer turns round.
 */
export async function planStudy(setup: PlanStudySetup): Promise<PlanStudy> {
  const { about, options, draws, inputs, inputWords, run } = setup;
  const baseline = options[0]!;
  const { option: plan, device, guards, purchases, spared } = about;
  const { discountRate } = plan.prepared;
  const prices = pricesOfBoth(baseline.prepared.prices, plan.prepared.prices);
  const measures = { baseline: baseline.measures, plan: plan.measures };
  const doubt = await oneAtATime({ baseline: baseline.variant, plan: plan.variant, inputs, run });
  const { safe, warmer } = await warmth(setup);
  const rivals = [
    ...options
      .slice(1)
      .filter(
        (option) => option !== plan && !(about.dries && bringsDehumidifier(baseline, option)),
      ),
    ...(warmer === null ? [] : [warmer]),
  ];
  const room = device === null ? null : about.room;
  const range = rangeOf(draws, doubt);
  const besides = doneBesides(
    baseline.prepared,
    plan.prepared,
    rivals.map(({ prepared }) => prepared),
  );
  const weigh = (figures: Pick<WeighSetup, 'baseline' | 'plan' | 'rivals' | 'range'>) =>
    weighPlan({ guards, room, ...besides, ...figures });
  const weighed = {
    ...measures,
    ...besides,
    guards,
    room,
    range,
    rivals: rivals.map((one) => one.measures),
  };
  const asked = {
    ...{ baseline, plan, range, run, weigh },
    rivals: closest(rivals, weighed),
    fuelPrices: fuelPrices(measures.baseline, measures.plan, device, prices),
  };
  const far = await decisionFlips(asked);
  const near = await verdictFlips(asked, inputs, inputWords);
  const flips = [...far.filter(toldOf), ...near];
  const steady = draws === null ? null : steadyShare(asked, draws);
  return {
    ...{ about, draws, doubt, steady, flips, rivals, warmer },
    equalSafety: safe,
    sum:
      device === null && purchases.length === 0
        ? null
        : purchaseSum({
            ...{ ...measures, device, purchases, spared, discountRate, prices },
            label: device === null ? null : labelOf(plan.prepared, device),
          }),
    decision: decision({
      ...{ ...weighed, purchases, discountRate, prices, flips, steady },
      first: guards.includes('air') ? smokeFirst(baseline.prepared) : '',
    }),
  };
}

/** Extra money a year, without the lowest and highest tenth of the draws. */
function rangeOf(draws: PlanDraws | null, { figure }: OneAtATime) {
  if (draws === null) return { low: figure, high: figure };
  const { p10, p90 } = draws.difference.money;
  return { low: Math.min(figure, p10), high: Math.max(figure, p90) };
}

/** What no price turns is told by what it would have to be worth instead. */
const toldOf = ({ input, value }: Flip): boolean =>
  value !== null || input !== 'the price of what is bought';

/** The room kept as much warmer as makes it as safe as a dehumidifier does. */
async function warmth(setup: PlanStudySetup) {
  const { about, options, run } = setup;
  if (!about.dries) return { safe: null, warmer: null };
  const baseline = options[0]!;
  const device = about.option.measures;
  const safe = await equalSafety({ room: about.room, baseline, raw: baseline.raw, device, run });
  return { safe, warmer: warmerOption(setup, baseline, safe) };
}

/** Rivals to run again at other values: the cheapest that are as good, and the warmer room. */
function closest(rivals: readonly Option[], weighed: WeighSetup): Option[] {
  const nearest = rivalsByMerit(weighed).map(({ plan }) => plan);
  const place = ({ name, origin }: Option) =>
    nearest.includes(name)
      ? nearest.indexOf(name)
      : nearest.length + (origin === 'as safe' ? 0 : 1);
  const most = nearest.length === 0 ? 1 : RIVALS_ASKED;
  return rivals.toSorted((a, b) => place(a) - place(b)).slice(0, most);
}

const RIVALS_ASKED = 2;
