import type { Condition } from './automation.ts';
import type { Sensors } from './sensors.ts';

/** Which conditions are met, with their memory of having been so. */
export interface Conditions {
  /** Per condition: 1 met, 0 not. */
  readonly met: Uint8Array;
  /** Once a step, after the sensors. */
  readonly judge: () => void;
}

/**
 * "Above 60, clear at 55" is met from a reading above 60 until one of 55 or less; "below" likewise,
 * the other way up. A reading on the edge does not meet it, and one that is NaN never does.
 */
export function createConditions(conditions: readonly Condition[], sensors: Sensors): Conditions {
  const met = new Uint8Array(conditions.length);
  const { of, readings } = sensors;
  const judge = (): void => {
    for (let c = 0; c < met.length; c++) {
      const condition = conditions[c]!;
      const edge = met[c] === 1 ? condition.clear : condition.value;
      const reading = readings[of[c]!]!;
      met[c] = Number(condition.is === 'above' ? reading > edge : reading < edge);
    }
  };
  return { met, judge };
}

/** True where all the conditions with these numbers are met; an empty list always is. */
export function allMet(met: Uint8Array, which: readonly number[]): boolean {
  for (let k = 0; k < which.length; k++) if (met[which[k]!] === 0) return false;
  return true;
}
