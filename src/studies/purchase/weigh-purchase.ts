import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import { dampness } from './dampness.ts';

export type Verdict = 'buy' | 'wait' | 'fix something else first';

/** What a purchase is weighed by. */
export interface PurchaseSetup {
  readonly baseline: PlanMeasures;
  /** The plan that buys something, and the room it is bought for. */
  readonly plan: PlanMeasures;
  readonly room: string;
  /** What could be done instead: other plans, proposals, the room kept warmer. */
  readonly rivals: readonly PlanMeasures[];
  /** Extra money a year of the plan over the baseline with doubtful inputs low and high. */
  readonly range: { readonly low: number; readonly high: number };
}

/** How a purchase comes out. Hours are room-hours a year. */
export interface Weighing {
  readonly verdict: Verdict;
  /** Distance from turning round, in money or in hours; above 0 for "buy", below 0 otherwise. */
  readonly standing: number;
  /** Money a year beyond the baseline, purchase cost included. */
  readonly extra: number;
  /** Hours of cold spots above 80 %, and of rooms above their humidity band, that it takes away. */
  readonly spots: number;
  readonly damp: number;
  /** The cheapest of the rivals that are as safe; null for none. */
  readonly rival: PlanMeasures | null;
  /** The cheapest equally safe option, where it costs less than the purchase; else null. */
  readonly better: PlanMeasures | null;
}

/**
 * Four questions in this order:
 *
 * 1. Does the plan save money whatever the doubtful inputs are? Then damp need not be asked about.
 * 2. Does it take away 24 h or more of cold spots above 80 %, or of rooms above their humidity
 *    band? If not, wait: money would buy nothing.
 * 3. Is something else as safe for less money a year? As safe is what brings the cold spot of the
 *    room as low in hours, within 24 h or a twentieth, leaves the cold spots of the whole home no
 *    worse than they are, and people in the cold for no more than 24 h longer. Then that comes
 *    first, the cheapest of them.
 * 4. Otherwise, buy.
 */
export function weighPurchase(setup: PurchaseSetup): Weighing {
  const { baseline, plan, range } = setup;
  const before = dampness(baseline);
  const after = dampness(plan);
  const spots = before.coldSpotHours - after.coldSpotHours;
  const damp = before.dampHours - after.dampHours;
  const extra = extraPerYear(baseline, plan);
  const rival = asSafe(setup)[0] ?? null;
  const better = rival !== null && extraPerYear(plan, rival) < 0 ? rival : null;
  const helped = Math.max(spots, damp) - NOTABLE;
  const saves = range.high < 0 && extra < 0;
  const weighed = { extra, spots, damp, rival, better };
  if (!saves && helped < 0) return { ...weighed, verdict: 'wait', standing: helped, better: null };
  if (better !== null) {
    const standing = extraPerYear(plan, better);
    return { ...weighed, verdict: 'fix something else first', standing };
  }
  const ahead = rival !== null ? extraPerYear(plan, rival) : saves ? -extra : helped;
  return { ...weighed, verdict: 'buy', standing: Math.max(ahead, Number.EPSILON) };
}

/** Rivals as free of mould as the plan and not much colder, cheapest first. */
export function asSafe({ baseline, plan, room, rivals }: PurchaseSetup): PlanMeasures[] {
  const own = spotHours(plan, room);
  const near = Math.max(NOTABLE, 0.05 * own);
  const worst = dampness(baseline).coldSpotHours;
  const cold = dampness(plan).coldHours + NOTABLE;
  return rivals
    .filter((rival) => {
      const { coldSpotHours, coldHours } = dampness(rival);
      return spotHours(rival, room) <= own + near && coldSpotHours <= worst && coldHours <= cold;
    })
    .sort((a, b) => extraPerYear(b, a));
}

/** A year's hours of a room's cold spot above 80 %. */
function spotHours({ rooms, period }: PlanMeasures, room: string): number {
  return (rooms[room]?.cold_spot_hours_above_80_pct ?? 0) / yearsIn(period.hours);
}

const NOTABLE = 24; // room-hours a year; less is not worth a word
