import type { i32 } from '../../units/portable.ts';
import { TRIPLE_POINT, ZERO_CELSIUS } from './constants.ts';
import { lnSlopeOverWater } from './saturation-curve.ts';
import {
  saturationPressure,
  saturationPressureOverWater,
  saturationPressureSlope,
} from './saturation-pressure.ts';

/**
 * A quick stand-in for saturationPressure, for loops that ask millions of times.
 *
 * From -40 to 80 °C a cubic stands in each quarter of a kelvin that has the formula's value and
 * slope at both ends (cubic Hermite interpolation). Its relative error is at most h^4/384 of the
 * fourth derivative: 1e-9 at the cold end, less above. The nodes count from the triple point, so
 * that the kink of the curve is a node and no cubic straddles it; there the two curves part by
 * 6e-9. Outside the table the formula answers, so range and errors are the formula's too.
 *
 * What the factory gives allocates nothing when it is called.
 *
 * @returns saturation vapour pressure [Pa] of a temperature [°C]
 */
export function saturationTable(): (temperature: number) => number {
  const cubics = saturationCubics();
  return (temperature) => saturationAt(cubics, temperature);
}

/**
 * Saturation vapour pressure [Pa] of a temperature [°C], from the table that saturationTable looks into.
 *
 * @param cubics  see saturationCubics
 */
export function saturationAt(cubics: Float64Array, temperature: number): number {
  if (!(temperature >= LOWEST && temperature <= HIGHEST)) return saturationPressure(temperature);
  const x = (temperature - FIRST_NODE) * PER_KELVIN;
  const interval = Math.trunc(x) as i32;
  const s = x - interval;
  const k = 4 * interval;
  return cubics[k]! + s * (cubics[k + 1]! + s * (cubics[k + 2]! + s * cubics[k + 3]!));
}

/**
 * Four coefficients an interval, lowest power first, of the way from its lower node, 0 to 1. Worked out once
 * and the same array for all, which nobody may change.
 */
export function saturationCubics(): Float64Array {
  kept ??= workedOut();
  return kept;
}

function workedOut(): Float64Array {
  const cubics = new Float64Array(4 * (INTERVALS_ON_ICE + INTERVALS_ON_WATER));
  for (let i = 0; i < INTERVALS_ON_ICE + INTERVALS_ON_WATER; i++) {
    const low = nodeTemperature(i);
    const high = nodeTemperature(i + 1);
    const firstOnWater = i === INTERVALS_ON_ICE;
    const p0 = firstOnWater ? saturationPressureOverWater(low) : saturationPressure(low);
    const p1 = saturationPressure(high);
    const m0 = firstOnWater
      ? p0 * lnSlopeOverWater(low + ZERO_CELSIUS)
      : saturationPressureSlope(low);
    const m1 = saturationPressureSlope(high);
    const rise = p1 - p0;
    const start = m0 / PER_KELVIN;
    const end = m1 / PER_KELVIN;
    cubics.set([p0, start, 3 * rise - 2 * start - end, start + end - 2 * rise], 4 * i);
  }
  return cubics;
}

let kept: Float64Array | null = null;

const nodeTemperature = (i: number): number => TRIPLE_POINT + (i - INTERVALS_ON_ICE) / PER_KELVIN;

const LOWEST = -40; // °C
const HIGHEST = 80; // °C
const PER_KELVIN = 4;
const INTERVALS_ON_ICE = 161; // from 0.01 down past -40 °C
const INTERVALS_ON_WATER = 320; // from 0.01 up past 80 °C
const FIRST_NODE = nodeTemperature(0);
