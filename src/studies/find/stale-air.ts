import { highKey } from '../../measures/band-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { SPECIES } from '../../species/species-table.ts';
import { worstRoom } from './finding.ts';

/** What people breathe out and what by itself only tells that air is stale. */
const [BREATH] = SPECIES.filter(({ sources }) => sources.body?.breathed === true);

/** Its short name. */
export const STALE_SYMBOL: string = BREATH!.symbol;

/** Hours above its band with somebody in the room. [h] */
export const staleHours = ({ outside_band_occupied_hours }: PlanMeasures['rooms'][string]) =>
  outside_band_occupied_hours[highKey(BREATH!.name)];

/**
 * The room in which air stands above that band longest with somebody in; where it does so in none, the one in
 * which most of it was at times.
 *
 * @returns its name
 */
export function stalestRoom(plan: PlanMeasures): string {
  const { room, figure } = worstRoom(plan, staleHours);
  const p95 = ({ species }: PlanMeasures['rooms'][string]) => species[BREATH!.name]?.p95 ?? 0;
  return figure > 0 ? room : worstRoom(plan, p95).room;
}
