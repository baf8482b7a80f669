import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * Most heat that any heat pump can deliver for each unit of work: T2/(T2 - T1).
 *
 * Built ones reach 35 to 50 % of it.
 *
 * @param source  temperature that heat is taken from [°C], -60 to 60
 * @param sink  temperature that heat is given to [°C], above the source, to 120
 * @returns coefficient of performance [-]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example idealHeatingCop(0, 20) // 14.66
 *
 * Source: S. Carnot 1824.
 */
export function idealHeatingCop(source: number, sink: number): number {
  requireWithin(source, [-60, 60], 'idealHeatingCop: source temperature', '°C');
  requireWithin(sink, [-60, 120], 'idealHeatingCop: sink temperature', '°C');
  if (!(sink > source)) {
    throw new RangeError(
      `idealHeatingCop: sink must be warmer than the source, which has ${source} °C, got ${sink} °C`,
    );
  }
  return (sink + 273.15) / (sink - source);
}
