/*
 * A rule with `rooms` stands for one rule in each of them: what it says of no room in particular is meant
 * of that one. Works on plain values and on what the model made of them alike.
 */

/** Parts of a rule that a room is put into. */
interface RoomyRule {
  readonly name?: unknown;
  readonly rooms?: unknown;
  readonly when?: unknown;
  readonly response?: unknown;
}

/** The rooms that a rule stands in; null for one that stands by itself. */
export function roomsOfRule(
  { rooms }: RoomyRule,
  all: readonly string[],
): readonly string[] | null {
  if (rooms === undefined) return null;
  if (rooms === ALL || rooms === OCCUPIED) return all;
  return Array.isArray(rooms) ? rooms.filter((room) => typeof room === 'string') : [];
}

/** Name by which the rule of one room goes in tables. */
export const nameInRoom = (name: unknown, room: string): string => `${String(name)} (${room})`;

const ALL = 'all';
/** All rooms, while the presence sensor of the room sees somebody. */
export const OCCUPIED = 'where somebody is';
/** Stands for the room of the rule where a room is named. */
export const HERE = 'here';
