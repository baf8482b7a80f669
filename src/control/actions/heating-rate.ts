import type { Observation } from '../observations.ts';

/** How fast rooms warm up, learned from watching them do it. */
export interface HeatingRate {
  /** Learned heating rate of each room; NaN until something has been learned. [K/s] */
  readonly rate: Float64Array;
  /**
   * Look at a room at the start of a step. Allocates nothing.
   *
   * @param now     [s]
   * @param seen    air of each room, and heat of its emitters
   * @param goals   per room: what it will be held at in this step [°C]
   * @param upset   a window stands open: nothing can be learned
   */
  readonly watch: (
    room: number,
    now: number,
    seen: Pick<Observation, 'temperature' | 'output'>,
    goals: Float64Array,
    upset: boolean,
  ) => void;
}

/**
 * A warm-up begins when the goal rises to well above the room, and is over when the room is there
 * or its emitters no longer give near the most they gave in it. Kelvins gained over time taken, from
 * the call for heat on and so with the emitters' lag, is what it teaches; what is remembered moves
 * towards it by a share (exponential average), so that it follows the seasons.
 */
export function createHeatingRate(rooms: number): HeatingRate {
  const rate = new Float64Array(rooms).fill(Number.NaN);
  const from = new Float64Array(rooms).fill(Number.NaN); // when the warm-up began, NaN outside one
  const cold = new Float64Array(rooms);
  const peak = new Float64Array(rooms);
  const before = new Float64Array(rooms).fill(Number.POSITIVE_INFINITY); // goal of the step before

  function learn(i: number, now: number, t: number): void {
    const gained = t - cold[i]!;
    if (gained < WORTH_LEARNING) return;
    const observed = gained / (now - from[i]!);
    const known = rate[i]!;
    rate[i] = Number.isNaN(known) ? observed : known + TRUST * (observed - known);
  }

  const watch: HeatingRate['watch'] = (i, now, { temperature, output: outputs }, goals, upset) => {
    const t = temperature[i]!;
    const output = outputs[i]!;
    const goal = goals[i]!;
    if (!Number.isNaN(from[i]!)) {
      const over = t >= goal - THERE || output < NEAR_FULL * peak[i]!;
      if (output > peak[i]!) peak[i] = output;
      if (over && !upset) learn(i, now, t);
      if (over || upset) from[i] = Number.NaN;
    }
    if (!upset && goal > before[i]! && goal - t >= WORTH_LEARNING && Number.isNaN(from[i]!)) {
      from[i] = now;
      cold[i] = t;
      peak[i] = 0;
    }
    before[i] = goal;
  };

  return { rate, watch };
}

/** A warm-up by less than this teaches nothing. [K] */
const WORTH_LEARNING = 0.5;
/** A room this near its goal counts as having reached it. [K] */
const THERE = 0.05;
/** Emitters below this share of the most they gave are being throttled. [-] */
const NEAR_FULL = 0.9;
/** Weight of the newest warm-up; the last five or six then make up most of what is known. [-] */
const TRUST = 0.3;
