import type { TraceView } from '../../engine/record/trace.ts';

/** Edges of one quantity in each room, and the place of the lower one among a room's sums. */
export interface Edges {
  /** Of the lower edge; that of the upper one follows. */
  readonly key: number;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** How long rooms are beyond edges, and how far. */
export interface OutsideSums {
  /**
   * Book the steps in which a room's values are below the lower edge or above the upper one. What is
   * not a number is inside.
   *
   * @param values  laid out as the trace
   * @param first   step of the trace, and the first one after those to book; absent for all
   */
  add(
    trace: TraceView,
    room: number,
    values: Float64Array,
    edges: Edges,
    first?: number,
    end?: number,
  ): void;
  /** [h] */
  all(room: number, key: number): number;
  /** Times the share of each step that somebody is in the room. [h] */
  occupied(room: number, key: number): number;
  /** How far beyond times how long. [unit h] */
  depth(room: number, key: number): number;
}

/** @param keys  places of edges in a room */
export function createOutsideSums(rooms: number, keys: number): OutsideSums {
  const all = new Float64Array(rooms * keys); // s
  const occupied = new Float64Array(rooms * keys); // s
  const depth = new Float64Array(rooms * keys); // unit s
  const hours = (seconds: Float64Array) => (room: number, key: number) =>
    seconds[room * keys + key]! / 3600;

  return {
    add({ steps, dt, room: { occupants } }, i, values, { key, low, high }, first = 0, end = steps) {
      const below = low[i]!;
      const above = high[i]!;
      const a = i * keys + key;
      const b = a + 1;
      let under = all[a]!;
      let underFelt = occupied[a]!;
      let underDepth = depth[a]!;
      let over = all[b]!;
      let overFelt = occupied[b]!;
      let overDepth = depth[b]!;
      for (let at = first * rooms + i; at < end * rooms; at += rooms) {
        const value = values[at]!;
        if (value > above) {
          over += dt;
          overFelt += dt * Math.min(1, occupants[at]!);
          overDepth += (value - above) * dt;
        } else if (value < below) {
          under += dt;
          underFelt += dt * Math.min(1, occupants[at]!);
          underDepth += (below - value) * dt;
        }
      }
      all[a] = under;
      occupied[a] = underFelt;
      depth[a] = underDepth;
      all[b] = over;
      occupied[b] = overFelt;
      depth[b] = overDepth;
    },
    all: hours(all),
    occupied: hours(occupied),
    depth: hours(depth),
  };
}
