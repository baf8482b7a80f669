import type { Opening } from '../../../home/home.ts';
import type { RoomPlan } from '../room-plans.ts';

/** Numbers of the openings that go by this name, or are in the room of this name. */
export function openingsCalled(
  name: string,
  openings: readonly Opening[],
  plans: readonly RoomPlan[],
): number[] {
  return openings.flatMap((opening, k) =>
    opening.name === name || plans[opening.room]!.name === name ? [k] : [],
  );
}
