import { withoutGroups } from '../../units/sum-text.ts';
import type { Html } from './html.ts';
import { emptyStrip, strip } from './strip.ts';
import type { TriedFigure } from './try-figures.ts';

/**
 * A tried figure beside what it is now, on a scale from nothing to twice as much as now, which stays as
 * it is while a knob is turned unless the figure goes beyond. Where nothing is known yet it keeps the place.
 */
export function tryStrip({ before, after, look }: TriedFigure): Html {
  const [baseline = Number.NaN, plan = Number.NaN] = [before, after].map((text) =>
    Number(withoutGroups(text)),
  );
  if (!(Number.isFinite(baseline) && Number.isFinite(plan))) return emptyStrip(WIDTH);
  const to = Math.max(2 * baseline, plan);
  return strip({ from: 0, to, baseline, plan, look }, WIDTH);
}

const WIDTH = 160; // px
