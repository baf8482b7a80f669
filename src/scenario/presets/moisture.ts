import { type Preset, preset } from '../../units/preset.ts';
import type { FURNISHINGS } from '../choices.ts';

/**
 * Buffer value of a square metre of room surface with what stands before it: painted plaster 0.1 to
 * 0.4, wood and textiles 0.5 to 1.5. [g/(m2 %RH)]
 */
export const MOISTURE_BUFFER: Readonly<Record<(typeof FURNISHINGS)[number], Preset>> = {
  bare: preset(0.2, 0.1, 0.4),
  furnished: preset(0.5, 0.3, 0.8),
  plenty: preset(1, 0.6, 1.5),
};

/**
 * Tiles of a bathroom: the floor and half of the walls, from the floor alone to all of both. [m2]
 *
 * @param floorArea  of a square room [m2]
 * @param height  [m]
 */
export function bathroomTiles(floorArea: number, height: number): Preset {
  const walls = 4 * Math.sqrt(floorArea) * height;
  const value = Number((floorArea + walls / 2).toPrecision(3));
  return preset(value, floorArea, floorArea + walls, 'own estimate: floor and half of the walls');
}

/**
 * What the slow store holds, over what the store of a day holds. Three weeks reach sqrt(21) times as
 * deep as a day into the same thick material; thin linings end before that. [-]
 */
export const DEEP_MOISTURE: Preset = preset(
  4.6,
  1,
  9.5,
  'own estimate: thick material to the depth of three weeks, from thin linings to three months',
);
