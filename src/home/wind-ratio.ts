import { localWindRatio, type Terrain } from '../physics/airflow/local-wind.ts';
import { shieldingRatio } from '../physics/airflow/shielding-ratio.ts';

/** Where wind blows, or is measured. */
export interface WindPlace {
  readonly terrain: Terrain;
  /** Above the ground. [m] */
  readonly height: number;
}

/**
 * Wind that meets a home's walls over the wind that the station measured: by the terrain and height of
 * both, and by what stands around the home.
 *
 * @param shelterClass  1 (no obstructions) to 5 (close on all sides), see shieldingRatio
 */
export function windRatio(home: WindPlace, station: WindPlace, shelterClass: number): number {
  const local = localWindRatio(home.terrain, home.height, station.terrain, station.height);
  return local * shieldingRatio(shelterClass);
}
