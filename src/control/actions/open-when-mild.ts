import { type Moment, OUTDOOR } from '../control-context.ts';
import type { Household } from '../household.ts';
import type { Commands } from '../observations.ts';

/**
 * Windows that people leave open a little when it is mild, on average over days: none at 5 °C outdoors
 * and below, all of `openWhenMild` at 20 °C and above, in proportion between. Where clock, habits or
 * rules open a window wider, that holds; the little does not count as an open window to sensors.
 */
export function createMildOpening(
  { openWhenMild = 0, openings }: Household,
  moment: Moment,
): (commands: Commands) => void {
  const count = openWhenMild > 0 ? openings.length : 0;
  return ({ openings: shares, openTimes }) => {
    if (count === 0) return;
    const warmth = (moment.observed.outdoor[OUTDOOR.temperature]! - SHUT) / (WIDEST - SHUT);
    const little = openWhenMild * Math.min(1, Math.max(0, warmth));
    for (let o = 0; o < count; o++) {
      if (!(little > shares[o]!)) continue;
      shares[o] = little;
      openTimes[o] = 1;
    }
  };
}

/** Outdoors. [°C] */
const SHUT = 5;
const WIDEST = 20;
