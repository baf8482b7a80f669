import type { Home } from '../home/home.ts';
import { innerSurfaceResistance } from '../physics/heat/surface-resistance.ts';
import { latentHeat } from '../physics/moist-air/latent-heat.ts';
import { type Elimination, positionOf } from './numerics/sparse.ts';
import { DOOR, EMITTER, FRAME, PANE } from './state-layout.ts';

export function layOutPanes({ panes }: Home): Float64Array {
  const all = new Float64Array(panes.length * PANE_STRIDE);
  panes.forEach((pane, p) => {
    const at = p * PANE_STRIDE;
    all[at + PANE.ua] = pane.uValue * pane.area;
    all[at + PANE.area] = pane.area;
    all[at + PANE.drop] = pane.uValue * innerSurfaceResistance('horizontal');
    const drop = all[at + PANE.drop]!;
    const warming = LATENT * SATURATION_SLOPE * innerSurfaceResistance('horizontal') * (1 - drop);
    const perArea = VAPOUR_TO_GLASS / (1 + VAPOUR_TO_GLASS * warming);
    all[at + PANE.vapourG] = pane.area * (1 - pane.frameShare) * perArea;
  });
  return all;
}

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

/**
 * Vapour from still room air to glass: 7e-9 kg/(s Pa) per W/K of convection (Lewis relation, from
 * memory) with 3 W/(m2 K) of natural convection on an upright pane. [kg/(s m2 Pa)]
 */
const VAPOUR_TO_GLASS = 7e-9 * 3;

/**
 * Condensing warms the glass it forms on, which slows it: the flux per pascal falls by latent heat
 * times slope of the saturation curve at a glass of 10 °C times the resistance the heat meets.
 */
const SATURATION_SLOPE = 82; // Pa/K
const LATENT = latentHeat(10); // J/kg

const PANE_STRIDE = PANE.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const EMITTER_STRIDE = EMITTER.stride;
