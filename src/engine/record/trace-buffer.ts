import type { DayInputs } from '../../control/day-inputs.ts';
import { MOLAR_RATIO } from '../../physics/moist-air/constants.ts';
import type { Running } from '../equipment/devices.ts';
import type { Model } from '../layout/model.ts';
import { BLIND, COOLER, OUTSIDE } from '../layout/state-layout.ts';
import type { RoomColumns } from './room-columns.ts';
import type { TraceView } from './trace.ts';

/** Trace of one span of steps, in one set of arrays that is reused throughout the run. */
export interface TraceBuffer {
  readonly view: TraceView;
  /** Say which steps the arrays now hold. */
  readonly begin: (firstStep: number, steps: number, start: number) => void;
}

export function createTraceBuffer(m: Model, columns: RoomColumns, perDay: number): TraceBuffer {
  const { levels, length, ...ofRooms } = columns;
  const perRoom = (): Float64Array => new Float64Array(length);
  const perStep = (): Float64Array => new Float64Array(perDay);
  const view = {
    firstStep: 0,
    steps: 0,
    rooms: m.roomCount,
    dt: m.dt,
    start: 0,
    room: {
      ...ofRooms,
      heldHeat: perRoom(),
      heldVapour: perRoom(),
      species: m.home.species.map((_, q) => levels.subarray(q * length, (q + 1) * length)),
    },
    home: {
      outdoorTemperature: perStep(),
      outdoorVapourPressure: perStep(),
      outdoorSpecies: m.home.species.map(perStep),
      infiltration: perStep(),
      sourceFuel: m.home.sources.map(perStep),
      sourceBackup: m.home.sources.map(perStep),
      electricity: perStep(),
      gas: perStep(),
      blinds: Array.from({ length: m.blinds.count }, perStep),
      coolers: m.coolers.eer.map(() => ({
        removed: perStep(),
        water: perStep(),
        electricity: perStep(),
      })),
      devices: m.home.devices.map(() => ({
        electricity: perStep(),
        fuel: perStep(),
        water: perStep(),
        heat: perStep(),
        share: perStep(),
      })),
    },
  };
  return {
    view,
    begin: (firstStep, steps, start) => {
      view.firstStep = firstStep;
      view.steps = steps;
      view.start = start;
    },
  };
}

/** Record what the whole home did in step `s` of the span. */
export function recordHome(
  { view: { home } }: TraceBuffer,
  m: Model,
  day: DayInputs,
  running: readonly Running[],
  s: number,
): void {
  const { pressure, outside } = m;
  const outdoor = outside[OUTDOOR]!;
  const w = outside[OUTDOOR_W]!;
  home.outdoorTemperature[s] = outdoor;
  home.outdoorVapourPressure[s] = (pressure * w) / (MOLAR_RATIO + w);
  for (let q = 0; q < m.species.count; q++) home.outdoorSpecies[q]![s] = m.species.outdoor[q]!;
  home.infiltration[s] = outside[LEAKAGE]!;
  home.electricity[s] = day.electricity[s]!;
  home.gas[s] = day.gas[s]!;
  for (let q = 0; q < m.conversion.length; q++) {
    const drawn = m.drawn[q]!;
    const own = Math.min(drawn, m.power[q]!);
    home.sourceFuel[q]![s] = own / m.conversion[q]!(outdoor);
    home.sourceBackup[q]![s] = drawn - own;
  }
  for (let b = 0; b < home.blinds.length; b++) {
    home.blinds[b]![s] = m.blinds.records[b * BLIND_STRIDE + CLOSED]!;
  }
  const { records } = m.coolers;
  for (let c = 0; c < home.coolers.length; c++) {
    const kept = home.coolers[c]!;
    kept.removed[s] = records[c * COOLER_STRIDE + REMOVED]!;
    kept.water[s] = records[c * COOLER_STRIDE + WATER]!;
    kept.electricity[s] = records[c * COOLER_STRIDE + ELECTRICITY]!;
  }
  for (let d = 0; d < running.length; d++) {
    const { did } = running[d]!;
    const kept = home.devices[d]!;
    kept.electricity[s] = did.electricity;
    kept.fuel[s] = did.fuel;
    kept.water[s] = did.water;
    kept.heat[s] = did.heat;
    kept.share[s] = did.share;
  }
}

const { removed: REMOVED, water: WATER, electricity: ELECTRICITY } = COOLER;
const { closed: CLOSED } = BLIND;
const { temperature: OUTDOOR, humidity: OUTDOOR_W, leakage: LEAKAGE } = OUTSIDE;

const BLIND_STRIDE = BLIND.stride;
const COOLER_STRIDE = COOLER.stride;
