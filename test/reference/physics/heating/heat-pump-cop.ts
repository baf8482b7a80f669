import { requireWithin } from '../../../../src/units/require-within.ts';
import { idealHeatingCop } from './ideal-heating-cop.ts';

/**
 * Heat over electricity of a heat pump: a share of what Carnot allows between the outdoor air (or
 * brine) and the water it heats.
 *
 *     COP = quality T_water/(T_water - T_source), the difference not below 20 K, COP not below 1
 *
 * One share for all temperatures comes within 10 % of a published table from -20 to 0 °C outdoors
 * and 35 to 65 °C water (quality 0.40). Defrosting is in the share, not a dip at 0 to 5 °C; part load
 * is left out.
 *
 * @param source  temperature that heat is taken from [°C], -60 to 60
 * @param water  temperature of the water it makes [°C], 0 to 90
 * @param quality  share of the ideal [-], 0.1 to 0.8
 * @returns coefficient of performance [-], 1 or more
 * @throws RangeError outside those ranges, or NaN
 *
 * @example heatPumpCop(0, 45) // 2.47
 */
export function heatPumpCop(source: number, water: number, quality = HOME_QUALITY): number {
  requireWithin(source, SOURCES, 'heatPumpCop: source temperature', '°C');
  requireWithin(water, WATERS, 'heatPumpCop: water temperature', '°C');
  requireWithin(quality, QUALITIES, 'heatPumpCop: quality', '');
  return Math.max(1, quality * idealHeatingCop(Math.min(source, water - LEAST_LIFT), water));
}

/**
 * Share of the ideal that air-source heat pumps reach in lived-in homes, pumps, controls, backup and
 * hot water counted in. [-] Low 0.30, high 0.42.
 *
 * Chosen so that the demonstration of 742 UK homes comes out: median 2.80 over a year and 2.44 on
 * the coldest day; its water temperatures were not published with it.
 */
export const HOME_QUALITY = 0.35;

/** Share of the ideal COP reached by the heat pump alone, after a table of good air-source units. [-] */
export const MACHINE_QUALITY = 0.4;

const LEAST_LIFT = 20; // K: compressors have a least pressure ratio
const SOURCES = [-60, 60] as const;
const WATERS = [0, 90] as const;
const QUALITIES = [0.1, 0.8] as const;
