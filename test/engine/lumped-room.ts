import type { Home } from '../../src/home/home.ts';
import { bareHome, bareRoom, ideallyHeated } from './homes.ts';
import { AIR_HEAT } from './reference-air.ts';

const FLOW = 0.05; // [m3/s]

/** Loss of the lumped room. [W/K] */
export const LUMPED_LOSS = FLOW * AIR_HEAT;

/**
 * A room that is one heat capacity and one loss: air that leaks at a steady rate, and a furnishing
 * factor that makes capacity over loss come to a time constant.
 *
 * @param hours  time constant [h]
 * @param power  of its heater [W]
 */
export function lumpedRoom(hours: number, power?: number): Home {
  const volume = 100;
  const room = bareRoom('room', volume, { furnishingFactor: (hours * 3600 * FLOW) / volume });
  const leakage = { how: { by: 'rate', flow: FLOW }, share: [1], ach50: null } as const;
  return ideallyHeated(bareHome([room], { leakage }), power);
}
