import { requireWithin } from '../../units/require-within.ts';
import {
  compressorDrying,
  compressorWorkingShare,
  ROOM_HUMIDITIES,
  ROOM_TEMPERATURES,
} from './compressor-drying.ts';
import { desiccantDrying } from './desiccant-drying.ts';

export type DehumidifierType = 'compressor' | 'desiccant';

/**
 * Water that a running dehumidifier takes over the measure of its drying, from its rating. Times
 * `dehumidifierDrying` in the air of a room it is the water taken from that room [kg/s].
 *
 * @param type  how it dries
 * @param ratedWater  at the rating condition [kg/s], 0 to 1
 * @param ratedTemperature  of the rating condition [°C], 5 to 60, where it must be able to dry
 * @param ratedHumidity  of the rating condition [%], 1 to 100, likewise
 * @returns [kg/s] over the measure's own unit
 * @throws RangeError outside those ranges, for a rating at which it could not dry, or NaN
 *
 * @example of 12 L a day at 30 °C and 80 %, 4.9 are left at 20 °C and 60 %
 * waterPerDrying('compressor', 1.39e-4, 30, 80) * dehumidifierDrying('compressor', 20, 60) // 5.7e-5
 *
 * Source: see compressor-drying.ts and desiccant-drying.ts, which say how good it is.
 */
export function waterPerDrying(
  type: DehumidifierType,
  ratedWater: number,
  ratedTemperature: number,
  ratedHumidity: number,
): number {
  requireWithin(ratedWater, RATED_WATER, 'waterPerDrying: rated water', 'kg/s');
  return ratedWater / ratedDrying(type, ratedTemperature, ratedHumidity);
}

/**
 * Electric power of a dehumidifier while it runs, from its rating at another temperature.
 *
 * Compressor: 1.5 % of the power at 20 °C more for each kelvin of the room, since it pumps against a
 * warmer condenser; while it melts ice only the fan runs, a fifth of that. Both numbers are common
 * practice. Desiccant: the same always, nearly all of it its heater's. Humidity changes neither: a
 * compressor in dry air runs on and takes nothing. At the rating condition it is the rated power
 * exactly.
 *
 * @param type  how it dries
 * @param ratedPower  at the rating condition [W], 0 to 1e5
 * @param ratedTemperature  of the rating condition [°C], 5 to 60
 * @param ratedHumidity  of the rating condition [%], 1 to 100
 * @param temperature  of the room [°C], -40 to 60; beyond 0 to 45 the compressor's power is level
 * @param humidity  of the room [%], 0 to 200
 * @returns power [W]
 * @throws RangeError outside those ranges, or NaN
 */
export function dehumidifierPower(
  type: DehumidifierType,
  ratedPower: number,
  ratedTemperature: number,
  ratedHumidity: number,
  temperature: number,
  humidity: number,
): number {
  requireWithin(ratedPower, RATED_POWERS, 'dehumidifierPower: rated power', 'W');
  requireWithin(temperature, ROOM_TEMPERATURES, 'dehumidifierPower: temperature', '°C');
  requireWithin(humidity, ROOM_HUMIDITIES, 'dehumidifierPower: relative humidity', '%');
  requireRating(ratedTemperature, ratedHumidity);
  if (type === 'desiccant') return ratedPower;
  return ratedPower * (compressorPower(temperature) / compressorPower(ratedTemperature));
}

/**
 * How well the air of a room dries; only the ratio of two of them means something. A time loop
 * keeps `waterPerDrying` and multiplies, with its own table of saturation.
 *
 * @param temperature  of the room [°C], -40 to 60
 * @param humidity  of the room [%], 0 to 200, counted as 100 above that
 * @param saturation  see compressorDrying; a desiccant needs none
 * @returns [kg/kg] of a compressor, [-] of a desiccant; 0 where the air is too dry or too cold
 * @throws RangeError outside those ranges, or NaN
 */
export function dehumidifierDrying(
  type: DehumidifierType,
  temperature: number,
  humidity: number,
  saturation?: (temperature: number) => number,
): number {
  return type === 'compressor'
    ? compressorDrying(temperature, humidity, saturation)
    : desiccantDrying(temperature, humidity);
}

function ratedDrying(type: DehumidifierType, temperature: number, humidity: number): number {
  requireRating(temperature, humidity);
  const drying = dehumidifierDrying(type, temperature, humidity);
  if (drying > 0) return drying;
  throw new RangeError(
    'dehumidifier: the rating must be in air that it can dry; at ' +
      `${temperature} °C and ${humidity} % a ${type} takes nothing`,
  );
}

function requireRating(temperature: number, humidity: number): void {
  requireWithin(temperature, RATED_TEMPERATURES, 'dehumidifier: rated temperature', '°C');
  requireWithin(humidity, RATED_HUMIDITIES, 'dehumidifier: rated relative humidity', '%');
}

/** Power of a compressor unit at a room temperature over its power while drying at 20 °C. [-] */
function compressorPower(temperature: number): number {
  const drying = compressorWorkingShare(temperature);
  const pumping = 1 + POWER_BY_TEMPERATURE * (Math.min(45, Math.max(0, temperature)) - 20);
  return drying * pumping + (1 - drying) * FAN_SHARE * pumping;
}

const RATED_WATER = [0, 1] as const;
const RATED_POWERS = [0, 1e5] as const;
const RATED_TEMPERATURES = [5, 60] as const;
const RATED_HUMIDITIES = [1, 100] as const;
const POWER_BY_TEMPERATURE = 0.015; // 1/K
const FAN_SHARE = 0.2;
