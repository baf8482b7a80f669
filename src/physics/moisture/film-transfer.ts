import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';
import { DRY_AIR_DENSITY, DRY_AIR_HEAT } from '../moist-air/constants.ts';

/**
 * How readily vapour passes between air and a film of water, from how readily heat does: the flow is
 * this times the difference of vapour pressures, that over the film being saturated at its temperature.
 *
 * @param convection  convective coefficient of heat [W/(m2 K)], 0 to 100
 * @returns [kg/(s m2 Pa)], 6.80e-9 a unit of the coefficient
 * @throws RangeError outside that range, or NaN
 * Source: Lewis relation, Lewis number 0.85 to the power 2/3 (from memory); air at 20 °C.
 */
export function filmTransfer(convection: number): number {
  requireWithin(convection, [0, 100], 'filmTransfer: convective coefficient', 'W/(m2 K)');
  return convection / (DRY_AIR_DENSITY * DRY_AIR_HEAT * VAPOUR_GAS * ROOM * powerOf(LEWIS, 2 / 3));
}

const VAPOUR_GAS = 461.52; // J/(kg K)
const ROOM = 293.15; // K
const LEWIS = 0.85;
