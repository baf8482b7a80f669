import { outputAtExcess } from '../../physics/heating/radiator-output.ts';
import type { f64, i32 } from '../../units/portable.ts';
import type { Model } from '../layout/model.ts';
import { EMITTER, ROOM } from '../layout/state-layout.ts';

/**
 * Minimum and maximum heat that the emitters of each room can give as a mean over this step. [W]
 *
 * Without lag the minimum is zero and the maximum the rated output at the present excess of water
 * over room temperature. With a lag an emitter follows its valve as a first-order store: heat held at
 * the start is still given off with the valve shut, and full output is reached only gradually.
 */
export function emitterLimits(m: Model): void {
  const { emitterCount, emitters, emitterRoom, rooms } = m;
  for (let e = 0; e < emitterCount; e++) {
    const at = e * EMITTER_STRIDE;
    const excess = emitters[at + WATER]! - rooms[emitterRoom[e]! * ROOM_STRIDE + GUESS]!;
    emitters[at + MOST] = fullOutput(emitters, at, excess);
  }
  roomLimits(m);
}

/**
 * Whether the emitters of some source together ask for more than it and its backup can feed. If so,
 * each of them is limited to the same share of what it asked for, or those that have been calling
 * longest are served first; and the rooms must be solved again.
 */
export function exceedSources(m: Model): boolean {
  const { emitterCount, emitters, emitterSource, sourceCount, power, backup, drawn, firstCome } = m;
  askValves(m);
  let exceeded = false;
  for (let s = 0; s < sourceCount; s++) {
    const limit = power[s]! + backup[s]!;
    if (drawn[s]! <= limit * (1 + ROUNDING)) continue;
    exceeded = true;
    if (firstCome[s] === 1) {
      serveInTurn(m, s, limit);
      continue;
    }
    const share = limit / drawn[s]!;
    for (let e = 0; e < emitterCount; e++) {
      const at = e * EMITTER_STRIDE;
      if (emitterSource[e] !== s) continue;
      emitters[at + MOST] = share * emitters[at + VALVE]!;
    }
  }
  if (exceeded) roomLimits(m);
  return exceeded;
}

/** Divide each room's heat among its emitters, and advance their stores to the end of the step. */
export function settleEmitters(m: Model): void {
  const { emitterCount, emitters, dt } = m;
  askValves(m);
  for (let e = 0; e < emitterCount; e++) {
    const at = e * EMITTER_STRIDE;
    const lag = emitters[at + LAG]!;
    const valve = emitters[at + VALVE]!;
    emitters[at + CALLING] = valve > 0 ? emitters[at + CALLING]! + dt : 0;
    if (lag === 0) continue;
    const z = dt / lag;
    const kept = keptShare(z);
    const output = emitters[at + OUTPUT]!;
    const after = output + z * (valve - (kept * output + (1 - kept) * valve));
    emitters[at + OUTPUT] = after < FORGOTTEN ? 0 : after;
  }
}

/** Allot a source's power to the emitters that have been calling longest, until none is left. */
function serveInTurn(m: Model, s: i32, limit: number): void {
  const { emitterCount, emitters, emitterSource, served } = m;
  for (let e = 0; e < emitterCount; e++) served[e] = 0;
  let left = limit;
  for (let turn = 0; turn < emitterCount; turn++) {
    let next = -1;
    let longest: f64 = -1;
    for (let e = 0; e < emitterCount; e++) {
      const calling = emitters[e * EMITTER_STRIDE + CALLING]!;
      if (emitterSource[e] !== s || served[e] === 1 || calling <= longest) continue;
      next = e;
      longest = calling;
    }
    if (next < 0) return;
    served[next] = 1;
    const at = next * EMITTER_STRIDE;
    emitters[at + MOST] = Math.min(emitters[at + VALVE]!, left);
    left -= emitters[at + MOST]!;
  }
}

function roomLimits({ emitterCount, emitters, emitterRoom, rooms, roomCount, dt }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + LOW] = 0;
    rooms[r + HIGH] = 0;
  }
  for (let e = 0; e < emitterCount; e++) {
    const at = e * EMITTER_STRIDE;
    const r = emitterRoom[e]! * ROOM_STRIDE;
    const lag = emitters[at + LAG]!;
    const most = emitters[at + MOST]!;
    if (lag === 0) {
      rooms[r + HIGH] = rooms[r + HIGH]! + most;
    } else {
      const kept = keptShare(dt / lag);
      const still = kept * emitters[at + OUTPUT]!;
      rooms[r + LOW] = rooms[r + LOW]! + still;
      rooms[r + HIGH] = rooms[r + HIGH]! + still + (1 - kept) * most;
    }
  }
}

/** Heat that each valve passed for the heat given to its room; all valves of a room open alike. [W] */
function askValves({
  emitterCount,
  emitters,
  emitterRoom,
  emitterSource,
  sourceCount,
  rooms,
  drawn,
}: Model): void {
  for (let s = 0; s < sourceCount; s++) drawn[s] = 0;
  for (let e = 0; e < emitterCount; e++) {
    const at = e * EMITTER_STRIDE;
    const r = emitterRoom[e]! * ROOM_STRIDE;
    const low = rooms[r + LOW]!;
    const span = rooms[r + HIGH]! - low;
    const valve = span > 0 ? ((rooms[r + EMITTED]! - low) / span) * emitters[at + MOST]! : 0;
    emitters[at + VALVE] = valve;
    const s = emitterSource[e]!;
    drawn[s] = drawn[s]! + valve;
  }
}

/**
 * Output of an emitter with its valve open: rated, by excess temperature where it has water. [W]
 *
 * Near an excess computed before, three terms of the binomial series about it are used: within NEAR
 * their error is less than 1e-6 at any exponent from 1 to 2.
 */
function fullOutput(emitters: Float64Array, at: i32, excess: number): number {
  const rated = emitters[at + RATED]!;
  const ratedExcess = emitters[at + RATED_EXCESS]!;
  if (ratedExcess === 0) return rated;
  if (!(excess > 0)) return 0;
  const exponent = emitters[at + EXPONENT]!;
  const away = excess / emitters[at + KNOWN_EXCESS]! - 1;
  if (away > -NEAR && away < NEAR) {
    return emitters[at + KNOWN]! * (1 + exponent * away * (1 + 0.5 * (exponent - 1) * away));
  }
  const output = outputAtExcess(rated, ratedExcess, exponent, excess);
  emitters[at + KNOWN] = output;
  emitters[at + KNOWN_EXCESS] = excess;
  return output;
}

/** Weight of a lagging emitter's initial output in its mean over a step; z = dt / lag. [-] */
function keptShare(z: number): number {
  const rest = 6 + z * (3 + z);
  return rest / (rest + z * (3 + z * (2 + z)));
}

const { rated: RATED, excess: RATED_EXCESS, exponent: EXPONENT, water: WATER, lag: LAG } = EMITTER;
const {
  most: MOST,
  known: KNOWN,
  knownExcess: KNOWN_EXCESS,
  valve: VALVE,
  output: OUTPUT,
  calling: CALLING,
} = EMITTER;
const { guess: GUESS, low: LOW, high: HIGH, emitted: EMITTED } = ROOM;

/** Relative distance from a computed excess within which the series is used. [-] */
const NEAR = 0.02;
/** Heat output below which an emitter counts as cold; denormal numbers would slow the loop. [W] */
const FORGOTTEN = 1e-6;
const ROUNDING = 1e-9;

const ROOM_STRIDE = ROOM.stride;
const EMITTER_STRIDE = EMITTER.stride;
