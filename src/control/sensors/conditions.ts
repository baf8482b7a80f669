import type { Condition } from '../automation.ts';
import type { Sensors } from './sensors.ts';

/** Which conditions are met, with their memory of having been so. */
export interface Conditions {
  /** 1 for each condition that is met. */
  readonly met: Uint8Array;
  /** Once a step, after the sensors. */
  readonly judge: () => void;
}

/**
 * "Above 60, clear at 55" is met from a reading above 60 until one of 55 or less; "below" likewise,
 * the other way up. A reading on the edge does not meet it, and one that is NaN never does.
 */
export function createConditions(conditions: readonly Condition[], sensors: Sensors): Conditions {
  const { readings } = sensors;
  const met = new Uint8Array(conditions.length);
  const of = Int32Array.from(sensors.of);
  // "Below" is "above" with both sides turned round.
  const sign = Float64Array.from(conditions, (one) => (one.is === 'above' ? 1 : -1));
  const value = Float64Array.from(conditions, (one, c) => sign[c]! * one.value);
  const clear = Float64Array.from(conditions, (one, c) => sign[c]! * one.clear);
  const judge = (): void => {
    for (let c = 0; c < met.length; c++) {
      const edge = met[c] === 1 ? clear[c]! : value[c]!;
      met[c] = sign[c]! * readings[of[c]!]! > edge ? 1 : 0;
    }
  };
  return { met, judge };
}

/** True where all the conditions with these numbers are met; an empty list always is. */
export function allMet(met: Uint8Array, which: readonly number[]): boolean {
  for (let k = 0; k < which.length; k++) if (met[which[k]!] === 0) return false;
  return true;
}
