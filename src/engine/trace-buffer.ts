import type { DayInputs } from '../control/day-inputs.ts';
import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import type { Running } from './devices.ts';
import type { Model } from './model.ts';
import { BLIND, COOLER, ROOM, TRACER } from './state-layout.ts';
import type { TraceView } from './trace.ts';

/** Trace of one span of steps, in one set of arrays that is reused throughout the run. */
export interface TraceBuffer {
  readonly view: TraceView;
  /** Say which steps the arrays now hold. */
  readonly begin: (firstStep: number, steps: number, start: number) => void;
}

export function createTraceBuffer(m: Model, perDay: number): TraceBuffer {
  const perRoom = (): Float64Array => new Float64Array(perDay * m.roomCount);
  const perStep = (): Float64Array => new Float64Array(perDay);
  const view = {
    firstStep: 0,
    steps: 0,
    rooms: m.roomCount,
    dt: m.dt,
    start: 0,
    room: {
      airTemperature: perRoom(),
      radiantTemperature: perRoom(),
      operativeTemperature: perRoom(),
      humidityRatio: perRoom(),
      relativeHumidity: perRoom(),
      vapourPressure: perRoom(),
      heating: perRoom(),
      cooling: perRoom(),
      occupants: perRoom(),
      windowOpen: perRoom(),
      condensation: perRoom(),
      wallCondensation: perRoom(),
      heldHeat: perRoom(),
      heldVapour: perRoom(),
      species: m.home.species.map(perRoom),
    },
    home: {
      outdoorTemperature: perStep(),
      outdoorVapourPressure: perStep(),
      infiltration: perStep(),
      sourceFuel: m.home.sources.map(perStep),
      sourceBackup: m.home.sources.map(perStep),
      electricity: perStep(),
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

/** Record step `s` of the span. @param leakage  of the whole home [m3/s] */
export function recordStep(
  { view: { room, home } }: TraceBuffer,
  m: Model,
  day: DayInputs,
  running: readonly Running[],
  s: number,
  outdoor: number,
  outdoorHumidity: number,
  leakage: number,
): void {
  const { rooms, roomCount, pressure } = m;
  const {
    airTemperature,
    radiantTemperature,
    operativeTemperature,
    humidityRatio,
    relativeHumidity,
  } = room;
  const {
    vapourPressure,
    heating,
    cooling,
    occupants,
    windowOpen,
    condensation,
    wallCondensation,
    species,
  } = room;
  const at = s * roomCount;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = at + i;
    const t = rooms[r + MEAN_T]!;
    const w = rooms[r + MEAN_W]!;
    const p = (pressure * w) / (MOLAR_RATIO + w);
    airTemperature[k] = t;
    radiantTemperature[k] = rooms[r + RADIANT_MEAN]!;
    operativeTemperature[k] = 0.5 * (t + rooms[r + RADIANT_MEAN]!);
    humidityRatio[k] = w;
    vapourPressure[k] = p;
    relativeHumidity[k] = (100 * p) / rooms[r + SATURATION]!;
    heating[k] = rooms[r + EMITTED]!;
    cooling[k] = rooms[r + COOLING]!;
    occupants[k] = day.occupants[k]!;
    windowOpen[k] = rooms[r + WINDOW_OPEN]!;
    condensation[k] = rooms[r + CONDENSING]!;
    wallCondensation[k] = rooms[r + WALL_CONDENSING]!;
  }
  const count = species.length;
  for (let q = 0; q < count; q++) {
    const column = species[q]!;
    for (let i = 0; i < roomCount; i++) {
      column[at + i] = m.tracers[(i * count + q) * TRACER_STRIDE + MEAN_C]!;
    }
  }
  home.outdoorTemperature[s] = outdoor;
  home.outdoorVapourPressure[s] = (pressure * outdoorHumidity) / (MOLAR_RATIO + outdoorHumidity);
  home.infiltration[s] = leakage;
  home.electricity[s] = day.electricity[s]!;
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

const { meanTemperature: MEAN_T, meanHumidity: MEAN_W, emitted: EMITTED } = ROOM;
const { removed: REMOVED, water: WATER, electricity: ELECTRICITY } = COOLER;
const { cooling: COOLING } = ROOM;
const { closed: CLOSED } = BLIND;
const { radiantMean: RADIANT_MEAN, saturation: SATURATION, windowOpen: WINDOW_OPEN } = ROOM;
const { condensing: CONDENSING, wallCondensing: WALL_CONDENSING } = ROOM;
const { mean: MEAN_C } = TRACER;

const ROOM_STRIDE = ROOM.stride;
const BLIND_STRIDE = BLIND.stride;
const COOLER_STRIDE = COOLER.stride;
const TRACER_STRIDE = TRACER.stride;
