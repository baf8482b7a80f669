import type { CoilAir } from './coil.ts';

/**
 * Heat and water that outdoor air brings in where a unit with one duct blows room air out.
 *
 * @param flow  of dry air [kg/s]
 * @returns sensible and latent [W], below 0 where outdoor air is colder or drier
 *
 * Source: the rating of portable units with one duct (10 CFR 430 subpart B appendix CC), from memory.
 */
export function makeUpAirHeat(
  flow: number,
  outdoors: CoilAir,
  room: CoilAir,
): { readonly sensible: number; readonly latent: number } {
  return {
    sensible: flow * DRY_AIR * (outdoors.temperature - room.temperature),
    latent: flow * EVAPORATION * (outdoors.humidityRatio - room.humidityRatio),
  };
}

const DRY_AIR = 1006; // J/(kg K)
const EVAPORATION = 2.468e6; // J/kg
