import type { LocalClock } from '../../units/local-clock.ts';

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
        /** Bit m is set for the months in which it starts, January = bit 0; absent means all. */
        readonly months?: number;
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
