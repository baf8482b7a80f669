/** One layer of a wall, floor or roof: a material with mass, or a resistance without (air gap, film). */
export type Layer = MassiveLayer | ResistiveLayer;

export interface MassiveLayer {
  /** [m] */
  readonly thickness: number;
  /** [W/(m K)] */
  readonly conductivity: number;
  /** [kg/m3] */
  readonly density: number;
  /** [J/(kg K)] */
  readonly specificHeat: number;
}

interface ResistiveLayer {
  /** [m2 K/W] */
  readonly resistance: number;
}

/** Resistance of a layer to steady heat flow. [m2 K/W] */
export function layerResistance(layer: Layer): number {
  return 'resistance' in layer ? layer.resistance : layer.thickness / layer.conductivity;
}

/** Heat a layer stores per kelvin. [J/(m2 K)] */
export function layerCapacity(layer: Layer): number {
  return 'resistance' in layer ? 0 : layer.thickness * layer.density * layer.specificHeat;
}
