import { requireWithin } from '../../units/require-within.ts';

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
  const flowAt4 = flowAt50 * (4 / 50) ** EXPONENT;
  return flowAt4 * Math.sqrt(AIR_DENSITY / (2 * 4));
}

/**
 * Blower-door result that a leakage area stands for: leakageAreaFromAch50 inverted.
 *
 * @param area  effective leakage area at 4 Pa [m2], 0 to 100
 * @param volume  to divide by [m3], above 0
 * @returns air changes per hour at 50 Pa [1/h]
 * @throws RangeError outside those ranges, or NaN
 */
export function ach50FromLeakageArea(area: number, volume: number): number {
  requireWithin(area, AREAS, 'ach50FromLeakageArea: area', 'm2');
  requireWithin(volume, VOLUMES, 'ach50FromLeakageArea: volume', 'm3');
  const flowAt4 = area / Math.sqrt(AIR_DENSITY / (2 * 4));
  return (flowAt4 * (50 / 4) ** EXPONENT * 3600) / volume;
}

/**
 * The rule of thumb: a year's mean infiltration is a twentieth of the blower-door result.
 *
 * @param ach50  air changes per hour at 50 Pa [1/h], 0 to 100
 * @returns mean infiltration [1/h]; single homes differ from it by a factor of two
 * @throws RangeError outside that range, or NaN
 *
 * Source: J. Kronvall and A. Persily 1982, as told by A. Meier, "Infiltration: Just ACH50 Divided by
 * 20?", Home Energy, Jan./Feb. 1994.
 */
export function infiltrationByAch50Over20(ach50: number): number {
  requireWithin(ach50, ACH50, 'infiltrationByAch50Over20: ach50', '1/h');
  return ach50 / 20;
}

const ACH50 = [0, 100] as const;
const VOLUMES = [0.01, 1e6] as const;
const AREAS = [0, 100] as const;
const EXPONENT = 0.65;
const AIR_DENSITY = 1.2041; // kg/m3, at 20 °C and 101 325 Pa
