import { humidityRatioFromVapourPressure } from '../../../../src/physics/moist-air/humidity-ratio.ts';
import { saturationPressure } from '../../../../src/physics/moist-air/saturation-pressure.ts';
import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Temperature of a wetted thermometer in moving air: how far evaporation can cool.
 *
 * The inverse of humidityRatioFromWetBulb, by bisection to 1e-9 K. Around freezing two answers can
 * exist, one of a wet bulb above 0 °C and one of an iced bulb below; the wet one is given.
 *
 * @param temperature  air temperature [°C], -50 to 80
 * @param humidityRatio  [kg water/kg dry air], 0 to saturation
 * @param pressure  air pressure [Pa], 50 000 to 120 000
 * @returns thermodynamic wet-bulb temperature [°C]
 * @throws RangeError outside those ranges, or NaN
 */
export function wetBulb(temperature: number, humidityRatio: number, pressure: number): number {
  requireWithin(temperature, TEMPERATURES, 'wetBulb: temperature', '°C');
  requireWithin(pressure, PRESSURES, 'wetBulb: air pressure', 'Pa');
  const saturated = saturatedRatio(temperature, pressure);
  if (!(humidityRatio >= 0 && humidityRatio <= saturated * (1 + ROUNDING))) {
    throw new RangeError(
      `wetBulb: humidity ratio must be between 0 and ${saturated} kg/kg, which is saturation at ` +
        `${temperature} °C, got ${humidityRatio} kg/kg`,
    );
  }
  const wet = temperature >= 0 && humidityRatio >= overWater(temperature, 0, pressure);
  let low = wet ? 0 : -100;
  let high = wet ? temperature : Math.min(temperature, 0);
  while (high - low > CLOSE_ENOUGH) {
    const middle = (low + high) / 2;
    const reached = wet
      ? overWater(temperature, middle, pressure)
      : overIce(temperature, middle, pressure);
    if (reached > humidityRatio) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/**
 * Humidity ratio of air from its two thermometers, dry and wetted.
 *
 * @param temperature  air temperature [°C], -50 to 80
 * @param wetBulbTemperature  [°C], -100 to the air temperature; below 0 °C of an iced bulb
 * @param pressure  air pressure [Pa], 50 000 to 120 000
 * @returns humidity ratio [kg water/kg dry air]
 * @throws RangeError outside those ranges, where the pair would need less than no water, or NaN
 *
 * Source: ASHRAE Fundamentals (2017) ch. 1 eqs. 33 (water) and 35 (ice).
 */
export function humidityRatioFromWetBulb(
  temperature: number,
  wetBulbTemperature: number,
  pressure: number,
): number {
  const who = 'humidityRatioFromWetBulb';
  requireWithin(temperature, TEMPERATURES, `${who}: temperature`, '°C');
  requireWithin(wetBulbTemperature, [-100, temperature], `${who}: wet-bulb temperature`, '°C');
  requireWithin(pressure, PRESSURES, `${who}: air pressure`, 'Pa');
  const humidityRatio =
    wetBulbTemperature >= 0
      ? overWater(temperature, wetBulbTemperature, pressure)
      : overIce(temperature, wetBulbTemperature, pressure);
  if (humidityRatio >= 0) return humidityRatio;
  throw new RangeError(
    `${who}: a wet bulb of ${wetBulbTemperature} °C cannot be in air of ${temperature} °C: ` +
      'completely dry air would cool it less',
  );
}

/** Eq. 33. */
function overWater(t: number, bulb: number, pressure: number): number {
  const needed = (2501 - 2.326 * bulb) * saturatedRatio(bulb, pressure) - 1.006 * (t - bulb);
  return needed / (2501 + 1.86 * t - 4.186 * bulb);
}

/** Eq. 35. */
function overIce(t: number, bulb: number, pressure: number): number {
  const needed = (2830 - 0.24 * bulb) * saturatedRatio(bulb, pressure) - 1.006 * (t - bulb);
  return needed / (2830 + 1.86 * t - 2.1 * bulb);
}

const saturatedRatio = (t: number, pressure: number): number =>
  humidityRatioFromVapourPressure(saturationPressure(t), pressure);

const TEMPERATURES = [-50, 80] as const;
const PRESSURES = [50_000, 120_000] as const;
const CLOSE_ENOUGH = 1e-10; // K
const ROUNDING = 1e-12; // saturated air may come in one rounding above saturation
