import type { WeekSchedule } from '../../control/household.ts';
import type { Emitter } from '../../home/home.ts';
import { isAlways, spellOf } from '../model/clock-fields.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { FROST_GUARD, SETPOINT } from '../presets/heating.ts';
import type { Defaults } from './defaults.ts';
import { capped, level } from './level-schedule.ts';
import type { RoomPlan } from './room-plans.ts';

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
  if (!Array.isArray(setpoint)) return {};
  return { hours: setpoint.map(({ days, months, from, to }) => spellOf(days, from, to, months)) };
}

function programmeLine(
  { setpoint, hours, setback, night }: Programme,
  frost: number,
  defaults: Defaults,
) {
  const off = setback ?? frost;
  let schedule: WeekSchedule;
  if (Array.isArray(setpoint)) {
    const spells = setpoint.map(({ days, months, from, to, setpoint: value }) => ({
      ...spellOf(days, from, to, months),
      value,
    }));
    schedule = { base: off, spells };
  } else {
    const value = defaults.number(['heating', 'setpoint'], setpoint, SETPOINT);
    const whole = hours?.length === 1 && isAlways(hours[0]!);
    schedule =
      hours === undefined || whole
        ? level(value)
        : { base: off, spells: hours.map((spell) => ({ ...spell, value })) };
  }
  if (night === undefined) return schedule;
  const spell = spellOf(night.days, night.from, night.to, night.months);
  return capped(schedule, [spell], night.setpoint);
}
