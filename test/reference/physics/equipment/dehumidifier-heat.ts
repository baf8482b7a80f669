import { latentHeat } from '../../../../src/physics/moist-air/latent-heat.ts';
import { JOULES_PER_KWH } from '../../../../src/units/joules-per-kwh.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Heat that a dehumidifier gives to its room: all its electricity, and the latent heat of the water.
 *
 * Exact for a steady run with the water staying in the room as liquid at room temperature.
 *
 * @param power  electricity it draws [W], 0 to 1e5
 * @param waterRate  water it takes from the air [kg/s], 0 to 1
 * @param temperature  of the room [°C], -40 to 100
 * @returns heat [W]
 * @throws RangeError outside those ranges, or NaN
 */
export function dehumidifierHeat(power: number, waterRate: number, temperature: number): number {
  requireWithin(power, POWERS, 'dehumidifierHeat: power', 'W');
  requireWithin(waterRate, RATES, 'dehumidifierHeat: water rate', 'kg/s');
  return power + waterRate * latentHeat(temperature);
}

/**
 * Heat that a dehumidifier gives to its room per litre of water in its tank.
 *
 * @param efficiency  water over electricity, the "integrated energy factor" [L/kWh], 0.05 to 20
 * @param temperature  of the room [°C], -40 to 100
 * @returns heat [kWh/L]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example dehumidifierHeatPerLitre(1.57, 20) // 1.319
 */
export function dehumidifierHeatPerLitre(efficiency: number, temperature: number): number {
  requireWithin(efficiency, EFFICIENCIES, 'dehumidifierHeatPerLitre: efficiency', 'L/kWh');
  return 1 / efficiency + latentHeat(temperature) / JOULES_PER_KWH; // a litre is a kilogram
}

const POWERS = [0, 1e5] as const;
const RATES = [0, 1] as const;
const EFFICIENCIES = [0.05, 20] as const;
