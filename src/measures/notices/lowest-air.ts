import type { TraceView } from '../../engine/record/trace.ts';

/** Watches how cold the air of each room gets. [°C] */
export function createLowestAir(rooms: number) {
  const lowest = new Float64Array(rooms).fill(Number.POSITIVE_INFINITY);
  function observe({ steps, room: { airTemperature } }: TraceView): void {
    for (let k = 0, i = 0; k < steps * rooms; k++) {
      if (airTemperature[k]! < lowest[i]!) lowest[i] = airTemperature[k]!;
      i = i + 1 === rooms ? 0 : i + 1;
    }
  }
  return { observe, result: (room: number): number => lowest[room]! };
}
