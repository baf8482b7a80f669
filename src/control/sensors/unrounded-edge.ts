import type { Condition } from '../automation.ts';

/**
 * The edge that a reading before rounding has to be beyond, exactly if it is beyond another edge
 * after it; so the time loop need not round. Found by halving, to the last bit.
 *
 * @param edge  [unit of the reading]
 * @param step  to which readings are rounded, halves up; 0 for none [unit of the reading]
 *
 * @example unroundedEdge('above', 60, 1) // just below 60.5
 */
export function unroundedEdge(is: Condition['is'], edge: number, step: number): number {
  if (!(step > 0 && Number.isFinite(edge))) return edge;
  const beyond = is === 'above' ? 1 : -1;
  let inside = edge - beyond * 2 * step;
  let outside = edge + beyond * 2 * step;
  for (;;) {
    const middle = inside + (outside - inside) / 2;
    if (middle === inside || middle === outside) return inside;
    const rounded = Math.round(middle / step) * step;
    if (beyond * rounded > beyond * edge) outside = middle;
    else inside = middle;
  }
}
