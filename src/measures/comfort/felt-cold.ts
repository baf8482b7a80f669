import type { TraceView } from '../../engine/record/trace.ts';
import type { RoomBands } from '../../home/bands.ts';
import type { Winter } from '../energy/winter.ts';

/** How long people are in rooms that are too cold, so that they feel it. */
export interface FeltCold {
  observe(trace: TraceView): void;
  /** Over the whole period. [h] */
  hours(room: number): number;
  /** Mean over the winter days of the period; null where it has none. [h/day] */
  perWinterDay(room: number): number | null;
}

/**
 * More than half a kelvin below the temperature band, by operative temperature; a step counts by the
 * share of it that somebody is in the room. A thermostat feels mostly the air and holds it to some
 * tenths of a kelvin, so that a room set to the edge of its band lies a little under it most of the
 * time; so little is hardly felt.
 */
export function createFeltCold(bands: readonly RoomBands[], winter: Winter): FeltCold {
  const rooms = bands.length;
  const low = Float64Array.from(bands, (band) => band.temperature.low - FELT);
  const cold = new Float64Array(rooms); // s
  const winterCold = new Float64Array(rooms); // s
  const time = new Float64Array(1); // s, of winter

  function observe({ steps, dt, start, room }: TraceView): void {
    const { operativeTemperature, occupants } = room;
    for (let s = 0; s < steps; s++) {
      const seconds = winter.share(start + s * dt, dt) * dt;
      time[0] = time[0]! + seconds;
      for (let i = 0; i < rooms; i++) {
        const at = s * rooms + i;
        if (!(operativeTemperature[at]! < low[i]!)) continue;
        const share = Math.min(1, occupants[at]!);
        cold[i] = cold[i]! + dt * share;
        winterCold[i] = winterCold[i]! + seconds * share;
      }
    }
  }

  return {
    observe,
    hours: (i) => cold[i]! / 3600,
    perWinterDay: (i) => (time[0]! > 0 ? (24 * winterCold[i]!) / time[0]! : null),
  };
}

/** So far below the band a room is felt to be too cold. [K] */
const FELT = 0.5;
