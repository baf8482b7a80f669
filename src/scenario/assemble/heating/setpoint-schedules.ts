import type { WeekSchedule } from '../../../control/household.ts';
import type { Emitter } from '../../../home/home.ts';
import { spellOf } from '../../clock-words.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { FROST_GUARD, SETPOINT } from '../../presets/heating.ts';
import type { Defaults } from '../defaults.ts';
import { capped, level } from '../level-schedule.ts';
import { programmeOf, spellOfSetpoint } from '../programme.ts';
import type { RoomPlan } from '../room-plans.ts';

/** The thermostat of each room by the clock; -Infinity where there is nothing to heat with. */
export function setpointSchedules(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): WeekSchedule[] {
  return plans.map(({ name, index }) => {
    if (!emitters.some(({ room }) => room === index)) return level(Number.NEGATIVE_INFINITY);
    const heating = data.heating ?? {};
    const own = heating.rooms?.[name];
    const frost = defaults.number(['heating', 'frost guard'], heating['frost guard'], FROST_GUARD);
    if (own === 'off') return level(frost);
    const room = typeof own === 'number' ? { setpoint: own } : (own ?? {});
    if (heating.thermostat !== undefined && heating.thermostat !== name) {
      return level(valveSetting(room.setpoint ?? heating.setpoint, defaults));
    }
    return programmeLine({ ...heating, ...sameHours(heating), ...room }, frost, defaults);
  });
}

/** A plain valve keeps one setting: the highest of a programme. */
function valveSetting(setpoint: Programme['setpoint'], defaults: Defaults): number {
  if (Array.isArray(setpoint)) return Math.max(...setpoint.map((spell) => spell.setpoint));
  return defaults.number(['heating', 'setpoint'], setpoint, SETPOINT);
}

type Programme = Pick<
  NonNullable<ScenarioData['heating']>,
  'setpoint' | 'hours' | 'setback' | 'night'
>;

/** A room with one setpoint of its own in a home that is set by the clock keeps to its clock. */
function sameHours({ setpoint }: Programme): Pick<Programme, 'hours'> {
  return Array.isArray(setpoint) ? { hours: setpoint.map(spellOfSetpoint) } : {};
}

function programmeLine(
  { setpoint, hours, setback, night }: Programme,
  frost: number,
  defaults: Defaults,
) {
  const usual = (): number => defaults.number(['heating', 'setpoint'], undefined, SETPOINT);
  const schedule = programmeOf(setpoint ?? usual(), hours, setback ?? frost);
  if (night === undefined) return schedule;
  const spell = spellOf(night.days, night.from, night.to, night.months);
  return capped(schedule, [spell], night.setpoint);
}
