import type { InRoom } from './plan-figures.ts';

/**
 * What a figure was, with its room: "was 46 %, den", or with both rooms where another is worst off now,
 * "bath; was 46 %, den". A figure of nought has no room, and then the other's is told.
 *
 * @param figure  what it was, as it is printed
 */
export const wasInRoom = (was: InRoom, is: InRoom, figure: string): string =>
  was.room === is.room || was.room === '' || is.room === ''
    ? `was ${figure}, ${is.room || was.room}`
    : `${is.room}; was ${figure}, ${was.room}`;
