import type { i32 } from '../../units/portable.ts';

/**
 * Elements and internal masses of a home in the time loop, each stepped in its own modes
 * (wall-modes.ts), and how their inner surfaces meet air and radiant node of their rooms.
 *
 * The near end of a wall is a room; its far end is a boundary temperature, adiabatic, or a second
 * room. A surface meets the air by convection and the radiant node by radiation; the wall behind it
 * sees the mean of both, weighted by how well each reaches it, raised by what sun falls on the
 * surface.
 *
 * One number a wall in each array, but for the modes of wall c, `[firstMode[c], firstMode[c + 1])`.
 */
export interface Walls {
  readonly count: i32;
  /** Near room, second room or -1, and boundary temperature at the far end or -1. */
  readonly near: Int32Array;
  readonly far: Int32Array;
  readonly boundary: Int32Array;
  /** Ledger entry of the near and the far room, from a month's first record on. */
  readonly book: Int32Array;
  readonly farBook: Int32Array;
  readonly firstMode: Int32Array;
  /** Inner surface to air and to radiant node, at both ends. [W/K] */
  readonly nearAir: Float64Array;
  readonly nearRadiant: Float64Array;
  readonly farAir: Float64Array;
  readonly farRadiant: Float64Array;
  /** Last node to the far end. [W/K] */
  readonly farG: Float64Array;
  /** Kelvins that a watt of the room's sun on surfaces adds to what the surface sees. [K/W] */
  readonly nearSun: Float64Array;
  readonly farSun: Float64Array;
  /** Answers of first and last node to a kelvin at either end. [K/K] */
  readonly nearToNear: Float64Array;
  readonly nearToFar: Float64Array;
  readonly farToNear: Float64Array;
  readonly farToFar: Float64Array;
  /** By mode; see WallModes. */
  readonly mode: Float64Array;
  readonly decay: Float64Array;
  readonly intoNear: Float64Array;
  readonly intoFar: Float64Array;
  readonly atNear: Float64Array;
  readonly atFar: Float64Array;
  readonly stored: Float64Array;
}
