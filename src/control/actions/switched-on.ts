/**
 * Whether an on-off thermostat is on: from half its deadband below the setting until half of it
 * above, in between as it was.
 *
 * @param reading   what its sensor reads [°C]
 * @param setting   [°C]; never on at -Infinity
 * @param deadband  from switching on to switching off [K]
 */
export function switchedOn(
  wasOn: boolean,
  reading: number,
  setting: number,
  deadband: number,
): boolean {
  if (reading <= setting - deadband / 2 + ROUNDING) return true;
  if (reading >= setting + deadband / 2 - ROUNDING) return false;
  return wasOn;
}

/** A room that is held at an edge has reached it. [K] */
const ROUNDING = 1e-6;
