import { requireWithin } from '../../../../src/units/require-within.ts';

/** Leaks of a home and what drives air through them. */
export interface LeakageArea {
  /** Effective leakage area at 4 Pa. [m2] */
  readonly area: number;
  /** Stack coefficient. [(L/s)2/(cm4 K)] */
  readonly stack: number;
  /** Wind coefficient. [(L/s)2/(cm4 (m/s)2)] */
  readonly wind: number;
}

/**
 * Air that leaks through a home, driven by warmth and wind together.
 *
 *     Q = A sqrt(Cs |dT| + Cw u^2)
 *
 * A model of one well-mixed home without large flues; expect single hours within a quarter or so.
 *
 * @param leakage  area and coefficients; see leakageCoefficients
 * @param temperatureDifference  indoors minus outdoors [K], -100 to 100; only its size counts
 * @param windSpeed  at the weather station [m/s], 0 to 100
 * @returns flow [m3/s]
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: ASHRAE basic model, Fundamentals (2017) ch. 16 eq. 48, from memory; after M. H. Sherman and
 * D. T. Grimsrud, "Infiltration-pressurization correlation", ASHRAE Trans. 86(2), 1980.
 */
export function leakageFlow(
  leakage: LeakageArea,
  temperatureDifference: number,
  windSpeed: number,
): number {
  requireWithin(leakage.area, AREAS, 'leakageFlow: area', 'm2');
  requireWithin(leakage.stack, COEFFICIENTS, 'leakageFlow: stack coefficient', '(L/s)2/(cm4 K)');
  requireWithin(leakage.wind, COEFFICIENTS, 'leakageFlow: wind coefficient', '(L/s)2/(cm4 (m/s)2)');
  requireWithin(temperatureDifference, DIFFERENCES, 'leakageFlow: temperature difference', 'K');
  requireWithin(windSpeed, WIND_SPEEDS, 'leakageFlow: wind speed', 'm/s');
  const drive =
    leakage.stack * Math.abs(temperatureDifference) + leakage.wind * windSpeed * windSpeed;
  return LITRES_PER_CM2 * leakage.area * Math.sqrt(drive);
}

const AREAS = [0, 100] as const;
const COEFFICIENTS = [0, 0.01] as const;
const DIFFERENCES = [-100, 100] as const;
const WIND_SPEEDS = [0, 100] as const;
const LITRES_PER_CM2 = 10; // m/s in one (L/s)/cm2
