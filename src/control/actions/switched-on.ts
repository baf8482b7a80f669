/**
 * Whether an on-off thermostat is on: from half its deadband below the setting until half of it
 * above, in between as it was.
 *
 * @param above  what its sensor reads above the setting [K]; Infinity where it is never to be on
 * @param half   half the deadband from switching on to switching off [K]
 */
export function switchedOn(wasOn: boolean, above: number, half: number): boolean {
  return wasOn ? above < half - ROUNDING : above <= ROUNDING - half;
}

/** A room that is held at an edge has reached it. [K] */
const ROUNDING = 1e-6;
