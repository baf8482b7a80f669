import type { HeatState } from './heat.ts';
import type { Model } from './model.ts';

/**
 * Least and most heat the emitters of each room can give as a mean over this step. [W]
 *
 * Without lag the least is nothing and the most is the rated output at the present excess of water
 * over room. With a lag an emitter answers its valve like a first-order store: what it held at the
 * start still comes out with the valve shut, and not all comes at once with it open.
 */
export function emitterLimits(m: Model, h: HeatState): void {
  const { count, room, rated, excess, exponent, water } = m.emitters;
  for (let e = 0; e < count; e++) {
    const over = water[e]! - h.guess[room[e]!]!;
    h.most[e] = fullOutput(rated[e]!, excess[e]!, exponent[e]!, over);
  }
  roomLimits(m, h);
}

/**
 * Whether the emitters of some source together ask for more than it can feed. If so, each of them
 * is limited to the same share of what it asked for, and the rooms must be solved again.
 */
export function exceedSources(m: Model, h: HeatState): boolean {
  const { count, source, power } = m.emitters;
  const { drawn, most, valveMean } = h;
  askValves(m, h);
  let exceeded = false;
  for (let s = 0; s < power.length; s++) {
    if (drawn[s]! <= power[s]! * (1 + ROUNDING)) continue;
    exceeded = true;
    const share = power[s]! / drawn[s]!;
    for (let e = 0; e < count; e++) if (source[e] === s) most[e] = share * valveMean[e]!;
  }
  if (exceeded) roomLimits(m, h);
  return exceeded;
}

/** Share what each room's emitters gave among them, and move their stores to the end of the step. */
export function shareOut(m: Model, h: HeatState): void {
  const { count, lag, radiant } = m.emitters;
  const { emitted, emittedRadiant, output, outputMean, valveMean } = h;
  askValves(m, h);
  for (let e = 0; e < count; e++) {
    const valve = valveMean[e]!;
    if (lag[e] === 0) {
      outputMean[e] = valve;
      output[e] = valve;
    } else {
      const z = m.dt / lag[e]!;
      const kept = keptShare(z);
      const mean = kept * output[e]! + (1 - kept) * valve;
      outputMean[e] = mean;
      output[e] = output[e]! + z * (valve - mean);
    }
  }
  for (let i = 0; i < m.rooms; i++) emittedRadiant[i] = radiant[i]! * emitted[i]!;
}

function roomLimits(m: Model, h: HeatState): void {
  const { count, room, lag } = m.emitters;
  const { low, high, most, output } = h;
  low.fill(0);
  high.fill(0);
  for (let e = 0; e < count; e++) {
    const i = room[e]!;
    if (lag[e] === 0) {
      high[i] = high[i]! + most[e]!;
    } else {
      const kept = keptShare(m.dt / lag[e]!);
      low[i] = low[i]! + kept * output[e]!;
      high[i] = high[i]! + kept * output[e]! + (1 - kept) * most[e]!;
    }
  }
}

/** What each valve let through so that its room got what it got; all valves of a room open alike. */
function askValves(m: Model, h: HeatState): void {
  const { count, room, source } = m.emitters;
  const { emitted, low, high, most, valveMean, drawn } = h;
  drawn.fill(0);
  for (let e = 0; e < count; e++) {
    const i = room[e]!;
    const span = high[i]! - low[i]!;
    const valve = span > 0 ? ((emitted[i]! - low[i]!) / span) * most[e]! : 0;
    valveMean[e] = valve;
    drawn[source[e]!] = drawn[source[e]!]! + valve;
  }
}

/** Output of an emitter with its valve open: rated, by excess temperature where it has water. [W] */
function fullOutput(rated: number, ratedExcess: number, exponent: number, excess: number): number {
  if (ratedExcess === 0) return rated;
  return excess > 0 ? rated * (excess / ratedExcess) ** exponent : 0; // EN 442
}

/** Of a lagging emitter's mean over a step, the share that its start still decides; z = dt / lag. [-] */
function keptShare(z: number): number {
  return (2 + z) / (2 + 2 * z + z * z);
}

const ROUNDING = 1e-9;
