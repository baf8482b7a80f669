import { requireWithin } from '../../units/require-within.ts';
import { ZERO_CELSIUS } from '../moist-air/constants.ts';

/**
 * Heat that a refrigerator removes for each unit of electricity, as a share of the most there can be.
 *
 *     EER = share T_evaporator/(T_condenser - T_evaporator), temperatures in K
 *
 * @param share  of the ideal that the machine reaches [-], 0.05 to 1
 * @param evaporator  where heat is taken up [°C], -20 to 30
 * @param condenser  where heat is given off [°C], at least 5 K above the evaporator, up to 90
 * @returns energy efficiency ratio [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example carnotEer(0.35, 10, 45) // 2.83
 *
 * Source: second law of thermodynamics.
 */
export function carnotEer(share: number, evaporator: number, condenser: number): number {
  requireWithin(share, SHARES, 'carnotEer: share of the ideal', '');
  requireWithin(evaporator, EVAPORATORS, 'carnotEer: evaporator', '°C');
  const condensers = [evaporator + LEAST_LIFT, HOTTEST] as const;
  requireWithin(condenser, condensers, 'carnotEer: condenser', '°C');
  return (share * (evaporator + ZERO_CELSIUS)) / (condenser - evaporator);
}

const SHARES = [0.05, 1] as const;
const EVAPORATORS = [-20, 30] as const;
const LEAST_LIFT = 5; // K
const HOTTEST = 90; // °C
