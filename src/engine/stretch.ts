import type { Day } from '../control/day.ts';
import type { Air } from './air.ts';
import type { HeatState } from './heat.ts';
import type { Model } from './model.ts';
import type { SpeciesState } from './species.ts';
import type { TraceStretch } from './trace.ts';
import type { WaterState } from './water.ts';

/** What the observers are shown, kept in one set of arrays for the whole run. */
export interface Stretch {
  readonly view: TraceStretch;
  /** Say which steps the arrays now hold. */
  readonly begin: (firstStep: number, steps: number, start: number) => void;
  /** Scratch: area-weighted surface temperature per room. [m2 K] */
  readonly surface: Float64Array;
}

export function createStretch(m: Model, perDay: number): Stretch {
  const perRoom = (): Float64Array => new Float64Array(perDay * m.rooms);
  const perStep = (): Float64Array => new Float64Array(perDay);
  const view = {
    firstStep: 0,
    steps: 0,
    rooms: m.rooms,
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
      electricity: perStep(),
    },
  };
  return {
    view,
    surface: new Float64Array(m.rooms),
    begin: (firstStep, steps, start) => {
      view.firstStep = firstStep;
      view.steps = steps;
      view.start = start;
    },
  };
}

/** Write step `s` of the stretch. */
export function recordStep(
  stretch: Stretch,
  m: Model,
  heat: HeatState,
  water: WaterState,
  species: readonly SpeciesState[],
  air: Air,
  day: Day,
  s: number,
  outdoor: number,
  outdoorHumidity: number,
): void {
  const { rooms } = m;
  const { room, home } = stretch.view;
  const { surface } = stretch;
  surfaceTemperatures(m, heat, outdoor, surface);
  const at = s * rooms;
  for (let i = 0; i < rooms; i++) {
    const k = at + i;
    const t = heat.mean[i]!;
    const p = (m.pressure * water.mean[i]!) / (MOLAR_MASS_RATIO + water.mean[i]!);
    room.airTemperature[k] = t;
    room.operativeTemperature[k] = m.surface[i]! > 0 ? 0.5 * (t + surface[i]! / m.surface[i]!) : t;
    room.humidityRatio[k] = water.mean[i]!;
    room.vapourPressure[k] = p;
    room.relativeHumidity[k] = (100 * p) / water.saturation[i]!;
    room.heating[k] = heat.emitted[i]!;
    room.occupants[k] = day.occupants[k]!;
    room.windowOpen[k] = air.windowOpen[i]!;
    room.condensation[k] = water.roomCondensing[i]!;
  }
  for (let q = 0; q < species.length; q++) {
    const { mean } = species[q]!;
    const column = room.species[q]!;
    for (let i = 0; i < rooms; i++) column[at + i] = mean[i]!;
  }
  home.outdoorTemperature[s] = outdoor;
  home.outdoorVapourPressure[s] =
    (m.pressure * outdoorHumidity) / (MOLAR_MASS_RATIO + outdoorHumidity);
  home.infiltration[s] = air.infiltration[0]!;
  home.electricity[s] = day.electricity[s]!;
  for (let q = 0; q < m.conversion.length; q++) {
    home.sourceFuel[q]![s] = heat.drawn[q]! / m.conversion[q]!(outdoor);
  }
}

/** Sum of area times inner surface temperature of each room. [m2 K] */
function surfaceTemperatures(m: Model, heat: HeatState, outdoor: number, sum: Float64Array): void {
  const { chains, panes } = m;
  const { count, start, room, farRoom, area, mean } = chains;
  sum.fill(0);
  for (let c = 0; c < count; c++) {
    const i = room[c]!;
    sum[i] = sum[i]! + area[c]! * mean[start[c]!]!;
    const j = farRoom[c]!;
    if (j >= 0) sum[j] = sum[j]! + area[c]! * mean[start[c + 1]! - 1]!;
  }
  for (let p = 0; p < panes.count; p++) {
    const i = panes.room[p]!;
    const t = heat.mean[i]!;
    sum[i] = sum[i]! + panes.area[p]! * (t - panes.drop[p]! * (t - outdoor));
  }
}

const MOLAR_MASS_RATIO = 0.621945;
