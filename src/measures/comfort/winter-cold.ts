import type { TraceView } from '../../engine/trace.ts';
import type { RoomBands } from '../../home/bands.ts';
import type { Winter } from '../energy/winter.ts';

/** How long people sit in rooms below their temperature band in the winter half of the year. */
export interface WinterCold {
  observe(trace: TraceView): void;
  /** Mean over the winter days of the period; null where it has none. [h/day] */
  perDay(room: number): number | null;
}

/** A step counts by the share of it that somebody is in the room; temperatures are operative. */
export function createWinterCold(bands: readonly RoomBands[], winter: Winter): WinterCold {
  const rooms = bands.length;
  const low = Float64Array.from(bands, (band) => band.temperature.low);
  const cold = new Float64Array(rooms); // s
  const time = new Float64Array(1); // s

  function observe({ steps, dt, start, room }: TraceView): void {
    const { operativeTemperature, occupants } = room;
    for (let s = 0; s < steps; s++) {
      const seconds = winter.share(start + s * dt, dt) * dt;
      time[0] = time[0]! + seconds;
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        if (!(operativeTemperature[at]! < low[i]!)) continue;
        cold[i] = cold[i]! + seconds * Math.min(1, occupants[at]!);
      }
    }
  }

  return {
    observe,
    perDay: (i) => (time[0]! > 0 ? (24 * cold[i]!) / time[0]! : null),
  };
}
