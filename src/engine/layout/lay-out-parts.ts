import type { Home } from '../../home/home.ts';
import { type Elimination, positionOf } from '../numerics/sparse.ts';
import { DOOR, EMITTER, FRAME } from './state-layout.ts';

export function layOutDoors({ doorways }: Home): Float64Array {
  const all = new Float64Array(doorways.length * DOOR_STRIDE);
  doorways.forEach((door, d) => {
    const at = d * DOOR_STRIDE;
    all[at + DOOR.width] = door.width;
    all[at + DOOR.height] = door.height;
    all[at + DOOR.mixing] = door.mixing;
    all[at + DOOR.shut] = door.shut;
  });
  return all;
}

export function layOutFrames({ doorways }: Home, elimination: Elimination): Int32Array {
  const all = new Int32Array(doorways.length * FRAME_STRIDE);
  doorways.forEach(({ rooms: [a, b] }, d) => {
    const ab = positionOf(elimination, a, b);
    all.set([a, b, ab, positionOf(elimination, b, a)], d * FRAME_STRIDE);
  });
  return all;
}

export function layOutEmitters({ emitters, sources }: Home): Float64Array {
  const all = new Float64Array(emitters.length * EMITTER_STRIDE);
  emitters.forEach((emitter, e) => {
    const at = e * EMITTER_STRIDE;
    all[at + EMITTER.rated] = emitter.ratedPower;
    all[at + EMITTER.excess] = emitter.ratedExcess;
    all[at + EMITTER.exponent] = emitter.exponent;
    all[at + EMITTER.water] = sources[emitter.source]!.waterTemperature;
    all[at + EMITTER.lag] = emitter.lag;
    all[at + EMITTER.knownExcess] = Number.NaN;
  });
  return all;
}

const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const EMITTER_STRIDE = EMITTER.stride;
