import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';
import { DRY_AIR_DENSITY } from '../moist-air/constants.ts';
import { CRACK_EXPONENT } from './crack-flow.ts';

/**
 * Hole that would leak at 4 Pa what the home's cracks leak, from a blower-door test at 50 Pa.
 *
 * The flow is carried down from 50 Pa with exponent 0.65, the usual one for cracks; a home's own
 * exponent lies between 0.55 and 0.75, which moves the area by 25 % either way.
 *
 * @param ach50  air changes per hour at 50 Pa [1/h], 0 to 100
 * @param volume  that the test divided by [m3], above 0
 * @returns effective leakage area at 4 Pa, discharge coefficient 1 [m2]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example leakageAreaFromAch50(7, 250) // 0.0365 m2
 *
 * Source: ASTM E779 and ASHRAE Fundamentals (2017) ch. 16 (effective leakage area), from memory.
 */
export function leakageAreaFromAch50(ach50: number, volume: number): number {
  requireWithin(ach50, ACH50, 'leakageAreaFromAch50: ach50', '1/h');
  requireWithin(volume, VOLUMES, 'leakageAreaFromAch50: volume', 'm3');
  const flowAt50 = (ach50 * volume) / 3600;
  const flowAt4 = flowAt50 * powerOf(4 / 50, CRACK_EXPONENT);
  return flowAt4 * Math.sqrt(DRY_AIR_DENSITY / (2 * 4));
}

const ACH50 = [0, 100] as const;
const VOLUMES = [0.01, 1e6] as const;
