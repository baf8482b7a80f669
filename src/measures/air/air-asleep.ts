import type { TraceView } from '../../engine/record/trace.ts';

/** Outdoor air of rooms while people sleep in them. */
export interface AirAsleep {
  readonly observe: (trace: TraceView) => void;
  /**
   * Air straight from outdoors for each person asleep, mean over the months' hours with somebody asleep
   * in the room, each hour by how many they are; null where nobody sleeps in it then. [L/s]
   */
  readonly perPerson: (room: number, rows: readonly number[]) => number | null;
}

/** @param ends  of the period's months, see monthEnds [s UTC] */
export function createAirAsleep(rooms: number, ends: readonly number[]): AirAsleep {
  const air = new Float64Array(ends.length * rooms); // m3
  const asleep = new Float64Array(ends.length * rooms); // persons times s
  let row = 0;

  function observe({ steps, start, dt, room }: TraceView): void {
    for (let s = 0; s < steps; s++) {
      while (row < ends.length - 1 && start + s * dt >= ends[row]!) row++;
      for (let i = 0; i < rooms; i++) {
        const people = room.asleep[s * rooms + i]!;
        if (people <= ROUNDING) continue;
        const k = row * rooms + i;
        air[k] = air[k]! + room.outdoorAir[s * rooms + i]! * Math.min(1, people) * dt;
        asleep[k] = asleep[k]! + people * dt;
      }
    }
  }

  function perPerson(room: number, rows: readonly number[]): number | null {
    const sum = (all: Float64Array): number =>
      rows.reduce((total, q) => total + (all[q * rooms + room] ?? 0), 0);
    return sum(asleep) > 0 ? (1000 * sum(air)) / sum(asleep) : null;
  }

  return { observe, perPerson };
}

/** What is left where parts of a person that are there and parts that are awake are subtracted. */
const ROUNDING = 1e-9;
