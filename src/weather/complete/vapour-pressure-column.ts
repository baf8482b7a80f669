import { saturationPressureOverWater } from '../../physics/moist-air/saturation-pressure.ts';

/**
 * Vapour pressure of outdoor air from what stations report. [Pa]
 *
 * Both relative humidity and dew point are over liquid water also in frost, as weather services
 * report them (WMO-No. 8). Relative humidity counts where both are given; sensor overshoot above
 * 100 %, and a dew point above the temperature, are read as saturated.
 *
 * @param temperature  without holes [°C]
 * @param relative  relative humidity [%], NaN where unknown
 * @param dew  dew point [°C], NaN where unknown
 * @returns NaN where neither is known
 */
export function vapourPressureColumn(
  temperature: Float64Array,
  relative: Float64Array | null,
  dew: Float64Array | null,
): Float64Array {
  return Float64Array.from(temperature, (t, k) => {
    const rh = relative?.[k] ?? Number.NaN;
    if (Number.isNaN(t)) return Number.NaN;
    if (!Number.isNaN(rh)) return (Math.min(100, rh) / 100) * saturationPressureOverWater(t);
    const td = dew?.[k] ?? Number.NaN;
    return Number.isNaN(td) ? Number.NaN : saturationPressureOverWater(Math.min(td, t));
  });
}
