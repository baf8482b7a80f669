import { type Gate, OPEN_GATE } from '../../../control/automation.ts';
import type { WeekSchedule } from '../../../control/household.ts';
import type { Emitter } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { COOLING_SETPOINT } from '../../presets/cooling.ts';
import type { Defaults } from '../defaults.ts';
import { level } from '../level-schedule.ts';
import { programmeOf } from '../programme.ts';
import type { RoomPlan } from '../room-plans.ts';
import { type CoolingProgramme, cooledRooms } from './cooled-rooms.ts';

/** Setpoint of cooling of each room by the clock, Infinity where it is off. */
export function coolingSchedules(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): WeekSchedule[] {
  const cooled = cooledRooms(data, plans, emitters, defaults);
  return plans.map((plan) => {
    const own = cooled.find((room) => room.plan === plan);
    return own === undefined ? level(OFF) : programmeLine(own.programme, defaults);
  });
}

/** Gate of each room's cooling. */
export function coolingGates(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): Gate[] {
  const cooled = cooledRooms(data, plans, emitters, defaults);
  return plans.map(
    (plan) => cooled.find((room) => room.plan === plan)?.programme.gate ?? OPEN_GATE,
  );
}

function programmeLine({ setpoint, hours }: CoolingProgramme, defaults: Defaults): WeekSchedule {
  const usual = (): number => defaults.number(['cooling', 'setpoint'], undefined, COOLING_SETPOINT);
  return programmeOf(setpoint ?? usual(), hours, OFF);
}

const OFF = Number.POSITIVE_INFINITY;
