import { CLEARLY_WET } from './mould-marks.ts';
import type { PlanFigures } from './plan-figures.ts';

/** How far damp is beyond what counts though no mould starts: 0 or more where it is. [share of the limit] */
interface DampBeyond {
  /** All rooms together, by their mean. */
  readonly mean: number;
  /** The room worst off, which five dry ones must not hide. */
  readonly room: number;
}

/**
 * How far damp air or wet corners are beyond their limits, which are twice as high for one room as for the
 * mean of all: what a bathroom has of showers alone, 15 % of the time damp and its corner wet for 7 % of it
 * in a home that is dry otherwise, asks for nothing.
 */
export function dampBeyond(of: 'damp' | 'spots', figures: PlanFigures): DampBeyond {
  const [mean, room] =
    of === 'damp' ? [figures.damp, figures.dampest] : [figures.spots, figures.wettest];
  const limit = LIMITS[of];
  return { mean: mean / limit - 1, room: room.value / (IN_ONE_ROOM * limit) - 1 };
}

/**
 * Means of the rooms: damp air that is a nuisance, and wet corners that are clear to anybody. Both are
 * judgements of the program, as is the factor below. [% of the time]
 */
const LIMITS = { damp: 10, spots: CLEARLY_WET };
/** [-] */
const IN_ONE_ROOM = 2;
