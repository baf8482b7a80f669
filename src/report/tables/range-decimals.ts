/**
 * How many decimals a value has that is known within a range, and the ends of that range: as many as tell
 * at least a twentieth of it.
 */
export function rangeDecimals({ low, high }: Range): number {
  const finest = (high - low) / PARTS;
  if (!(finest > 0)) return MOST;
  return Math.min(MOST, Math.max(0, Math.ceil(-Math.log10(finest))));
}

interface Range {
  readonly low: number;
  readonly high: number;
}

const PARTS = 20;
const MOST = 6;
