import { LuDecomposition, Matrix } from 'ml-matrix';
import type { Home } from '../../src/home/home.ts';
import { doorwayExchange } from '../../src/physics/airflow/doorway-exchange.ts';
import { processorTime } from './processor-time.ts';

/**
 * The plain way to step the heat of a home, to measure ours against: every node of every wall an
 * unknown of one dense matrix, assembled and factorised anew each step because flows change.
 * Backward Euler, heat only: no thermostat, no water, no species, no books.
 *
 * @returns milliseconds of a processor per step, over `steps` steps
 */
export function naiveStepTime(home: Home, dt: number, steps: number): number {
  const links: [number, number, number][] = []; // from, to (or -1 for outdoors), W/K
  const capacity: number[] = home.rooms.map((r) => r.furnishingFactor * r.volume * AIR);
  const node = (c: number): number => capacity.push(c) - 1;
  for (const { room, area, chain, far } of home.elements) {
    let at = room;
    chain.capacity.forEach((c, k) => {
      const next = node(c * area);
      links.push([at, next, area / chain.resistance[k]!]);
      at = next;
    });
    const last = area / chain.resistance.at(-1)!;
    if (far.to !== 'nothing') links.push([at, far.to === 'room' ? far.room : -1, last]);
  }
  home.rooms.forEach((r, i) => {
    if (r.mass.area > 0) links.push([i, node(r.mass.capacity), r.mass.area / 0.13]);
  });
  for (const p of home.panes) links.push([p.room, -1, p.uValue * p.area]);

  let temperature = capacity.map(() => 19);
  const begin = processorTime();
  for (let s = 0; s < steps; s++) {
    const outdoor = 5 + 3 * Math.sin(s / 23);
    const a = Matrix.zeros(capacity.length, capacity.length);
    const b = Matrix.zeros(capacity.length, 1);
    const join = (i: number, j: number, g: number): void => {
      a.set(i, i, a.get(i, i) + g);
      if (j < 0) {
        b.set(i, 0, b.get(i, 0) + g * outdoor);
        return;
      }
      a.set(j, j, a.get(j, j) + g);
      a.set(i, j, a.get(i, j) - g);
      a.set(j, i, a.get(j, i) - g);
    };
    capacity.forEach((c, i) => {
      a.set(i, i, a.get(i, i) + c / dt);
      b.set(i, 0, b.get(i, 0) + (c / dt) * temperature[i]!);
    });
    for (const [i, j, g] of links) join(i, j, g);
    const { how, share } = home.leakage;
    const leakage =
      how.by === 'rate' ? how.flow : how.cracks.reduce((sum, { flowAt1 }) => sum + flowAt1 / 2, 0);
    home.rooms.forEach((_, i) => {
      join(i, -1, AIR * leakage * share[i]!);
    });
    for (const { rooms, width, height } of home.doorways) {
      const [i, j] = rooms;
      const flow = doorwayExchange(width, height, temperature[i]! - temperature[j]!, 19);
      join(i, j, AIR * Math.max(0.01, flow));
    }
    temperature = new LuDecomposition(a).solve(b).to1DArray();
  }
  return (processorTime() - begin) / steps;
}

/** Heat capacity of a cubic metre of room air. [J/(m3 K)] */
const AIR = 1210;
