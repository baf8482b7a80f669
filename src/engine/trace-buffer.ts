import type { DayInputs } from '../control/day-inputs.ts';
import { MOLAR_RATIO } from '../physics/moist-air/constants.ts';
import type { Running } from './devices.ts';
import type { Model } from './model.ts';
import { PANE, ROOM, TRACER } from './state-layout.ts';
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
      operativeTemperature: perRoom(),
      humidityRatio: perRoom(),
      relativeHumidity: perRoom(),
      vapourPressure: perRoom(),
      heating: perRoom(),
      occupants: perRoom(),
      windowOpen: perRoom(),
      condensation: perRoom(),
      species: m.home.species.map(perRoom),
    },
    home: {
      outdoorTemperature: perStep(),
      outdoorVapourPressure: perStep(),
      infiltration: perStep(),
      sourceFuel: m.home.sources.map(perStep),
      sourceBackup: m.home.sources.map(perStep),
      electricity: perStep(),
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
  const { airTemperature, operativeTemperature, humidityRatio, relativeHumidity } = room;
  const { vapourPressure, heating, occupants, windowOpen, condensation, species } = room;
  addPanes(m, outdoor);
  const at = s * roomCount;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const k = at + i;
    const t = rooms[r + MEAN_T]!;
    const w = rooms[r + MEAN_W]!;
    const p = (pressure * w) / (MOLAR_RATIO + w);
    const surface = rooms[r + SURFACE]!;
    airTemperature[k] = t;
    operativeTemperature[k] = surface > 0 ? 0.5 * (t + rooms[r + WARM_SURFACE]! / surface) : t;
    humidityRatio[k] = w;
    vapourPressure[k] = p;
    relativeHumidity[k] = (100 * p) / rooms[r + SATURATION]!;
    heating[k] = rooms[r + EMITTED]!;
    occupants[k] = day.occupants[k]!;
    windowOpen[k] = rooms[r + WINDOW_OPEN]!;
    condensation[k] = rooms[r + CONDENSING]!;
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

/** Panes are surfaces too: add their inner warmth to that of the walls. [m2 K] */
function addPanes({ rooms, panes, paneCount, paneRoom }: Model, outdoor: number): void {
  for (let p = 0; p < paneCount; p++) {
    const r = paneRoom[p]! * ROOM_STRIDE;
    const pane = p * PANE_STRIDE;
    const t = rooms[r + MEAN_T]!;
    rooms[r + WARM_SURFACE] =
      rooms[r + WARM_SURFACE]! + panes[pane + AREA]! * (t - panes[pane + DROP]! * (t - outdoor));
  }
}

const { meanTemperature: MEAN_T, meanHumidity: MEAN_W, surface: SURFACE, emitted: EMITTED } = ROOM;
const { warmSurface: WARM_SURFACE, saturation: SATURATION, windowOpen: WINDOW_OPEN } = ROOM;
const { condensing: CONDENSING } = ROOM;
const { area: AREA, drop: DROP } = PANE;
const { mean: MEAN_C } = TRACER;

const ROOM_STRIDE = ROOM.stride;
const TRACER_STRIDE = TRACER.stride;
const PANE_STRIDE = PANE.stride;
