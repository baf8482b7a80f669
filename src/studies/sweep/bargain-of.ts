import { hoursOutsideBands } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import type { Bargain } from './frontier.ts';

/** What a run costs a year, and how long it leaves rooms outside their bands in its period. */
export const bargainOf = (
  figures: Pick<PlanMeasures, 'money' | 'rooms'>,
): Omit<Bargain, 'run'> => ({
  money: figures.money.total_per_year,
  hours: hoursOutsideBands(figures),
});
