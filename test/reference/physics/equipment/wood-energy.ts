import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Energy in firewood as it is bought, water in it included: what burns, less what drying it takes.
 *
 *     18.5 (1 - m) - 2.44 m  MJ/kg
 *
 * Net calorific value: the vapour leaves by the chimney. Kinds of wood differ by 5 % either way.
 *
 * @param moisture  water over wood and water together [-], 0 to 0.6; seasoned logs have 0.15 to 0.2
 * @returns energy [J/kg]
 * @throws RangeError outside that range, or NaN
 *
 * @example woodEnergy(0.18) / 3.6e6 // 4.1 kWh/kg
 *
 * Source: form of ISO 18125 and ISO 17225-1; 18.5 to 19 MJ/kg for dry wood and 2.44 MJ for a kilogram of
 * water, as makers of briquettes state them.
 */
export function woodEnergy(moisture: number): number {
  requireWithin(moisture, [0, 0.6], 'woodEnergy: moisture', '');
  return DRY_WOOD * (1 - moisture) - DRYING * moisture;
}

const DRY_WOOD = 18.5e6; // J/kg
const DRYING = 2.44e6; // J/kg of water, from 25 °C
