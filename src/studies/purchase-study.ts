import { raiseRoomSetpoint } from '../scenario/edits/raise-setpoints.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import { settingsFromPatch } from '../scenario/yaml/settings-from-patch.ts';
import { figureText } from '../units/figure-text.ts';
import { decisionFlips, type Flip } from './doubts/decision-flips.ts';
import type { DoubtfulInput } from './doubts/doubtful-inputs.ts';
import { type OneAtATime, oneAtATime } from './doubts/one-at-a-time.ts';
import type { Option } from './options.ts';
import { prepareVariant, type RunVariant, variantScenario } from './plan-variant.ts';
import { type AboutPurchase, bringsDehumidifier } from './purchase/about-purchase.ts';
import { type Decision, decision } from './purchase/decision.ts';
import { labelOf } from './purchase/drying-figures.ts';
import { type EqualSafety, equalSafety } from './purchase/equal-safety.ts';
import { meanElectricityPrice } from './purchase/mean-electricity-price.ts';
import { type PurchaseSum, purchaseSum } from './purchase/purchase-sum.ts';
import { asSafe } from './purchase/weigh-purchase.ts';

/** Everything that is found out about one purchase. */
export interface PurchaseStudy {
  readonly about: AboutPurchase;
  readonly sum: PurchaseSum;
  /** Extra money a year with each doubtful input low and high. */
  readonly doubt: OneAtATime;
  /** Whether to buy, and what would turn that round; null for a purchase that is no dehumidifier. */
  readonly decision: Decision | null;
  readonly flips: readonly Flip[];
  readonly equalSafety: EqualSafety | null;
  /** The room kept so much warmer, as an option of its own; null where not found or not needed. */
  readonly warmer: Option | null;
  /** What could be done instead, as safe or not. */
  readonly rivals: readonly Option[];
}

export interface PurchaseStudySetup {
  readonly scenario: Scenario;
  /** Texts of `Scenario.files`. */
  readonly files: ReadonlyMap<string, string>;
  readonly about: AboutPurchase;
  /** The baseline first. */
  readonly options: readonly Option[];
  readonly inputs: readonly DoubtfulInput[];
  readonly run: RunVariant;
}

/**
 * A purchase as a sum, against every other way to the same safety, with its inputs low and high and
 * the values at which the answer turns round.
 */
export async function purchaseStudy(setup: PurchaseStudySetup): Promise<PurchaseStudy> {
  const { about, options, inputs, run } = setup;
  const baseline = options[0]!;
  const { option: plan, device, purchases, dries } = about;
  const measures = { baseline: baseline.measures, plan: plan.measures };
  const { prices, discountRate } = plan.prepared;
  const label = labelOf(plan.prepared, device);
  const sum = purchaseSum({ ...measures, device, purchases, discountRate, prices, label });
  const doubt = await oneAtATime({ baseline: baseline.variant, plan: plan.variant, inputs, run });
  const known = { about, sum, doubt };
  if (!dries) {
    return {
      ...{ ...known, decision: null, flips: [], equalSafety: null, warmer: null, rivals: [] },
    };
  }

  const safe = await equalSafety({
    room: about.room,
    baseline,
    raw: baseline.raw,
    device: plan.measures,
    run,
  });
  const warmer = warmerOption(setup, safe);
  const rivals = [
    ...options.slice(1).filter((option) => !bringsDehumidifier(baseline, option)),
    ...(warmer === null ? [] : [warmer]),
  ];
  const range = { low: doubt.low, high: doubt.high };
  const { room } = about;
  const weighed = { ...measures, room, rivals: rivals.map((rival) => rival.measures), range };
  const nearest = asSafe(weighed).map(({ plan: name }) => name);
  const { electricity_kwh } = plan.measures.devices.detail[device]!;
  const flips = await decisionFlips({
    ...{ baseline, plan, room, range, run },
    rivals: closest(rivals, nearest),
    electricityPrice: meanElectricityPrice(
      baseline.measures,
      plan.measures,
      electricity_kwh,
      prices,
    ).price,
  });
  return {
    ...known,
    decision: decision({ ...weighed, flips }),
    flips,
    equalSafety: safe,
    warmer,
    rivals,
  };
}

/** Rivals to run again at other values: the cheapest equally safe ones, and the warmer room. */
function closest(rivals: readonly Option[], nearest: readonly string[]): Option[] {
  const place = ({ name, origin }: Option) =>
    nearest.includes(name)
      ? nearest.indexOf(name)
      : nearest.length + (origin === 'as safe' ? 0 : 1);
  return rivals.toSorted((a, b) => place(a) - place(b)).slice(0, RIVALS_ASKED);
}

function warmerOption(
  { scenario, files, options }: PurchaseStudySetup,
  { room, warmer_by_k: kelvin, measures }: EqualSafety,
): Option | null {
  if (measures === null || kelvin === null || kelvin === 0) return null;
  const baseline = options[0]!;
  const change = settingsFromPatch(raiseRoomSetpoint(baseline.raw, room, kelvin));
  const name = `${room} ${figureText(kelvin, 1)} K warmer`;
  const description = `only the ${room} is kept ${figureText(kelvin, 1)} K warmer`;
  const { plan, set } = baseline.variant;
  const variant = { plan, set: [...set, ...change], as: { name, description, purchases: [] } };
  return {
    ...{ name, description: description, origin: 'as safe', variant, assumedPurchases: [] },
    raw: variantScenario(scenario, variant),
    prepared: prepareVariant(scenario, files, variant),
    measures: { ...measures, plan: name },
  };
}

const RIVALS_ASKED = 2;
