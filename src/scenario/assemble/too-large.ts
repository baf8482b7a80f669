import type { ScenarioData } from '../model/scenario-model.ts';
import { HEIGHT } from '../presets/rooms.ts';
import type { Finding } from '../unplaced-problem.ts';

/** Rooms that together hold more air than any home for which leakage was ever measured. */
export function tooLarge({ home }: ScenarioData): Finding[] {
  const volume = Object.values(home.rooms).reduce(
    (sum, room) => sum + room['floor area'] * (room.height ?? home.height ?? HEIGHT.value),
    0,
  );
  if (volume <= MOST) return [];
  const expected = `rooms of at most ${MOST} m3 in all`;
  return [{ path: ['home', 'rooms'], expected, got: `${Math.round(volume)} m3` }];
}

const MOST = 100_000; // [m3]
