/** Mould index from which growth is seen under a microscope, and from which it is seen by eye. */
export const GROWTH = 1;
export const BY_EYE = 3;
/** Corners that are wet for so long count. [% of the time] */
export const WET = 1;
/** Corners that are wet for so much of the time, mean of the rooms, are clear to anybody; own judgement. [% of the time] */
export const CLEARLY_WET = 6;
