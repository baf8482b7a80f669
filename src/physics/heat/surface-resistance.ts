/** Direction of heat flow through a surface. */
export type HeatFlowDirection = 'upwards' | 'horizontal' | 'downwards';

/**
 * Resistance between an inner surface and the room (air and radiation together).
 *
 * Plain, well-emitting surfaces (0.9) in still air at about 20 °C. Horizontal also serves surfaces
 * within 30° of upright.
 *
 * @returns [m2 K/W]
 * Source: ISO 6946:2017, conventional surface resistances, as in wiki.indigud.de, RSI_RSE.
 */
export function innerSurfaceResistance(direction: HeatFlowDirection): number {
  return INNER[direction];
}

/**
 * Resistance between an outer surface and outdoors at the conventional 4 m/s of wind, any direction.
 * [m2 K/W] Source: ISO 6946:2017, conventional surface resistances, as in wiki.indigud.de, RSI_RSE.
 */
export const OUTER_SURFACE_RESISTANCE = 0.04;

const INNER: Readonly<Record<HeatFlowDirection, number>> = {
  upwards: 0.1,
  horizontal: 0.13,
  downwards: 0.17,
};
