import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import type { PlanMeasures } from '../plan-measures.ts';

/** How long each blind was closed. */
export interface BlindHours {
  observe(trace: TraceView): void;
  result(): PlanMeasures['blinds'];
}

export function createBlindHours({ rooms, panes, blinds = [] }: Home): BlindHours {
  const closed = new Float64Array(blinds.length); // s

  function observe({ steps, dt, home }: TraceView): void {
    for (let b = 0; b < closed.length; b++) {
      const share = home.blinds[b]!;
      let sum = closed[b]!;
      for (let s = 0; s < steps; s++) sum += share[s]! * dt;
      closed[b] = sum;
    }
  }

  const result = () =>
    Object.fromEntries(
      blinds.map(({ name, pane }, b) => [
        name,
        { room: rooms[panes[pane]!.room]!.name, closed_hours: closed[b]! / 3600 },
      ]),
    );

  return { observe, result };
}

/** Blinds that were open throughout. */
export function openBlinds(blinds: PlanMeasures['blinds']): Notice[] {
  return Object.entries(blinds)
    .filter(([, { closed_hours }]) => closed_hours === 0)
    .map(([name]) => ({
      id: 'blind-never-closed',
      text: `"${name}" was never closed: look at its hours and at its levels of sun and temperature.`,
    }));
}
