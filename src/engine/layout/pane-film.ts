import { INNER_RADIATIVE, splitFilm } from '../../physics/heat/surface-coefficients.ts';
import { innerSurfaceResistance } from '../../physics/heat/surface-resistance.ts';

/** Film at the inner face of panes, of air and radiation together. [m2 K/W] */
export const PANE_FILM = innerSurfaceResistance('horizontal');

/**
 * How a pane meets its room: by convection with the air, by radiation with the other surfaces. In a room
 * that has no others the whole film is to the air. [W/(m2 K)]
 *
 * @param surfaced  whether the room has surfaces besides panes
 * @param longWave  coefficient between surfaces [W/(m2 K)]
 */
export function splitPaneFilm(surfaced: boolean, longWave = INNER_RADIATIVE) {
  return splitFilm(PANE_FILM, surfaced ? longWave : 0);
}
