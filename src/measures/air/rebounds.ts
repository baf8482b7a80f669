import type { TraceView } from '../../engine/record/trace.ts';
import { vapourDensity } from '../../physics/moist-air/vapour-density.ts';

/** How soon rooms are as damp again as before a short airing. */
export interface Rebounds {
  /** Airings of at most an hour that dried a room by 0.2 g/m3 or more. */
  readonly airings: number;
  /** Airings after which the room was nearly as damp as before within a day and before the next airing. */
  readonly returned: number;
  /** Mean time until the dampness was back, over `returned`; null where there were none. [min] */
  readonly minutesMean: number | null;
}

/**
 * Follows each room from the moment its windows are all shut until its absolute humidity has won
 * back nine tenths of what it lost: from the step before the windows opened to the driest step since.
 *
 * A step's mean stands for its middle, so a return within the first step after counts half a step.
 */
export function createRebounds(rooms: number): {
  observe(trace: TraceView): void;
  result(): Rebounds;
} {
  const state = new Uint8Array(rooms);
  const latest = new Float64Array(rooms).fill(Number.NaN); // at the end of the last stretch [g/m3]
  const before = new Float64Array(rooms); // g/m3
  const driest = new Float64Array(rooms); // g/m3
  const openFor = new Float64Array(rooms); // s
  const shutFor = new Float64Array(rooms); // s
  let airings = 0;
  let returned = 0;
  let total = 0; // s

  function observe({ steps, dt, room }: TraceView): void {
    const { vapourPressure, airTemperature, windowOpen } = room;
    const vapour = (at: number): number => vapourDensity(vapourPressure[at]!, airTemperature[at]!);
    const end = steps * rooms;
    if (end === 0) return;
    for (let i = 0; i < rooms; i++) {
      let now = state[i]!;
      for (let at = i; at < end; at += rooms) {
        const open = windowOpen[at]!;
        if (open === 0 && now === SHUT) continue;
        if (open > 0) {
          if (state[i] !== OPEN) begin(i, at >= rooms ? vapour(at - rooms) : latest[i]!);
          if (openFor[i]! <= LONGEST) driest[i] = Math.min(driest[i]!, vapour(at));
          openFor[i] = openFor[i]! + open * dt;
          shutFor[i] = (1 - open) * dt;
        } else {
          follow(i, vapour(at), dt);
        }
        now = state[i]!;
      }
      latest[i] = vapour(end - rooms + i);
    }
  }

  function begin(i: number, density: number): void {
    state[i] = OPEN;
    before[i] = density;
    driest[i] = Number.POSITIVE_INFINITY;
    openFor[i] = 0;
  }

  /** One step with the windows shut. */
  function follow(i: number, density: number, dt: number): void {
    driest[i] = Math.min(driest[i]!, density);
    const drop = before[i]! - driest[i]!;
    if (state[i] === OPEN) {
      // Rounding of shares must not make 60 minutes longer than an hour.
      state[i] = openFor[i]! <= LONGEST + 1e-6 && drop >= LEAST_DROP ? RETURNING : SHUT;
      if (state[i] === SHUT) return;
      airings++;
    }
    if (density >= before[i]! - 0.1 * drop) {
      state[i] = SHUT;
      returned++;
      total += shutFor[i]! + dt / 2;
      return;
    }
    shutFor[i] = shutFor[i]! + dt;
    if (shutFor[i]! >= GIVE_UP) state[i] = SHUT;
  }

  const result = (): Rebounds => ({
    airings,
    returned,
    minutesMean: returned === 0 ? null : total / returned / 60,
  });

  return { observe, result };
}

const [SHUT, OPEN, RETURNING] = [0, 1, 2];
const LONGEST = 3600; // s
const GIVE_UP = 86_400; // s
const LEAST_DROP = 0.2; // g/m3
