/**
 * A figure as people read it: plain decimals, a sensible number of them, never "NaN" or "-0".
 *
 * What is not a finite number is written as a dash, because a table must not pretend to know it.
 *
 * @param decimals  digits behind the point; left out, about three significant digits are kept
 */
export function figureText(value: number | null | undefined, decimals?: number): string {
  if (value === null || value === undefined || !Number.isFinite(value)) return NOT_KNOWN;
  const text = value.toFixed(decimals ?? fittingDecimals(value));
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** A figure as `figureText` writes it, with a plus sign in front of positive ones, for differences. */
export function signedText(value: number | null | undefined, decimals?: number): string {
  const text = figureText(value, decimals);
  return Number(text) > 0 ? `+${text}` : text;
}

function fittingDecimals(value: number): number {
  const size = Math.abs(value);
  if (size >= 100 || size === 0) return 0;
  if (size >= 10) return 1;
  if (size >= 1) return 2;
  return Math.min(MOST_DECIMALS, 2 - Math.floor(Math.log10(size)));
}

const NOT_KNOWN = '-';
const MOST_DECIMALS = 6;
