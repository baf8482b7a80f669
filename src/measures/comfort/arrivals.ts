import type { TraceView } from '../../engine/record/trace.ts';
import type { RoomBands } from '../../home/bands.ts';

/** What people find when they come into a room that was empty. */
export interface Arrivals {
  /** Times somebody came after the room had been empty for half an hour or more. */
  readonly arrivals: number;
  /** Arrivals into a room below its temperature band. */
  readonly cold: number;
  /** Somebody in and the room under its band, within two hours of such an arrival. [h] */
  readonly coldHours: number;
  /**
   * From a cold arrival until the room is back in its band, mean and longest; 0 where none was cold.
   * Where people leave again before that, the time they stayed. [min]
   */
  readonly recoveryMean: number;
  readonly recoveryMost: number;
}

/**
 * Temperatures are operative. A step in which somebody is in for a part counts as inhabited, its
 * cold by that part. Whoever is in as the trace begins has not arrived; a shorter absence than half
 * an hour does not end a stay.
 */
export function createArrivals(bands: readonly RoomBands[]): {
  observe(trace: TraceView): void;
  result(room: number): Arrivals;
} {
  const rooms = bands.length;
  const low = Float64Array.from(bands, (band) => band.temperature.low);
  const empty = new Float64Array(rooms); // for so long [s]
  const since = new Float64Array(rooms).fill(Number.POSITIVE_INFINITY); // the latest arrival [s]
  const stayed = new Float64Array(rooms); // from it to when somebody was last in [s]
  const recovering = new Uint8Array(rooms);
  const arrivals = new Int32Array(rooms);
  const cold = new Int32Array(rooms);
  const coldTime = new Float64Array(rooms); // s
  const total = new Float64Array(rooms); // s
  const most = new Float64Array(rooms); // s

  function observe({ steps, dt, room }: TraceView): void {
    const { operativeTemperature, occupants } = room;
    const end = steps * rooms;
    for (let i = 0; i < rooms; i++) {
      const edge = low[i]!;
      let emptyFor = empty[i]!;
      let here = since[i]!;
      let chilled = coldTime[i]!;
      let until = stayed[i]!;
      for (let at = i; at < end; at += rooms) {
        const people = occupants[at]!;
        const isCold = operativeTemperature[at]! < edge;
        if (people > 0) {
          if (emptyFor >= LEAST_EMPTY) {
            here = 0;
            arrive(i, isCold);
          }
          emptyFor = 0;
          if (isCold && here < AFTER_ARRIVAL) chilled += dt * Math.min(1, people);
          until = here + dt;
        } else {
          emptyFor += dt;
        }
        if (recovering[i] === 1) {
          if (!isCold) recover(i, here);
          else if (emptyFor >= LEAST_EMPTY) recover(i, until);
        }
        here += dt;
      }
      empty[i] = emptyFor;
      since[i] = here;
      coldTime[i] = chilled;
      stayed[i] = until;
    }
  }

  function arrive(i: number, isCold: boolean): void {
    arrivals[i] = arrivals[i]! + 1;
    if (!isCold) return;
    cold[i] = cold[i]! + 1;
    recovering[i] = 1;
  }

  function recover(i: number, seconds: number): void {
    recovering[i] = 0;
    total[i] = total[i]! + seconds;
    most[i] = Math.max(most[i]!, seconds);
  }

  function result(i: number): Arrivals {
    const unended = recovering[i] === 1 ? stayed[i]! : 0;
    return {
      arrivals: arrivals[i]!,
      cold: cold[i]!,
      coldHours: coldTime[i]! / 3600,
      recoveryMean: cold[i] === 0 ? 0 : (total[i]! + unended) / cold[i]! / 60,
      recoveryMost: Math.max(most[i]!, unended) / 60,
    };
  }

  return { observe, result };
}

const LEAST_EMPTY = 1800; // s
const AFTER_ARRIVAL = 7200; // s
