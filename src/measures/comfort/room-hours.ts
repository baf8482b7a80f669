import type { BandEdge } from '../band-hours.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** Hours of one kind outside a band, added up over the rooms. [h] */
export function roomHours(
  { rooms }: Pick<PlanMeasures, 'rooms'>,
  which: 'outside_band_hours' | 'outside_band_occupied_hours',
  key: BandEdge,
): number {
  return Object.values(rooms).reduce((sum, room) => sum + room[which][key], 0);
}

/** Room-hours more than half a kelvin below the temperature band with somebody in. [h] */
export const feltColdHours = ({ rooms }: Pick<PlanMeasures, 'rooms'>): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.felt_cold_hours, 0);

/** Room-hours too cold within two hours of somebody coming in. [h] */
export const coldArrivalHours = ({ rooms }: PlanMeasures): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.cold_arrival_hours, 0);

/** Room-hours too damp with nobody in the room. [h] */
export const dampEmptyHours = (plan: PlanMeasures): number =>
  roomHours(plan, 'outside_band_hours', 'humidity_high') -
  roomHours(plan, 'outside_band_occupied_hours', 'humidity_high');

/** Hours of cold spots above 80 % relative humidity, added up over the rooms. [h] */
export const coldSpotHours = ({ rooms }: Pick<PlanMeasures, 'rooms'>): number =>
  Object.values(rooms).reduce((sum, room) => sum + room.cold_spot_hours_above_80_pct, 0);

/** Room-hours too cold or warm with somebody in, or too damp or dry at any time. [h] */
export const hoursOutsideBands = (plan: Pick<PlanMeasures, 'rooms'>): number =>
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_low') +
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_high') +
  roomHours(plan, 'outside_band_hours', 'humidity_high') +
  roomHours(plan, 'outside_band_hours', 'humidity_low');
