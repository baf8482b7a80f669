import { figureText } from '../../units/figure-text.ts';

/** A share as people read it, never parted from its unit: "46 %". @param value  [%] */
export const pct = (value: number): string => `${figureText(value, 0)}\u00a0%`;
