import { requireWithin } from '../../../../src/units/require-within.ts';

/**
 * A well-mixed room with one pollutant, in any unit of concentration: ppm, µg/m3, g/m3. Sources are
 * in that unit times m3/s (ppm m3/s; µg/s; g/s).
 */
export interface MixedRoom {
  /** [unit] */
  readonly outdoor: number;
  /** [unit m3/s] */
  readonly source: number;
  /** Flow of outdoor air through the room. [m3/s] */
  readonly flow: number;
  /** [m3] */
  readonly volume: number;
  /** Loss by other ways than outdoor air: settling, a purifier. [1/s] None unless told. */
  readonly loss?: number;
}

/**
 * Concentration that a room comes to when nothing changes: what comes in over what takes it out.
 *
 * @returns [unit]; Infinity for a source in a room that nothing leaves
 * @throws RangeError for a negative figure, no volume, or NaN
 *
 * @example 0.3 L/min of CO2 at 8.33 L/s from 400 ppm outdoors comes to 1000 ppm
 *
 * Source: closed form.
 */
export function steadyConcentration(room: MixedRoom): number {
  check(room);
  const { outdoor, source, flow, volume, loss = 0 } = room;
  return (flow * outdoor + source) / (flow + loss * volume);
}

/**
 * Concentration after a while of constant source and flow: build-up or decay.
 *
 *     c = c_end + (c_start - c_end) exp(-t (flow/volume + loss))
 *
 * @param start  concentration at the beginning [unit], 0 or more
 * @param seconds  time gone by [s], 0 or more
 * @returns [unit]
 * @throws RangeError for a negative figure, no volume, or NaN
 *
 * Source: closed form.
 */
export function concentrationAfter(room: MixedRoom, start: number, seconds: number): number {
  check(room);
  requireWithin(start, ANY, 'concentrationAfter: start', '');
  requireWithin(seconds, ANY, 'concentrationAfter: time', 's');
  const { outdoor, source, flow, volume, loss = 0 } = room;
  const rate = flow / volume + loss;
  const passed = -Math.expm1(-rate * seconds); // 1 - exp(...), exact also for little
  const inflow = rate === 0 ? (source / volume) * seconds : 0;
  const end = rate === 0 ? start : (flow * outdoor + source) / (volume * rate);
  return start + (end - start) * passed + inflow;
}

/**
 * Air changes from how fast a concentration falls towards outdoors once its source has stopped.
 *
 * @param start  at the beginning, above outdoors [unit]
 * @param later  at the end, above outdoors and at most the start [unit]
 * @param outdoor  [unit], 0 or more
 * @param hours  between the two [h], above 0
 * @returns air changes per hour [1/h]
 * @throws RangeError outside those ranges, or NaN
 *
 * @example airChangesFromDecay(1500, 800, 400, 2) // 0.506
 */
export function airChangesFromDecay(
  start: number,
  later: number,
  outdoor: number,
  hours: number,
): number {
  requireWithin(outdoor, ANY, 'airChangesFromDecay: outdoor', '');
  requireWithin(hours, [1e-6, 1e6], 'airChangesFromDecay: time', 'h');
  if (start >= later && later > outdoor)
    return Math.log((start - outdoor) / (later - outdoor)) / hours;
  throw new RangeError(
    'airChangesFromDecay: the concentration must fall and stay above outdoors, ' +
      `got ${start} to ${later} with ${outdoor} outdoors`,
  );
}

function check({ outdoor, source, flow, volume, loss = 0 }: MixedRoom): void {
  requireWithin(outdoor, ANY, 'mixed room: outdoor concentration', '');
  requireWithin(source, ANY, 'mixed room: source', '');
  requireWithin(flow, ANY, 'mixed room: flow', 'm3/s');
  requireWithin(volume, [1e-3, 1e9], 'mixed room: volume', 'm3');
  requireWithin(loss, ANY, 'mixed room: loss', '1/s');
}

const ANY = [0, 1e12] as const;
