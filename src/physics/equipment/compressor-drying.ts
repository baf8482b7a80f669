import { requireWithin } from '../../units/require-within.ts';
import { MOLAR_RATIO } from '../moist-air/constants.ts';
import { saturationPressure } from '../moist-air/saturation-pressure.ts';

/**
 * How much a compressor dehumidifier takes out of each kilogram of air it moves, defrosting counted
 * in: the measure that carries a rating from one room to another.
 *
 *     (w - w_coil) working share,  coil = t - 15 + 0.18 (rh - 60) °C
 *
 * Its fan moves the same air all the time, so water is in proportion to the humidity ratio above
 * that of saturated air at the coil. The coil runs some way below the room, and less far in damp
 * air, because then condensing takes most of what the compressor can carry.
 *
 * The 15 K and the 0.18 K/% were fitted here, together with the start of icing, to four published
 * falls of capacity, and meet all four: 0.66 from 26.7 to 18.3 °C at 60 % (three ratings: 0.60,
 * 0.67, 0.71), 0.58 from 30 °C/80 % to 27 °C/60 % (0.50, 0.56, 0.60), 18 of 60 L from 35 °C/100 %
 * to 20 °C/70 % ("around 20"), and 0.41 from 30 °C/80 % to 15 °C/80 % (0.33 to 0.42). No free
 * figure is left to judge the fit by. Units differ by a fifth either way. Nothing was published for
 * air drier than 50 %; from 40 % down the rule would dry less the warmer it is, so there it falls in
 * a straight line instead, to nothing at 20 %.
 *
 * Counted at sea level: in a ratio of two rooms the air pressure all but cancels.
 *
 * @param temperature  of the room [°C], -40 to 60
 * @param humidity  relative humidity of the room [%], 0 to 200, counted as 100 above that
 * @param saturation  saturation vapour pressure [Pa] of a temperature [°C], -70 to 60; saturationTable
 *   where it is asked millions of times
 * @returns water a kilogram of dry air [kg/kg], 0 or more
 * @throws RangeError outside those ranges, or NaN
 */
export function compressorDrying(
  temperature: number,
  humidity: number,
  saturation: (temperature: number) => number = saturationPressure,
): number {
  requireWithin(temperature, ROOM_TEMPERATURES, 'compressorDrying: temperature', '°C');
  requireWithin(humidity, ROOM_HUMIDITIES, 'compressorDrying: relative humidity', '%');
  const percent = Math.min(100, Math.max(DRY, humidity));
  const coil = temperature - BELOW_ROOM + WARMER_WHEN_DAMP * (percent - 60);
  const room = ratioAtSeaLevel((percent / 100) * saturation(temperature));
  const left = ratioAtSeaLevel(saturation(coil));
  const inDryAir = Math.min(1, Math.max(0, (humidity - DRIEST) / (DRY - DRIEST)));
  return Math.max(0, room - left) * inDryAir * compressorWorkingShare(temperature);
}

/**
 * Share of the time in which a compressor dehumidifier dries; in the rest it melts ice off its coil.
 *
 * All of it from 16 °C up, none from 4 °C down, straight between. Trade pages name 16 to 17 °C as
 * the first ice, about 12 °C as where plain units give up, and 5 °C as the least for those that
 * melt their ice with hot gas; this is one in the middle. The straight line is common practice.
 *
 * @param temperature  of the room [°C], -40 to 60
 * @returns share [-], 0 to 1
 * @throws RangeError outside that range, or NaN
 */
export function compressorWorkingShare(temperature: number): number {
  requireWithin(temperature, ROOM_TEMPERATURES, 'compressorWorkingShare: temperature', '°C');
  return Math.min(1, Math.max(0, (temperature - ALL_ICE) / (FIRST_ICE - ALL_ICE)));
}

const ratioAtSeaLevel = (vapourPressure: number): number =>
  (MOLAR_RATIO * vapourPressure) / (SEA_LEVEL - vapourPressure);

/** Rooms in which a dehumidifier may be asked what it does. [°C], [%] */
export const ROOM_TEMPERATURES = [-40, 60] as const;
export const ROOM_HUMIDITIES = [0, 200] as const;

const BELOW_ROOM = 15; // K, in air of 60 %
const WARMER_WHEN_DAMP = 0.18; // K for each percent
const DRY = 40; // %
const DRIEST = 20; // %
const FIRST_ICE = 16; // °C
const ALL_ICE = 4; // °C
const SEA_LEVEL = 101_325; // Pa
