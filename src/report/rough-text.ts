import { figureText } from '../units/figure-text.ts';

/** A figure to two significant digits or its whole units, for how far something is off: more of them would be noise. */
export function roughText(value: number): string {
  const size = Math.abs(value);
  if (!Number.isFinite(value) || size >= 10) return figureText(value, 0);
  return figureText(value, size === 0 ? 0 : Math.min(6, 1 - Math.floor(Math.log10(size))));
}
