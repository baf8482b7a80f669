import type { Observation } from '../observations.ts';

/** How fast rooms warm up, learned from watching them do it. */
export interface HeatingRate {
  /** Learned heating rate of each room; NaN until something has been learned. [K/s] */
  readonly rate: Float64Array;
  /**
   * Look at a room at the start of a step. Allocates nothing.
   *
   * @param step    its number, counted from any time on
   * @param seen    air of each room, and heat of its emitters
   * @param goals   per room: what it will be held at in this step [°C]
   * @param upset   a window stands open: nothing can be learned
   */
  readonly watch: (
    room: number,
    step: number,
    seen: Pick<Observation, 'felt' | 'output'>,
    goals: Float64Array,
    upset: boolean,
  ) => void;
}

/**
 * A warm-up begins when the goal rises to well above the room, and is over when the room is there
 * or its emitters no longer give near the most they gave in it. Kelvins gained over time taken, from
 * the call for heat on and so with the emitters' lag, is what it teaches; what is remembered moves
 * towards it by a share (exponential average), so that it follows the seasons.
 *
 * @param dt  control step [s]
 */
export function createHeatingRate(rooms: number, dt: number): HeatingRate {
  const rate = new Float64Array(rooms).fill(Number.NaN);
  const warmUps = Array.from({ length: rooms }, createWatchedWarmUp);

  function learn(i: number, step: number, felt: Float64Array): void {
    const { from, cold } = warmUps[i]!;
    const gained = felt[i]! - cold;
    if (gained < WORTH_LEARNING) return;
    const observed = gained / ((step - from) * dt);
    const known = rate[i]!;
    rate[i] = Number.isNaN(known) ? observed : known + TRUST * (observed - known);
  }

  const watch: HeatingRate['watch'] = (i, step, { felt, output: outputs }, goals, upset) => {
    const room = warmUps[i]!;
    const t = felt[i]!;
    const output = outputs[i]!;
    const goal = goals[i]!;
    if (room.from === NONE && goal === room.before) return;
    if (room.from !== NONE) {
      const over = t >= goal - THERE || output < NEAR_FULL * room.peak;
      if (output > room.peak) room.peak = output;
      if (over && !upset) learn(i, step, felt);
      if (over || upset) room.from = NONE;
    }
    if (!upset && goal > room.before && goal - t >= WORTH_LEARNING && room.from === NONE) {
      room.from = step;
      room.cold = t;
      room.peak = 0;
    }
    room.before = goal;
  };

  return { rate, watch };
}

function createWatchedWarmUp() {
  return {
    /** Number of the step in which it began; NONE outside one. */
    from: NONE,
    /** Air of the room when it began. [°C] */
    cold: Number.NaN,
    /** Most that the emitters have given in it. [-] */
    peak: 0,
    /** Goal of the step before. [°C] */
    before: Number.POSITIVE_INFINITY,
  };
}

const NONE = -1;
/** A warm-up by less than this teaches nothing. [K] */
const WORTH_LEARNING = 0.5;
/** A room this near its goal counts as having reached it. [K] */
const THERE = 0.05;
/** Emitters below this share of the most they gave are being throttled. [-] */
const NEAR_FULL = 0.9;
/** Weight of the newest warm-up; the last five or six then make up most of what is known. [-] */
const TRUST = 0.3;
