import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * How much one daily stretch without heating lowers a zone's mean temperature of the day.
 *
 * The zone falls towards the temperature it would have without heating, first along a parabola,
 * then level; a rule of an assessment, not a solution of the heat balance.
 *
 * @param hoursOff  length of the stretch [h], 0 to 24
 * @param timeConstant  of the dwelling [h], 0 to 1e4
 * @param warm  temperature when heated [°C], -50 to 60
 * @param unheated  temperature that it would fall to, from unheatedTemperature [°C]
 * @returns reduction of the daily mean [K]; 0 where it would not fall
 * @throws RangeError outside those ranges, or NaN
 *
 * Source: The Government's Standard Assessment Procedure (SAP) version 10.2, table 9b; from memory.
 */
export function offPeriodReduction(
  hoursOff: number,
  timeConstant: number,
  warm: number,
  unheated: number,
): number {
  requireWithin(hoursOff, [0, 24], 'offPeriodReduction: hours off', 'h');
  requireWithin(warm, TEMPERATURES, 'offPeriodReduction: temperature when heated', '°C');
  requireWithin(unheated, TEMPERATURES, 'offPeriodReduction: temperature unheated', '°C');
  const cooling = coolingTime(timeConstant);
  const fall = Math.max(0, warm - unheated);
  return hoursOff <= cooling
    ? (0.5 * hoursOff * hoursOff * fall) / (24 * cooling)
    : (fall * (hoursOff - 0.5 * cooling)) / 24;
}

/**
 * Time after which a zone without heating stops falling, for offPeriodReduction.
 *
 * @param timeConstant  of the dwelling [h], 0 to 1e4
 * @returns [h]
 * @throws RangeError outside that range, or NaN
 */
export function coolingTime(timeConstant: number): number {
  requireWithin(timeConstant, TIME_CONSTANTS, 'coolingTime: time constant', 'h');
  return 4 + 0.25 * timeConstant;
}

/**
 * Temperature that a zone would fall to without heating, for offPeriodReduction.
 *
 *     Tsc = (1 - R)(Th - 2) + R (Te + eta G/H)
 *
 * @param warm  temperature when heated [°C], -50 to 60
 * @param outdoor  [°C], -60 to 60
 * @param usefulGains  gains times their utilisation factor [W], 0 to 1e6
 * @param lossCoefficient  [W/K], above 0
 * @param responsiveness  of the heating: 1 radiators, less for heavy emitters [-], 0 to 1
 * @returns [°C]
 * @throws RangeError outside those ranges, or NaN
 */
export function unheatedTemperature(
  warm: number,
  outdoor: number,
  usefulGains: number,
  lossCoefficient: number,
  responsiveness = 1,
): number {
  requireWithin(warm, TEMPERATURES, 'unheatedTemperature: temperature when heated', '°C');
  requireWithin(outdoor, [-60, 60], 'unheatedTemperature: outdoor temperature', '°C');
  requireWithin(usefulGains, [0, 1e6], 'unheatedTemperature: useful gains', 'W');
  requireWithin(lossCoefficient, [0.001, 1e6], 'unheatedTemperature: loss coefficient', 'W/K');
  requireWithin(responsiveness, [0, 1], 'unheatedTemperature: responsiveness', '');
  const free = outdoor + usefulGains / lossCoefficient;
  return (1 - responsiveness) * (warm - 2) + responsiveness * free;
}

const TEMPERATURES = [-60, 200] as const;
const TIME_CONSTANTS = [0, 1e4] as const;
