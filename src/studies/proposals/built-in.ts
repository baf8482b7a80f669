import type { Purchase } from '../../measures/energy/purchase-cost-per-year.ts';
import type { Edit } from '../../scenario/edits/edit.ts';

/** A plan that the program proposes by itself. */
export interface BuiltIn {
  readonly name: string;
  /** What it asks, in one sentence. */
  readonly description: string;
  /** Change to the scenario of the baseline. */
  readonly change: Edit;
  /** What has to be bought; empty too where no price is known in the currency. */
  readonly purchases: readonly AssumedPurchase[];
}

/** A purchase whose price nobody gave. */
export interface AssumedPurchase extends Purchase {
  readonly price_low: number;
  readonly price_high: number;
  readonly source: string;
}

/** A scenario with a plan laid on it, as plain values. */
export interface BuiltInContext {
  /** The baseline's scenario as plain values. */
  readonly raw: unknown;
  /** Each plan's scenario as plain values. */
  readonly plans: readonly { readonly name: string; readonly raw: unknown }[];
}
