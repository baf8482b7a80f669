import { powerOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';
import { ROOM_HUMIDITIES, ROOM_TEMPERATURES } from './compressor-drying.ts';

/**
 * How much a desiccant dehumidifier dries beside what it does at 20 °C and 60 %.
 *
 *     (rh/60)^0.7 (1 + 0.008 (t - 20)) working share
 *
 * Its rotor takes up water by relative humidity and a heater drives it out again, so temperature
 * matters little; trade pages call it unaffected. It has no coil to ice up. Between 2 and 0 °C it
 * stops, because its water would freeze. Both numbers are common practice, not a published fit:
 * 8 % for ten kelvins, a quarter less at 40 %, a fifth more at 80 %.
 *
 * @param temperature  of the room [°C], -40 to 60
 * @param humidity  relative humidity of the room [%], 0 to 200, counted as 100 above that
 * @returns share of the drying at 20 °C and 60 % [-], 0 or more
 * @throws RangeError outside those ranges, or NaN
 */
export function desiccantDrying(temperature: number, humidity: number): number {
  requireWithin(temperature, ROOM_TEMPERATURES, 'desiccantDrying: temperature', '°C');
  requireWithin(humidity, ROOM_HUMIDITIES, 'desiccantDrying: relative humidity', '%');
  const working = Math.min(1, Math.max(0, temperature / FROST_FREE));
  const takenUp = powerOf(Math.min(humidity, 100) / 60, BY_HUMIDITY);
  return takenUp * (1 + BY_TEMPERATURE * (temperature - 20)) * working;
}

const BY_HUMIDITY = 0.7;
const BY_TEMPERATURE = 0.008; // 1/K
const FROST_FREE = 2; // °C
