import type { Spell, WeekSchedule } from '../../control/household.ts';
import { isAlways, spellOf } from '../clock-words.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { during, level } from './level-schedule.ts';

/** One temperature, or a list of spans of time with theirs. */
type Setpoint = NonNullable<NonNullable<ScenarioData['heating']>['setpoint']>;
type SetpointSpan = Exclude<Setpoint, number>[number];

/** When a setpoint of a list holds. */
export const spellOfSetpoint = ({ days, months, from, to }: SetpointSpan): Spell =>
  spellOf(days, from, to, months);

/**
 * What a thermostat is set to by the clock, for heating or cooling.
 *
 * @param hours  when a single setpoint holds; absent is always
 * @param off    outside the hours or the spans of a list [°C]
 */
export function programmeOf(
  setpoint: Setpoint,
  hours: readonly Spell[] | undefined,
  off: number,
): WeekSchedule {
  if (typeof setpoint !== 'number') {
    const spells = setpoint.map((span) => ({ ...spellOfSetpoint(span), value: span.setpoint }));
    return { base: off, spells };
  }
  if (hours === undefined || hours.some(isAlways)) return level(setpoint);
  return during(hours, setpoint, off);
}
