import type { BandEdge } from '../band-hours.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** Hours of one kind outside a band, added up over the rooms. [h] */
export function roomHours(
  { rooms }: PlanMeasures,
  which: 'outside_band_hours' | 'outside_band_occupied_hours',
  key: BandEdge,
): number {
  return Object.values(rooms).reduce((sum, room) => sum + room[which][key], 0);
}

/** Room-hours too cold within two hours of somebody coming in. [h] */
export const coldArrivalHours = ({ rooms }: PlanMeasures): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.cold_arrival_hours, 0);

/** Room-hours too damp with nobody in the room. [h] */
export const dampEmptyHours = (plan: PlanMeasures): number =>
  roomHours(plan, 'outside_band_hours', 'humidity_high') -
  roomHours(plan, 'outside_band_occupied_hours', 'humidity_high');

/** Cold spots above 80 %, added up over the rooms. [h] */
export const coldSpotHours = ({ rooms }: PlanMeasures): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.cold_spot_hours_above_80_pct, 0);

/** Too cold or too warm with somebody in, too damp or too dry at any time, added up over the rooms. [h] */
export const hoursOutsideBands = (plan: PlanMeasures): number =>
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_low') +
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_high') +
  roomHours(plan, 'outside_band_hours', 'humidity_high') +
  roomHours(plan, 'outside_band_hours', 'humidity_low');
