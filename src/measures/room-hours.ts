import type { BandHours, PlanMeasures } from './plan-measures.ts';

/** Hours of one kind outside a band, added up over the rooms. [h] */
export function roomHours(
  { rooms }: PlanMeasures,
  which: 'outside_band_hours' | 'outside_band_occupied_hours',
  key: keyof BandHours,
): number {
  return Object.values(rooms).reduce((sum, room) => sum + room[which][key], 0);
}
