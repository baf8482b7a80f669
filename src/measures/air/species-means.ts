import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import { SPECIES } from '../../species/species-table.ts';
import type { SpeciesMeasures } from '../plan-measures.ts';

/** Mean level of each species outdoors over the period. */
export interface SpeciesMeans {
  observe(trace: TraceView): void;
  /** What the air carried, by name. */
  outdoors(): Readonly<Record<string, SpeciesMeasures>>;
}

export function createSpeciesMeans({ species }: Home): SpeciesMeans {
  const outside = new Float64Array(species.length); // unit s
  let time = 0; // s

  function observe({ steps, dt, home }: TraceView): void {
    for (let q = 0; q < species.length; q++) {
      const outdoors = home.outdoorSpecies[q]!;
      for (let s = 0; s < steps; s++) outside[q] = outside[q]! + outdoors[s]! * dt;
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
  };
}

const symbolOf = (name: string): string =>
  SPECIES.find((known) => known.name === name)?.symbol ?? name;
