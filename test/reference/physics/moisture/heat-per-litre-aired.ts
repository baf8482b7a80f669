import { moistAirHeatCapacity } from '../../../../src/physics/moist-air/moist-air-heat-capacity.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Heat that airing carries out with each kilogram (litre) of water it removes: warming the air that
 * comes in, over how much drier it is.
 *
 *     (1006 + 1860 w_out) (t_in - t_out)/(w_in - w_out)
 *
 * By kilogram of dry air, as the air that leaves and the air that comes are the same kilograms. A
 * shortcut by grams a cubic metre, each at its own temperature, counts cold air as fuller than it
 * is and comes out higher: by 8 % at 5 °C outdoors, by 18 % near the end of drying.
 *
 * @param indoor  [°C], -50 to 60
 * @param indoorRatio  humidity ratio indoors [kg/kg], 0 to 1
 * @param outdoor  [°C], -60 to 60
 * @param outdoorRatio  humidity ratio outdoors [kg/kg], 0 to 1
 * @returns heat [J/kg]; negative where the air outdoors is warmer; Infinity where it is no drier
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: closed form.
 */
export function heatPerLitreAired(
  indoor: number,
  indoorRatio: number,
  outdoor: number,
  outdoorRatio: number,
): number {
  requireWithin(indoor, INDOORS, 'heatPerLitreAired: indoor', '°C');
  requireWithin(indoorRatio, RATIOS, 'heatPerLitreAired: humidity ratio indoors', 'kg/kg');
  requireWithin(outdoor, OUTDOORS, 'heatPerLitreAired: outdoor', '°C');
  requireWithin(outdoorRatio, RATIOS, 'heatPerLitreAired: humidity ratio outdoors', 'kg/kg');
  if (outdoorRatio >= indoorRatio) return Number.POSITIVE_INFINITY;
  return (moistAirHeatCapacity(outdoorRatio) * (indoor - outdoor)) / (indoorRatio - outdoorRatio);
}

const INDOORS = [-50, 60] as const;
const OUTDOORS = [-60, 60] as const;
const RATIOS = [0, 1] as const;
