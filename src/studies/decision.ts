import type { PlanMeasures } from '../measures/plan-measures.ts';
import { figureText } from '../units/figure-text.ts';
import { dampness } from './dampness.ts';
import { extraPerYear } from './other-prices.ts';

/** Whether to buy, in words made from the figures. */
export interface Decision {
  readonly verdict: 'buy' | 'wait' | 'fix something else first';
  /** False where an input within its range would turn the verdict round. */
  readonly sure: boolean;
  /** The plan that is as safe for less money, where the verdict is to fix something else first. */
  readonly instead: string | null;
  readonly sentences: readonly string[];
}

export interface DecisionSetup {
  readonly baseline: PlanMeasures;
  /** The plan that buys something. */
  readonly plan: PlanMeasures;
  /** What could be done instead: other plans, proposals, the room kept warmer. */
  readonly rivals: readonly PlanMeasures[];
  /** Extra money a year of the plan over the baseline with doubtful inputs low and high. */
  readonly range: { readonly low: number; readonly high: number };
  /** Values of inputs at which the decision turns round; null for those that do not turn it. */
  readonly flips: readonly {
    readonly input: string;
    readonly unit: string;
    readonly today: number;
    readonly value: number | null;
  }[];
}

/**
 * The verdict follows from four questions in this order, hours being room-hours a year:
 *
 * 1. Does the plan save money whatever the doubtful inputs are? Then damp need not be asked about.
 * 2. Does it take away 24 h or more of cold spots above 80 %, or of rooms above their humidity
 *    band? If not, wait: money would buy nothing.
 * 3. Does something else come as low in cold-spot hours, within 24 h or a twentieth, for less money
 *    a year, and leave people in the cold for no more than 24 h longer? Then that comes first, the
 *    cheapest of them.
 * 4. Otherwise, buy.
 *
 * The verdict is sure where no input of `flips` turns it round and where the money between the plan
 * and its nearest rival is more than the doubtful inputs move it.
 */
export function decision(setup: DecisionSetup): Decision {
  const { baseline, plan, range } = setup;
  const before = dampness(baseline);
  const after = dampness(plan);
  const spots = before.coldSpotHours - after.coldSpotHours;
  const damp = before.dampHours - after.dampHours;
  const extra = extraPerYear(baseline, plan);
  const rivals = asSafe(setup);
  const [rival] = rivals;
  const better = rival !== undefined && extraPerYear(plan, rival) < 0 ? rival : null;
  const saves = range.high < 0 && extra < 0;
  const helps = spots >= NOTABLE || damp >= NOTABLE;

  const verdict =
    better !== null && (saves || helps)
      ? 'fix something else first'
      : saves || helps
        ? 'buy'
        : 'wait';
  const apart = rival === undefined ? null : Math.abs(extraPerYear(plan, rival));
  const moved = Math.max(range.high - extra, extra - range.low);
  const turned = setup.flips.filter(({ value }) => value !== null);
  const sure = turned.length === 0 && (verdict === 'wait' || apart === null || apart > moved);
  return {
    verdict,
    sure,
    instead: verdict === 'fix something else first' ? (better?.plan ?? null) : null,
    sentences: [
      verdictWords(setup, verdict, better),
      hoursWords(setup, spots, damp),
      moneyWords(setup, extra),
      ...(rival !== undefined && better === null ? [rivalWords(plan, rival)] : []),
      ...turned.map(flipWords),
      ...(sure || turned.length > 0 ? [] : [notSureWords(setup, verdict, apart, moved)]),
    ],
  };
}

/** Rivals as free of mould as the plan and not much colder, cheapest first. */
function asSafe({ plan, rivals }: DecisionSetup): PlanMeasures[] {
  const own = dampness(plan);
  const near = Math.max(NOTABLE, 0.05 * own.coldSpotHours);
  return rivals
    .filter((rival) => {
      const { coldSpotHours, coldHours } = dampness(rival);
      return coldSpotHours <= own.coldSpotHours + near && coldHours <= own.coldHours + NOTABLE;
    })
    .sort((a, b) => extraPerYear(b, a));
}

function verdictWords(
  { plan }: DecisionSetup,
  verdict: Decision['verdict'],
  better: PlanMeasures | null,
) {
  if (verdict === 'buy') return `Buy it: ${plan.plan} is worth its money here.`;
  if (verdict === 'wait')
    return `Wait: ${plan.plan} would change too little here to be worth buying.`;
  const less = money(-extraPerYear(plan, better!));
  const { currency } = plan.money;
  return `Fix something else first: ${better!.plan} is as safe from mould and costs ${less} ${currency} a year less than ${plan.plan}.`;
}

function hoursWords({ baseline, plan }: DecisionSetup, spots: number, damp: number): string {
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
  const all = `${extra < 0 ? 'saves' : 'costs'} ${money(Math.abs(extra))} ${currency} a year, owning included`;
  if (range.high - range.low < 0.5) return `It ${all}.`;
  const [low, high] = [range.low, range.high].map((end) => figureText(end, 0));
  return `It ${all}; between ${low} and ${high} with doubtful inputs low and high, below 0 being saved.`;
}

function rivalWords(plan: PlanMeasures, rival: PlanMeasures): string {
  const more = money(extraPerYear(plan, rival));
  return `The nearest other way to be as safe, ${rival.plan}, costs ${more} ${plan.money.currency} a year more.`;
}

const flipWords = ({ input, unit, today, value }: DecisionSetup['flips'][number]): string =>
  `It would turn round at ${figureText(value)} ${unit} of ${input}; today it is ${figureText(today)}.`;

function notSureWords(
  { plan }: DecisionSetup,
  verdict: Decision['verdict'],
  apart: number | null,
  moved: number,
): string {
  const { currency } = plan.money;
  return (
    `This is not sure: doubtful inputs move the money by ${money(moved)} ${currency} a year, and only ` +
    `${money(apart ?? 0)} lie between ${verdict === 'buy' ? 'it and the next' : 'the two'}.`
  );
}

const money = (value: number): string => figureText(value, 0);

const NOTABLE = 24; // room-hours a year; less is not worth a word
