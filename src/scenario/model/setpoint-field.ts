import { spellShape } from './clock-fields.ts';
import { either, list, quantity, section } from './fields.ts';

/** A temperature that people set. */
export const degrees = (says: string) => quantity('°C', { min: -10, max: 40 }, says);

/**
 * One setpoint, or several by the clock.
 *
 * @param holds    what one setpoint means
 * @param by       what several mean
 */
export const setpointField = (holds: string, by: string) =>
  either(
    [
      degrees(holds),
      list(
        section(
          { ...spellShape, setpoint: degrees('Setpoint in this span of time') },
          'A span of local time with its setpoint',
        ),
        'a temperature, or a list of { days, months, from, to, setpoint }',
        by,
      ),
    ],
    'a temperature in °C, or a list of { days, months, from, to, setpoint }',
    'What the thermostat is set to',
  );
