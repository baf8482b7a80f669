import { COMMON, preset } from '../../units/preset.ts';

/** Walls of a room over its floor area. [-] */
export const PAINTED_WALLS = preset(2.5, 1.5, 3.5, `${COMMON}: walls of a room over its floor`);

/**
 * Paint gives off half while it dries and half over months: share [-] and time constant [day] of each.
 * Sparks and others 1999: gone in 3 to 4 days from steel, over 200 from plasterboard.
 */
export const PAINT_PARTS = [
  { share: 0.5, days: 1.2 },
  { share: 0.5, days: 70 },
] as const;
