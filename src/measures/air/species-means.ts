import type { TraceView } from '../../engine/trace.ts';
import type { Home } from '../../home/home.ts';
import { SPECIES } from '../../species/species-table.ts';
import type { SpeciesMeasures } from '../plan-measures.ts';

/** Mean level of each species over the period, outdoors and in each room. */
export interface SpeciesMeans {
  observe(trace: TraceView): void;
  /** What the air carried, by name. */
  outdoors(): Readonly<Record<string, SpeciesMeasures>>;
  /** Mean levels of a room, by name. [species unit] */
  room(room: number): Readonly<Record<string, number>>;
}

export function createSpeciesMeans({ species, rooms: { length: rooms } }: Home): SpeciesMeans {
  const outside = new Float64Array(species.length); // unit s
  const inside = new Float64Array(species.length * rooms); // unit s
  let time = 0; // s

  function observe({ steps, dt, room, home }: TraceView): void {
    for (let q = 0; q < species.length; q++) {
      const levels = room.species[q]!;
      const outdoors = home.outdoorSpecies[q]!;
      for (let s = 0; s < steps; s++) outside[q] = outside[q]! + outdoors[s]! * dt;
      for (let i = 0; i < rooms; i++) {
        let sum = inside[q * rooms + i]!;
        for (let at = i; at < steps * rooms; at += rooms) sum += levels[at]! * dt;
        inside[q * rooms + i] = sum;
      }
    }
    time += steps * dt;
  }

  const mean = (sum: number): number => (time > 0 ? sum / time : 0);

  return {
    observe,
    outdoors: () =>
      Object.fromEntries(
        species.map(({ name, label, unit }, q) => [
          name,
          { label: label ?? symbolOf(name), unit, mean_outdoors: mean(outside[q]!) },
        ]),
      ),
    room: (i) =>
      Object.fromEntries(species.map(({ name }, q) => [name, mean(inside[q * rooms + i]!)])),
  };
}

const symbolOf = (name: string): string =>
  SPECIES.find((known) => known.name === name)?.symbol ?? name;
