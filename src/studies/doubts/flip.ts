import type { Verdict } from '../verdict/weigh-plan.ts';

/** The value of one input at which a decision turns round. */
export interface Flip {
  /** RFC 6901 pointer to the input; null for one that stands in many places, such as all thermostats. */
  readonly path: string | null;
  readonly input: string;
  readonly unit: string;
  readonly today: number;
  /** Null where the decision is the same today, at `low` and at `high`, or where it could not be tried. */
  readonly value: number | null;
  readonly low: number;
  readonly high: number;
  /** What it turns into beyond that value; null where it does not turn. */
  readonly becomes: Verdict | null;
  /** Whether the value lies where the input may well be, here or before long. */
  readonly likely: boolean;
  /** Whether other values could be run at all. */
  readonly tried: boolean;
  /** Whether `today` and `value` are differences from today. */
  readonly relative: boolean;
  /** How it was found, or why not. */
  readonly note: string;
}
