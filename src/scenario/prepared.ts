import type { Automation } from '../control/automation.ts';
import type { Household } from '../control/household.ts';
import type { RoomBands } from '../home/bands.ts';
import type { Home } from '../home/home.ts';
import type { Assumed, Notice } from '../home/notices.ts';
import type { Prices } from '../home/prices.ts';

/** One plan of a scenario with every choice made: what a run needs besides the weather. */
export interface PreparedPlan {
  /** The scenario's title. */
  readonly scenario: string;
  /** The plan's name. */
  readonly plan: string;
  /** What it asks, in one sentence; empty where the scenario does not say. */
  readonly description: string;
  readonly home: Home;
  readonly household: Household;
  /** What watches and acts; thermostats, sensors, devices, habits by readings, rules. */
  readonly automation: Automation;
  /** One per room. */
  readonly bands: readonly RoomBands[];
  /** One per room: class of material for the mould index at the cold spot. */
  readonly mouldClasses: readonly MouldClass[];
  readonly prices: Prices;
  /** Things bought for this plan. */
  readonly purchases: readonly {
    readonly what: string;
    readonly price: number;
    readonly lastsYears: number;
  }[];
  /** Discount rate for money in later years. [1/year] */
  readonly discountRate: number;
  readonly period: {
    /** First and last local day of the simulated period, "MM-DD"; null for the whole weather file. */
    readonly from: string | null;
    readonly to: string | null;
  };
  /** When homes like it are usually heated; null where nothing heats it. */
  readonly usualSeason: {
    /** Bit m is set for the months that belong to it, January = bit 0. */
    readonly months: number;
    /** Limit of the mean outdoor temperature, and the highest that it may be. [°C] */
    readonly below: number;
    readonly belowAtMost: number;
  } | null;
  /** Control step. [s] */
  readonly dt: number;
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Notice[];
  /** What to know of the values assumed, once, when a scenario is checked; nothing where it is absent. */
  readonly remarks?: readonly Notice[];
}

export type MouldClass = 'very sensitive' | 'sensitive' | 'medium resistant' | 'resistant';
