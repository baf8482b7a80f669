import type { PathPlan } from './path-plan.ts';

/** Paths with the seams that were missing, and how each room gets outdoors. */
export interface Routes {
  readonly plans: readonly PathPlan[];
  /** Rooms, none before those that lead through it. */
  readonly order: Int32Array;
  /** By room. */
  readonly path: Int32Array;
}

/**
 * Find for each room a path by which it reaches outdoors, always open, through as few rooms as possible.
 * The first room of every group that has none is given a seam.
 */
export function routesToOutdoors(
  roomCount: number,
  given: readonly PathPlan[],
  seam: Omit<PathPlan, 'to' | 'from'>,
): Routes {
  const plans = [...given];
  const path = new Int32Array(roomCount).fill(-1);
  const reached: number[] = [];
  const reach = (room: number, p: number): void => {
    if (path[room] !== -1) return;
    path[room] = p;
    reached.push(room);
  };
  const walkOn = (from: number): void => {
    for (let k = from; k < reached.length; k++) {
      plans.forEach((plan, p) => {
        if (!plan.always || plan.from < 0) return;
        if (plan.to === reached[k]) reach(plan.from, p);
        if (plan.from === reached[k]) reach(plan.to, p);
      });
    }
  };
  for (const { to, p } of outermost(plans)) reach(to, p);
  walkOn(0);
  for (let room = 0; room < roomCount; room++) {
    if (path[room] !== -1) continue;
    plans.push({ ...seam, to: room, from: -1 });
    reach(room, plans.length - 1);
    walkOn(reached.length - 1);
  }
  return { plans, order: Int32Array.from(reached.reverse()), path };
}

/** Paths to outdoors that are always open, the widest first. */
function outermost(plans: readonly PathPlan[]): { to: number; p: number }[] {
  return plans
    .map((plan, p) => ({ ...plan, p }))
    .filter(({ from, always }) => from < 0 && always)
    .sort((x, y) => x.friction - y.friction || x.p - y.p);
}
