/**
 * Decimals with which levels of a species are printed that stand beside each other.
 *
 * @param levels  [species unit]
 */
export const airDecimals = (...levels: readonly number[]): number =>
  Math.max(...levels) < 20 ? 1 : 0;
