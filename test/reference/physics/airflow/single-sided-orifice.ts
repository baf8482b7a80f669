import { GRAVITY } from '../../../../src/physics/airflow/gravity.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Air through one open window by warmth alone: in below, out above, as through an orifice.
 *
 *     q = (Cd/3) A sqrt(g H |dT|/T), Cd = 0.6
 *
 * A cross-check beside singleSidedAiring; take the larger of this and singleSidedWindFlow.
 *
 * @param area  standing open [m2], 0 to 50
 * @param height  of the opening [m], 0 to 10
 * @param temperatureDifference  indoors minus outdoors [K], -100 to 100; only its size counts
 * @param meanTemperature  of indoors and outdoors [°C], -50 to 60
 * @returns flow [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: P. R. Warren 1978; CIBSE AM10; from memory.
 */
export function singleSidedStackFlow(
  area: number,
  height: number,
  temperatureDifference: number,
  meanTemperature: number,
): number {
  requireWithin(area, AREAS, 'singleSidedStackFlow: area', 'm2');
  requireWithin(height, HEIGHTS, 'singleSidedStackFlow: height', 'm');
  requireWithin(temperatureDifference, DIFFERENCES, 'singleSidedStackFlow: difference', 'K');
  requireWithin(meanTemperature, TEMPERATURES, 'singleSidedStackFlow: mean temperature', '°C');
  const lightness = Math.abs(temperatureDifference) / (meanTemperature + 273.15);
  return (DISCHARGE / 3) * area * Math.sqrt(GRAVITY * height * lightness);
}

/**
 * Air through one open window by wind alone: q = 0.025 A u.
 *
 * @param area  standing open [m2], 0 to 50
 * @param windSpeed  at the window's height [m/s], 0 to 100
 * @returns flow [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: P. R. Warren 1978; CIBSE AM10; from memory.
 */
export function singleSidedWindFlow(area: number, windSpeed: number): number {
  requireWithin(area, AREAS, 'singleSidedWindFlow: area', 'm2');
  requireWithin(windSpeed, WIND_SPEEDS, 'singleSidedWindFlow: wind speed', 'm/s');
  return 0.025 * area * windSpeed;
}

const AREAS = [0, 50] as const;
const HEIGHTS = [0, 10] as const;
const WIND_SPEEDS = [0, 100] as const;
const DIFFERENCES = [-100, 100] as const;
const TEMPERATURES = [-50, 60] as const;
const DISCHARGE = 0.6;
