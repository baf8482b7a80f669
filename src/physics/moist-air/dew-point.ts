import { requireWithin } from '../../units/require-within.ts';
import { AIR_TEMPERATURES, TRIPLE_POINT, ZERO_CELSIUS } from './constants.ts';
import {
  lnPressureOverIce,
  lnPressureOverWater,
  lnSlopeOverIce,
  lnSlopeOverWater,
} from './saturation-curve.ts';
import { saturationPressure, saturationPressureOverWater } from './saturation-pressure.ts';

/**
 * Temperature at which air with this vapour pressure is saturated: saturationPressure inverted.
 *
 * Below 0.01 °C this is the frost point. Newton's method on the logarithm, which is almost
 * straight in temperature, from a Magnus estimate: three or four rounds to 1e-9 K.
 *
 * @param vapourPressure  partial pressure of water vapour [Pa], as saturated air has it from
 *   -100 to 200 °C: 0.0014 to 1.555e6; completely dry air has no dew point
 * @returns dew point [°C]
 * @throws RangeError outside that range, or NaN
 *
 * @example dewPoint(1370) // 11.62: air of 21 °C and 55 %
 */
export function dewPoint(vapourPressure: number): number {
  requireWithin(vapourPressure, VAPOUR_PRESSURES, 'dewPoint: vapour pressure', 'Pa');
  if (vapourPressure <= TRIPLE_POINT_OVER_ICE) return frostPoint(vapourPressure);
  if (vapourPressure < TRIPLE_POINT_OVER_WATER) return TRIPLE_POINT;
  const target = Math.log(vapourPressure);
  let kelvin = ZERO_CELSIUS + magnus(target, 17.625, 243.04);
  for (let round = 0; round < ROUNDS; round++) {
    const step = (target - lnPressureOverWater(kelvin)) / lnSlopeOverWater(kelvin);
    kelvin += step;
    if (Math.abs(step) < CLOSE_ENOUGH) break;
  }
  return kelvin - ZERO_CELSIUS;
}

function frostPoint(vapourPressure: number): number {
  const target = Math.log(vapourPressure);
  let kelvin = ZERO_CELSIUS + magnus(target, 22.46, 272.62);
  for (let round = 0; round < ROUNDS; round++) {
    const step = (target - lnPressureOverIce(kelvin)) / lnSlopeOverIce(kelvin);
    kelvin += step;
    if (Math.abs(step) < CLOSE_ENOUGH) break;
  }
  return kelvin - ZERO_CELSIUS;
}

/** First guess: p = 611 exp(b t/(c + t)) solved for t. [°C] */
function magnus(lnPressure: number, b: number, c: number): number {
  const exponent = lnPressure - LN_611;
  return (c * exponent) / (b - exponent);
}

const LN_611 = Math.log(611);
const ROUNDS = 12; // never needed in full; stops a loop that rounding keeps alive
const CLOSE_ENOUGH = 1e-11; // K
const VAPOUR_PRESSURES = [
  saturationPressure(AIR_TEMPERATURES[0]),
  saturationPressure(AIR_TEMPERATURES[1]),
] as const;
const TRIPLE_POINT_OVER_ICE = saturationPressure(TRIPLE_POINT);
const TRIPLE_POINT_OVER_WATER = saturationPressureOverWater(TRIPLE_POINT);
