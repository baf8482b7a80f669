import type { LocalClock } from '../units/local-clock.ts';
import type { Fuel } from './home.ts';

/** What energy costs here, and what carbon comes with it. */
export interface Prices {
  /** Currency as it is written behind a sum, e.g. "GBP". */
  readonly currency: string;
  readonly fuels: Readonly<Partial<Record<Fuel, FuelPrice>>>;
}

export interface FuelPrice {
  readonly tariff: Tariff;
  /** Standing charge. [currency/day] */
  readonly standing: number;
  /** [kg CO2e/kWh] */
  readonly carbon: number;
}

/** Price by the clock. [currency/kWh] */
export type Tariff =
  | { readonly by: 'flat'; readonly price: number }
  | {
      readonly by: 'blocks';
      /** Price outside every block. */
      readonly price: number;
      /** Minutes of the day; a block whose end is not after its start runs past midnight. */
      readonly blocks: readonly {
        readonly from: number;
        readonly to: number;
        /** Bit d is set for the days on which it starts, Monday = bit 0; absent means all. */
        readonly days?: number;
        readonly price: number;
      }[];
      /** The clock the meter follows. */
      readonly clock: LocalClock;
    }
  | {
      readonly by: 'series';
      /** Instant of the first price [s UTC], spacing [s], and the prices, which repeat after the last. */
      readonly start: number;
      readonly step: number;
      readonly prices: Float64Array;
    };
