import { coldSpotHours, feltColdHours, roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';

/** What a purchase against damp is judged by, in room-hours a year. */
export interface Dampness {
  /** Room-hours of cold spots above 80 % relative humidity a year. */
  readonly coldSpotHours: number;
  /** Room-hours above the humidity band a year, at any time. */
  readonly dampHours: number;
  /** Room-hours a year in which somebody is in a room that is felt to be too cold. */
  readonly coldHours: number;
}

/** @param room  the only one that counts for wet corners and damp air; null for all */
export function dampness(plan: PlanMeasures, room: string | null = null): Dampness {
  const years = yearsIn(plan.period.hours);
  const own = room === null ? plan : inRoom(plan, room);
  return {
    coldSpotHours: coldSpotHours(own) / years,
    dampHours: roomHours(own, 'outside_band_hours', 'humidity_high') / years,
    coldHours: feltColdHours(plan) / years,
  };
}

const inRoom = ({ rooms }: PlanMeasures, room: string): Pick<PlanMeasures, 'rooms'> => ({
  rooms: Object.hasOwn(rooms, room) ? { [room]: rooms[room]! } : {},
});
