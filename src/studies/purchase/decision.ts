import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { dampness } from './dampness.ts';
import {
  type PurchaseSetup,
  type Verdict,
  type Weighing,
  weighPurchase,
} from './weigh-purchase.ts';

/** Whether to buy, in words made from the figures. */
export interface Decision {
  readonly verdict: Verdict;
  /** False where an input may well be such that the verdict turns round. */
  readonly sure: boolean;
  /** The plan that is as safe for less money, where the verdict is to fix something else first. */
  readonly instead: string | null;
  /** The verdict itself first. */
  readonly sentences: readonly string[];
}

export interface DecisionSetup extends PurchaseSetup {
  /** Values of inputs at which the decision turns round; null for those that do not turn it. */
  readonly flips: readonly {
    readonly input: string;
    readonly unit: string;
    readonly today: number;
    readonly value: number | null;
    /** Whether both are differences from today; they are values themselves unless it says so. */
    readonly relative?: boolean;
    /** Whether that value may well be so, here or before long. */
    readonly likely: boolean;
  }[];
}

/**
 * The verdict of `weighPurchase` with its reasons. It is sure where no input of `flips` turns it
 * round at a likely value and where the money between the plan and its nearest rival is more than
 * the doubtful inputs move it.
 */
export function decision(setup: DecisionSetup): Decision {
  const { plan, range } = setup;
  const weighed = weighPurchase(setup);
  const { verdict, extra, rival, better } = weighed;
  const apart = rival === null ? null : Math.abs(extraPerYear(plan, rival));
  const moved = Math.max(range.high - extra, extra - range.low);
  const turned = setup.flips.filter(({ value }) => value !== null);
  const near = turned.filter(({ likely }) => likely);
  const sure = near.length === 0 && (verdict === 'wait' || apart === null || apart > moved);
  return {
    verdict,
    sure,
    instead: better?.plan ?? null,
    sentences: [
      verdictWords(setup, weighed),
      hoursWords(setup, weighed),
      moneyWords(setup, extra),
      ...(rival !== null && better === null ? [rivalWords(plan, rival)] : []),
      ...turned.map(flipWords),
      ...(sure || near.length > 0 ? [] : [notSureWords(setup, verdict, apart, moved)]),
    ],
  };
}

function verdictWords(setup: DecisionSetup, weighed: Weighing): string {
  const { plan, room } = setup;
  const { verdict, better } = weighed;
  if (verdict === 'buy') return buyWords(setup, weighed);
  if (verdict === 'wait')
    return `Wait: ${plan.plan} would change too little here to be worth buying.`;
  const less = money(-extraPerYear(plan, better!));
  const { currency } = plan.money;
  return `Fix something else first: ${better!.plan} keeps the mould risk of the ${room} as low and costs ${less} ${currency} a year less than ${plan.plan}.`;
}

/**
 * Where mould would not get going anyway, dryness is all that is bought; without another way to the
 * same, only the buyer can say whether it is worth its money.
 */
function buyWords(setup: DecisionSetup, { extra, rival }: Weighing): string {
  const { baseline, plan, room, range } = setup;
  if (range.high < 0 && extra < 0) {
    return `Buy it: ${plan.plan} saves money whatever the doubtful inputs are.`;
  }
  if ((baseline.rooms[room]?.mould_index_peak ?? 0) < GROWTH) {
    const less = rival === null ? '' : ' for less';
    return `Buy it only for the dryness: mould would not get going in the ${room} even without ${plan.plan}; nothing else that was tried makes it as dry${less}.`;
  }
  if (rival !== null) {
    return `Buy it: nothing else that was tried brings the mould risk of the ${room} as low for less than ${plan.plan}.`;
  }
  const aYear = `${money(Math.abs(extra))} ${plan.money.currency} a year`;
  return extra < 0
    ? `Buy it: nothing else that was tried brings the mould risk of the ${room} as low, and ${plan.plan} saves ${aYear}.`
    : `Buy it if ${aYear} are worth it to you: nothing else that was tried brings the mould risk of the ${room} as low as ${plan.plan}.`;
}

function hoursWords({ baseline, plan }: DecisionSetup, { spots, damp }: Weighing): string {
  const from = dampness(baseline);
  const to = dampness(plan);
  const hours = (before: number, after: number) => `${money(before)} to ${money(after)}`;
  if (Math.abs(spots) < 1 && Math.abs(damp) < 1) {
    return `Cold spots are above 80 % for ${money(from.coldSpotHours)} room-hours a year with it or without.`;
  }
  return (
    `Cold spots above 80 % go from ${hours(from.coldSpotHours, to.coldSpotHours)} room-hours a year, ` +
    `rooms too damp from ${hours(from.dampHours, to.dampHours)}.`
  );
}

function moneyWords({ plan, range }: DecisionSetup, extra: number): string {
  const { currency } = plan.money;
  const all = `${extra < 0 ? 'saves' : 'costs'} ${money(Math.abs(extra))} ${currency} a year, purchase cost included`;
  if (range.high - range.low < 0.5) return `It ${all}.`;
  const [low, high] = [range.low, range.high].map((end) => figureText(end, 0));
  return `It ${all}; between ${low} and ${high} with doubtful inputs low and high, below 0 being saved.`;
}

function rivalWords(plan: PlanMeasures, rival: PlanMeasures): string {
  const more = extraPerYear(plan, rival);
  const apart = `${money(Math.abs(more))} ${plan.money.currency} a year ${more < 0 ? 'less' : 'more'}`;
  return `The cheapest other way to as low a mould risk, ${rival.plan}, costs ${apart}.`;
}

function flipWords({
  input,
  unit,
  today,
  value,
  relative,
}: DecisionSetup['flips'][number]): string {
  const there = `${figureText(value)} ${unit}`;
  return relative
    ? `It would turn round were ${input} ${there} against today instead of ${figureText(today)}.`
    : `It would turn round were ${input} ${there} instead of ${figureText(today)}.`;
}

function notSureWords(
  { plan }: DecisionSetup,
  verdict: Verdict,
  apart: number | null,
  moved: number,
): string {
  const { currency } = plan.money;
  return (
    `This is not sure: doubtful inputs move the money by ${money(moved)} ${currency} a year, and only ` +
    `${money(apart ?? 0)} lie between ${verdict === 'buy' ? 'it and the next' : 'the two'}.`
  );
}

/** Mould index from which growth is seen under a microscope. */
const GROWTH = 1;

const money = (value: number): string => figureText(value, 0);
