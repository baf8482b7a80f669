import { skyLoss } from '../../physics/heat/sky-loss.ts';
import { OUTER_SURFACE_RESISTANCE } from '../../physics/heat/surface-resistance.ts';

/** How far below the air's temperature the outdoors is that a face sees, for its share of cold sky. [K] */
export function skyDrop(tilt: number): number {
  return skyLoss(tilt) * OUTER_SURFACE_RESISTANCE;
}
