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

/** The room in which air stands above that band longest with somebody in. @returns its name */
export const stalestRoom = (plan: PlanMeasures): string => worstRoom(plan, staleHours).room;
