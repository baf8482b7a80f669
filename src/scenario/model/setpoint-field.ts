import { spellShape } from './clock-fields.ts';
import { either, list, quantity, type Shown, section } from './fields.ts';

/** A temperature that people set. */
export const degrees = (says: string, more: Shown = { eg: '20 °C' }) =>
  quantity('°C', { min: -10, max: 40 }, says, more);

/**
 * One setpoint, or several by the clock.
 *
 * @param says     what setpoints are
 * @param holds    what one setpoint means
 * @param by       what several mean
 */
export const setpointField = (says: string, holds: string, by: string, more: Shown) =>
  either(
    [
      degrees(holds),
      list(
        section(
          { ...spellShape, setpoint: degrees('Setpoint in this span of time', { eg: '19 °C' }) },
          'A span of local time with its setpoint',
        ),
        'a temperature, or a list of { days, months, from, to, setpoint }',
        by,
      ),
    ],
    'a temperature in °C, or a list of { days, months, from, to, setpoint }',
    says,
    more,
  );
