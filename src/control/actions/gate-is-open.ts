import type { Gate } from '../automation.ts';
import type { Presence } from '../sensors/presence.ts';

/**
 * Whether a gate lets something act in a room now.
 *
 * @param room        -1 for the home as a whole: "in the room" then means at home
 * @param windowOpen  whether a window of the room (of the home) stands open
 */
export function gateIsOpen(
  gate: Gate,
  room: number,
  presence: Pick<Presence, 'present' | 'anyone'>,
  windowOpen: boolean,
): boolean {
  if (gate.windowsShut && windowOpen) return false;
  if (gate.present === 'no matter') return true;
  if (gate.present === 'at home' || room < 0) return presence.anyone;
  return presence.present[room] === 1;
}
