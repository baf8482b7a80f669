import type { Span } from '../span.ts';
import type { SensorState } from './sensor-states.ts';

/**
 * See which of a sensor's conditions its reading meets, and between which readings that stays so.
 *
 * "Above 60, clear at 55" is met from a reading above 60 until one of 55 or less; "below" likewise,
 * the other way up. A reading on the edge does not meet it, and one that is NaN never does. What
 * is compared is the reading as the sensor rounds it.
 *
 * @param met  1 for each condition that is met
 */
export function judge(sensor: SensorState, met: Uint8Array): void {
  const { reading, edges } = sensor;
  let from = Number.NEGATIVE_INFINITY;
  let to = Number.POSITIVE_INFINITY;
  for (let n = 0; n < edges.length; n++) {
    const { condition, way, value, clear } = edges[n]!;
    const isMet = way * reading > (met[condition] === 1 ? clear : value);
    met[condition] = isMet ? 1 : 0;
    const turn = way * (isMet ? clear : value);
    if (isMet === way > 0) from = Math.max(from, turn);
    else to = Math.min(to, turn);
  }
  sensor.calmFrom = from;
  sensor.calmTo = to;
}

/** True where all the conditions of a span are met; an empty one always is. */
export function allMet(met: Uint8Array, { from, to }: Span): boolean {
  for (let c = from; c < to; c++) if (met[c] === 0) return false;
  return true;
}
