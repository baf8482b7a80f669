/**
 * Wind that gets to the walls of a house over the wind that blows above its surroundings.
 *
 * Wind pressure goes with the square of this: 0.55 for a suburban house, a tenth where neighbours
 * stand close on all sides. It belongs to the classes of the basic infiltration model, so a home keeps
 * its class; that model has site and shelter in its wind coefficients already and takes none of this.
 * With `wallPressureCoefficient` windward and leeward walls then differ by 0.97, 0.75, 0.53, 0.32 and
 * 0.10; EN 16798-7:2017 has 1.2 in the open, 0.75 for normal and 0.35 for shielded houses (from memory).
 *
 * @param shelterClass  1 no obstructions; 2 isolated rural house; 3 suburban, buildings across the
 *   street; 4 urban, more than a house's height away; 5 close on all sides
 * @returns ratio, 1 for class 1 [-]
 * @throws RangeError for any other class
 *
 * Source: generalised shielding coefficients of M. H. Sherman and D. T. Grimsrud,
 * "Infiltration-pressurization correlation", ASHRAE Trans. 86(2), 1980, over that of class 1; from memory.
 */
export function shieldingRatio(shelterClass: number): number {
  const coefficient = SHIELDING[shelterClass - 1];
  if (coefficient === undefined) {
    throw new RangeError(
      `shieldingRatio: shelter class must be 1, 2, 3, 4 or 5, got ${shelterClass}`,
    );
  }
  return coefficient / SHIELDING[0];
}

const SHIELDING = [0.324, 0.285, 0.24, 0.185, 0.102] as const;
