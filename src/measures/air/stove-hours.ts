import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { theRoom } from '../../units/the-room.ts';

/** How long each stove burned in a room well below the pressure outdoors. */
export interface StoveHours {
  readonly observe: (trace: TraceView) => void;
  /**
   * Time by device; null for whatever draws no room air up a flue, and for all devices of a home whose
   * leaks do not go by pressure. [h]
   */
  readonly hours: () => (number | null)[];
}

/**
 * Counts the time in which a stove that draws room air burns while its room, at half its height, is more
 * than 4 Pa below still air outdoors at that height.
 *
 * Source of the 4 Pa: 0.04 mbar for the supply of combustion air in German practice (chimney sweeps,
 * fandel.info, 4-Pascal-Test), after the model ordinance on firing (MFeuV).
 */
export function createStoveHours({ rooms, devices, leakage }: Home): StoveHours {
  const known = leakage.how.by === 'pressure' && leakage.how.cracks.length > 0;
  const drawing = devices.map(({ does }) => known && does.kind === 'stove' && does.roomAir > 0);
  const low = new Float64Array(devices.length); // s

  function observe({ steps, dt, room, home }: TraceView): void {
    for (let d = 0; d < devices.length; d++) {
      if (!drawing[d]) continue;
      const { share } = home.devices[d]!;
      for (let s = 0; s < steps; s++) {
        const difference = room.pressureDifference[s * rooms.length + devices[d]!.room]!;
        if (difference < -LIMIT) low[d] = low[d]! + share[s]! * dt;
      }
    }
  }

  const hours = (): (number | null)[] => drawing.map((own, d) => (own ? low[d]! / 3600 : null));

  return { observe, hours };
}

/** What those hours ask for; without any nothing is said, because nothing here clears a stove. */
export function stoveCautions(
  { rooms, devices }: Home,
  hours: readonly (number | null)[],
): Notice[] {
  return devices.flatMap(({ name, room }, d) =>
    (hours[d] ?? 0) > 0
      ? [
          {
            id: 'stove-depressurised',
            text:
              `While the ${name} burned, the pressure in ${theRoom(rooms[room]!.name)} was more than ${LIMIT} Pa below that outdoors for part of the time, ` +
              'which can draw fumes into the room. That is a reason to call a competent fitter, who tests it ' +
              'with doors and windows shut and all fans on. A carbon monoxide alarm belongs in that room, and ' +
              'local codes may forbid such a fan. The hours are an estimate; fewer or none of them, here or ' +
              'in another plan, are never a clearance.',
          },
        ]
      : [],
  );
}

const LIMIT = 4; // Pa
