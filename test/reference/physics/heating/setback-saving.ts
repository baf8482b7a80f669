import { requireWithin } from '../../../../src/units/require-within.ts';

/** A night's setback in a home taken as one heat capacity. */
export interface Setback {
  /** Setpoint outside the setback. [°C] */
  readonly indoor: number;
  /** Outdoor temperature, below `indoor`. [°C] */
  readonly outdoor: number;
  /** Reduction of the setpoint, at most down to outdoors. [K] */
  readonly depth: number;
  /** Length of the setback each day, 0 to 24. [h] */
  readonly hours: number;
  /** Heat capacity over heat-loss coefficient, 0 or more. [h] */
  readonly timeConstant: number;
}

/**
 * Share of the heat that a daily setback saves: exact for one heat capacity and no limit of power.
 *
 * The home cools freely, is held at the lower setpoint once there, and is warm again at once when
 * the setback ends. Heat saved is heat not lost, so the share is the mean fall over the mean
 * difference to outdoors. A light home saves most; gains, sun and slow recovery are left out. Even
 * at 24 h it is warmed once a day.
 *
 * @returns share of the heat of a day without setback [-]
 * @throws RangeError outside the ranges of Setback, or NaN
 *
 * @example setbackSaving({ indoor: 20, outdoor: 5, depth: 4, hours: 8, timeConstant: 20 }) // 0.0562
 *
 * Source: closed form, worked out here.
 */
export function setbackSaving(setback: Setback): number {
  const { indoor, outdoor, depth, hours, timeConstant } = setback;
  requireWithin(indoor, [-50, 60], 'setbackSaving: indoor', '°C');
  requireWithin(outdoor, [-60, 60], 'setbackSaving: outdoor', '°C');
  if (!(outdoor < indoor)) {
    throw new RangeError(
      `setbackSaving: outdoor must be below indoor, which is ${indoor} °C, got ${outdoor} °C`,
    );
  }
  const difference = indoor - outdoor;
  requireWithin(depth, [0, difference], 'setbackSaving: depth', 'K');
  requireWithin(hours, [0, 24], 'setbackSaving: hours', 'h');
  requireWithin(timeConstant, [0, 1e5], 'setbackSaving: time constant', 'h');
  const untilHeld = timeConstant === 0 ? 0 : -timeConstant * Math.log(1 - depth / difference);
  const falling = Math.min(hours, untilHeld);
  const fallen =
    timeConstant === 0
      ? 0
      : difference * (falling + timeConstant * Math.expm1(-falling / timeConstant));
  const held = depth * (hours - falling);
  return (fallen + held) / (24 * difference);
}
