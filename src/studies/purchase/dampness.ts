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

export function dampness(plan: PlanMeasures): Dampness {
  const years = yearsIn(plan.period.hours);
  return {
    coldSpotHours: coldSpotHours(plan) / years,
    dampHours: roomHours(plan, 'outside_band_hours', 'humidity_high') / years,
    coldHours: feltColdHours(plan) / years,
  };
}
