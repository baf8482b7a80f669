import type { MoneyTurnSetup } from './money-turn.ts';
import type { Verdict, WeighSetup } from './weigh-plan.ts';

/** What a decision is made and worded from: both plans, what turns it, and how it is begun. */
export interface DecisionSetup
  extends WeighSetup,
    Pick<MoneyTurnSetup, 'purchases' | 'discountRate' | 'prices'> {
  /** Values of inputs at which the decision turns round; null for those that do not turn it. */
  readonly flips: readonly {
    readonly input: string;
    readonly unit: string;
    readonly today: number;
    readonly value: number | null;
    /** What it turns into there; null where it does not. */
    readonly becomes: Verdict | null;
    /** Whether both are differences from today; they are values themselves unless it says so. */
    readonly relative?: boolean;
    /** Whether that value may well be so, here or before long. */
    readonly likely: boolean;
  }[];
  /** Share of draws of all that is doubtful in which the plan comes out alike; null for none. */
  readonly steady?: number | null;
  /** What is said before the verdict, and never without it; absent or empty for nothing. */
  readonly first?: string;
}
