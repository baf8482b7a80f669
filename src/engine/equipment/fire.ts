import type { Stove } from '../../home/devices.ts';
import { stoveHeatOver, woodRate } from '../../physics/equipment/stove-burn.ts';

/** A fire that is fed a batch at a time, and what it did in the step at hand; reused. */
export interface Fire {
  /** Since wood was last laid on; infinite while it is out. [s] */
  since: number;
  /** Whether it was ordered to burn at the end of the step before. */
  ordered: boolean;
  /** Share of the step in which wood burns. [-] */
  burning: number;
  /** Mean fuel power over the step. [W] */
  fuel: number;
  /** Mean heat of the wood over the step, which the stove has yet to pass on. [W] */
  heat: number;
  /** How often wood was laid on. */
  refuellings: number;
}

/** A fire that is out. */
export function coldFire(): Fire {
  return {
    since: Number.POSITIVE_INFINITY,
    ordered: false,
    ...{ burning: 0, fuel: 0, heat: 0, refuellings: 0 },
  };
}

/**
 * Burn for a step.
 *
 * The next batch is laid on when the last has burnt out, to the second and as long as the fire is
 * ordered to burn; what has been laid on burns out. So the wood of an evening does not depend on the
 * length of the step.
 *
 * @param share  of the step in which it is ordered to burn [-]: its last part where it was not
 *   ordered before, otherwise its first
 */
export function burnOver(fire: Fire, does: Stove, share: number, dt: number): void {
  const { batch, energy, efficiency, interval } = does;
  const from = fire.ordered ? 0 : (1 - share) * dt;
  const until = from + share * dt - ROUNDING * dt;
  fire.burning = 0;
  fire.fuel = 0;
  fire.heat = 0;
  fire.refuellings = 0;
  let t = 0;
  while (t < dt) {
    if (fire.since >= interval) {
      t = Math.max(t, from);
      if (t >= until) break;
      fire.since = 0;
      fire.refuellings++;
    }
    const end = Math.min(dt, t + interval - fire.since);
    const burnt = end - t;
    const part = burnt / dt;
    const after = fire.since + burnt;
    fire.burning += part;
    fire.fuel += part * energy * woodRate(batch, interval, fire.since, after);
    fire.heat += part * stoveHeatOver(batch, energy, efficiency, interval, fire.since, after);
    // What is left of a batch by rounding would be a stretch of no length.
    fire.since = interval - after > ROUNDING * interval ? after : interval;
    t = dt - end > ROUNDING * dt ? end : dt;
  }
  fire.ordered = share > 0 && until >= dt - 2 * ROUNDING * dt;
}

const ROUNDING = 1e-9;
