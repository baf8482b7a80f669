import type { MildEdge } from '../../home/bands.ts';
import { createTrailingMean } from '../trailing-mean.ts';

/**
 * Tells, value by value of the outdoor temperature, whether the weather is mild: whether the mean over
 * the hours of an edge, or over as many as there were so far, is at its limit or above.
 *
 * @param dt  that a value stands for [s]
 */
export function createMildness(
  { from, hours }: MildEdge,
  dt: number,
): (outdoors: number) => boolean {
  const mean = createTrailingMean(Math.max(1, Math.round((hours * 3600) / dt)));
  return (outdoors) => mean.add(outdoors) >= from;
}

/** Mild hours of a series of them, 1 or 0; none where rooms have no edge for mild weather. */
export function mildHours(outdoors: Float32Array, mild: MildEdge | undefined): Uint8Array {
  const isMild = mild === undefined ? () => false : createMildness(mild, 3600);
  return Uint8Array.from(outdoors, (value) => (isMild(value) ? 1 : 0));
}
