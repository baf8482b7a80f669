import type { RoomBands } from '../home/bands.ts';
import type { Home } from '../home/home.ts';
import type { Assumed, Notice } from '../home/notices.ts';
import type { Prices } from '../home/prices.ts';
import type { MouldSensitivity } from '../physics/mould/mould-kind.ts';
import type { LocalClock } from '../units/local-clock.ts';
import type { Weather } from '../weather/weather.ts';
import type { Purchase } from './energy/purchase-cost-per-year.ts';
import type { StepSensitive } from './notices/step-notices.ts';

/** What the figures of one plan are made from, besides the trace and the ledger. */
export interface MeasuresSetup {
  /** The scenario's title and the plan's name, as they are printed. */
  readonly scenario: string;
  readonly plan: string;
  readonly home: Home;
  /** One per room. */
  readonly bands: readonly RoomBands[];
  /** One per room: what the cold spot is made of, for the mould index. */
  readonly mouldClasses: readonly MouldSensitivity[];
  readonly prices: Prices;
  readonly weather: Weather;
  /** The household's wall clock: standing charges are due by its days. */
  readonly clock: LocalClock;
  /** First instant, on the hour [s UTC], and length [h]. */
  readonly period: { readonly start: number; readonly hours: number };
  /** Whether presence decides when some room is heated; absent means not. */
  readonly heatsByPresence?: boolean;
  /** Whether activities burn gas, so that its meter is paid for; absent means not. */
  readonly activitiesBurnGas?: boolean;
  /** What a long control step may blur; absent means nothing. */
  readonly stepSensitive?: StepSensitive;
  readonly purchases: readonly Purchase[];
  /** [1/year] */
  readonly discountRate: number;
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Notice[];
}
