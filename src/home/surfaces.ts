import {
  innerSurfaceResistance,
  OUTER_SURFACE_RESISTANCE,
} from '../physics/heat/surface-resistance.ts';
import type { Surfaces } from './chain.ts';
import type { Element } from './home.ts';

/**
 * Surface resistances of an element: a room on the one side and outdoors on the other, or rooms on both
 * sides of a partition. Heat goes the way it goes in winter: up through a roof, down through a floor.
 */
export function surfacesOf(kind: Element['kind']): Surfaces {
  const inner = innerSurfaceResistance(FLOW[kind]);
  if (kind === 'partition') return { inner, outer: inner, bothFaces: true };
  return { inner, outer: OUTER_SURFACE_RESISTANCE };
}

const FLOW = {
  wall: 'horizontal',
  roof: 'upwards',
  floor: 'downwards',
  partition: 'horizontal',
} as const;
