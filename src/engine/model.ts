import type { Element, HeatSource, Home } from '../home/home.ts';
import {
  innerSurfaceResistance,
  OUTER_SURFACE_RESISTANCE,
} from '../physics/heat/surface-resistance.ts';
import { humidityRatioFromRelativeHumidity } from '../physics/moist-air/humidity-ratio.ts';
import { latentHeat } from '../physics/moist-air/latent-heat.ts';
import { moistAirHeatCapacity } from '../physics/moist-air/moist-air-enthalpy.ts';
import { dryAirDensity } from '../physics/moist-air/moist-air-volume.ts';
import { type AirPaths, layOutAirPaths } from './air.ts';
import { type Chains, layOutChains } from './chains.ts';
import { type Elimination, planElimination } from './numerics/sparse.ts';

/**
 * A home laid out flat for the time loop: everything that stays the same from step to step.
 *
 * One reference air (20 °C, 50 % relative humidity, the place's pressure) gives the mass of dry air
 * in a cubic metre and its heat capacity; both are constants of a run, so that stored heat and
 * carried heat speak of the same air. Over a heating season this is within 2 % of any hour's air.
 */
export interface Model {
  readonly home: Home;
  /** Control step. [s] */
  readonly dt: number;
  readonly rooms: number;
  /** Mean station pressure. [Pa] */
  readonly pressure: number;
  /** Dry air in a cubic metre of room air. [kg/m3] */
  readonly density: number;
  /** Of a kilogram of dry air with its vapour. [J/(kg K)] */
  readonly airCp: number;

  readonly elimination: Elimination;
  /** Conductances between rooms through elements and from rooms into chains, by position. [W/K] */
  readonly fixed: Float64Array;
  /** Positions of (a, b) and (b, a) for each doorway. */
  readonly doorAB: Int32Array;
  readonly doorBA: Int32Array;

  readonly chains: Chains;
  readonly paths: AirPaths;
  readonly boundaries: readonly Boundary[];

  /** Per room: air and what warms with it [J/K]; all panes [W/K]; into all chains [W/K]. */
  readonly airCapacity: Float64Array;
  readonly paneUA: Float64Array;
  readonly chainG: Float64Array;
  /** Per room: dry air [kg]. */
  readonly airMass: Float64Array;
  /** Per room: moisture buffer, [kg] from 0 to 100 % relative humidity and [kg/(s Pa)]. */
  readonly bufferCapacity: Float64Array;
  readonly bufferG: Float64Array;
  /** Per room: inner surfaces, elements and panes [m2]; see operative temperature. */
  readonly surface: Float64Array;
  readonly sunToAir: Float64Array;
  /** Per room: 1 where it has surfaces of its own to warm, else 0, and all gains go to the air. */
  readonly surfaced: Uint8Array;
  /** Heat taken when a kilogram of water evaporates indoors. [J/kg] */
  readonly evaporation: number;

  /** Per source: useful heat for one unit of fuel at an outdoor temperature. [-] */
  readonly conversion: readonly ((outdoor: number) => number)[];
  readonly panes: PanesFlat;
  readonly emitters: EmittersFlat;
}

/** A temperature at the far end of chains. */
export type Boundary =
  | {
      readonly is: 'outdoors';
      readonly azimuth: number;
      readonly tilt: number;
      /** Rise of the outer face's surroundings per W/m2 of sun [m2 K/W], and their drop to the sky [K]. */
      readonly perSun: number;
      readonly skyLoss: number;
    }
  | { readonly is: 'ground'; readonly damping: number }
  | { readonly is: 'neighbour'; readonly temperature: number };

interface PanesFlat {
  readonly count: number;
  readonly room: Int32Array;
  readonly ua: Float64Array;
  readonly area: Float64Array;
  /** Drop from room to inner surface over drop from room to outdoors: U times surface resistance. [-] */
  readonly drop: Float64Array;
  /** Vapour from room air to glass. [kg/(s Pa)] */
  readonly vapourG: Float64Array;
}

interface EmittersFlat {
  readonly count: number;
  readonly room: Int32Array;
  readonly source: Int32Array;
  readonly rated: Float64Array;
  readonly excess: Float64Array;
  readonly exponent: Float64Array;
  readonly water: Float64Array;
  readonly lag: Float64Array;
  /** Per source: what all its emitters together can draw. [W] */
  readonly power: Float64Array;
  /** Per room: whether it has one; radiant share of all its emitters together. [-] */
  readonly present: Uint8Array;
  readonly radiant: Float64Array;
  /** Per room: heat that reaches the air at once per watt emitted. [W/W] */
  readonly reach: Float64Array;
}

export function layOutModel(home: Home, pressure: number, dt: number): Model {
  const rooms = home.rooms.length;
  const humidity = humidityRatioFromRelativeHumidity(REFERENCE_T, REFERENCE_RH, pressure);
  const density = dryAirDensity(REFERENCE_T, humidity, pressure);
  const airCp = moistAirHeatCapacity(humidity);
  const boundaries: Boundary[] = [];
  const chains = layOutChains(home.rooms, home.elements, (e) => boundaryOf(e, boundaries), dt);
  const elimination = planElimination(rooms, [
    ...home.doorways.map((d) => d.rooms),
    ...home.elements.flatMap(({ room, far }) =>
      far.to === 'room' ? [[room, far.room] as const] : [],
    ),
  ]);
  const at = (i: number, j: number): number => elimination.positions.get(i * rooms + j)!;
  const panes = layOutPanes(home);
  const paneUA = new Float64Array(rooms);
  const surface = new Float64Array(rooms);
  for (let p = 0; p < panes.count; p++) {
    paneUA[panes.room[p]!]! += panes.ua[p]!;
    surface[panes.room[p]!]! += panes.area[p]!;
  }
  for (let c = 0; c < chains.count; c++) {
    surface[chains.room[c]!]! += chains.area[c]!;
    if (chains.farRoom[c]! >= 0) surface[chains.farRoom[c]!]! += chains.area[c]!;
  }
  return {
    home,
    dt,
    rooms,
    pressure,
    density,
    airCp,
    elimination,
    fixed: fixedConductances(chains, elimination, at),
    doorAB: Int32Array.from(home.doorways, (d) => at(d.rooms[0], d.rooms[1])),
    doorBA: Int32Array.from(home.doorways, (d) => at(d.rooms[1], d.rooms[0])),
    chains,
    paths: layOutAirPaths(home),
    boundaries,
    airCapacity: Float64Array.from(
      home.rooms,
      (r) => r.furnishingFactor * density * r.volume * airCp,
    ),
    paneUA,
    chainG: sumChainG(chains, rooms),
    bufferCapacity: Float64Array.from(home.rooms, (r) => r.buffer.capacity),
    bufferG: Float64Array.from(home.rooms, (r) =>
      r.buffer.capacity > 0 ? r.buffer.conductance : 0,
    ),
    airMass: Float64Array.from(home.rooms, (r) => density * r.volume),
    surface,
    sunToAir: Float64Array.from(home.rooms, (r) => r.sunToAir),
    surfaced: Uint8Array.from(home.rooms, (_, i) =>
      chains.room.some((room, c) => room === i && chains.radiantShare[c]! > 0) ? 1 : 0,
    ),
    evaporation: latentHeat(REFERENCE_T),
    conversion: home.sources.map(conversionOf),
    panes,
    emitters: layOutEmitters(home, chains),
  };
}

function boundaryOf(element: Element, boundaries: Boundary[]): number {
  const { far } = element;
  if (far.to === 'room' || far.to === 'nothing') return -1;
  const wanted: Boundary =
    far.to === 'outdoors'
      ? {
          is: 'outdoors',
          azimuth: far.azimuth,
          tilt: far.tilt,
          perSun: far.absorptance * OUTER_SURFACE_RESISTANCE,
          skyLoss: SKY_LOSS_UPWARDS * Math.max(0, Math.cos((far.tilt * Math.PI) / 180)),
        }
      : far.to === 'ground'
        ? { is: 'ground', damping: far.damping }
        : { is: 'neighbour', temperature: far.temperature };
  const same = JSON.stringify(wanted);
  const known = boundaries.findIndex((b) => JSON.stringify(b) === same);
  if (known >= 0) return known;
  return boundaries.push(wanted) - 1;
}

function fixedConductances(
  chains: Chains,
  { size }: Elimination,
  at: (i: number, j: number) => number,
): Float64Array {
  const fixed = new Float64Array(size);
  for (let c = 0; c < chains.count; c++) {
    const first = chains.start[c]!;
    const last = chains.start[c + 1]! - 1;
    const i = chains.room[c]!;
    const j = chains.farRoom[c]!;
    fixed[at(i, i)]! += chains.nearG[c]! * (1 - chains.fromNear[first]!);
    if (j < 0) continue;
    fixed[at(i, j)]! -= chains.nearG[c]! * chains.fromFar[first]!;
    fixed[at(j, i)]! -= chains.farG[c]! * chains.fromNear[last]!;
    fixed[at(j, j)]! += chains.farG[c]! * (1 - chains.fromFar[last]!);
  }
  return fixed;
}

function sumChainG(chains: Chains, rooms: number): Float64Array {
  const sum = new Float64Array(rooms);
  for (let c = 0; c < chains.count; c++) {
    sum[chains.room[c]!]! += chains.nearG[c]!;
    if (chains.farRoom[c]! >= 0) sum[chains.farRoom[c]!]! += chains.farG[c]!;
  }
  return sum;
}

function conversionOf({ conversion }: HeatSource): (outdoor: number) => number {
  if (conversion.by === 'efficiency') return () => conversion.efficiency;
  const { outdoor: x, cop: y } = conversion;
  return (outdoor) => {
    let k = 0;
    while (k < x.length - 2 && outdoor > x[k + 1]!) k++;
    if (x.length === 1 || outdoor <= x[0]!) return y[0]!;
    const part = Math.min(1, (outdoor - x[k]!) / (x[k + 1]! - x[k]!));
    return y[k]! + part * (y[k + 1]! - y[k]!);
  };
}

function layOutPanes({ panes }: Home): PanesFlat {
  return {
    count: panes.length,
    room: Int32Array.from(panes, (p) => p.room),
    ua: Float64Array.from(panes, (p) => p.uValue * p.area),
    area: Float64Array.from(panes, (p) => p.area),
    drop: Float64Array.from(panes, (p) => p.uValue * innerSurfaceResistance('horizontal')),
    vapourG: Float64Array.from(panes, (p) => p.area * (1 - p.frameShare) * VAPOUR_TO_GLASS),
  };
}

function layOutEmitters(home: Home, chains: Chains): EmittersFlat {
  const rooms = home.rooms.length;
  const { emitters } = home;
  const rated = new Float64Array(rooms);
  const radiated = new Float64Array(rooms);
  for (const e of emitters) {
    rated[e.room]! += e.ratedPower;
    radiated[e.room]! += e.ratedPower * e.radiantShare;
  }
  const received = new Float64Array(rooms); // of a radiant watt, what the surfaces pass to the air at once
  const surfaces = new Float64Array(rooms);
  for (let c = 0; c < chains.count; c++) {
    const i = chains.room[c]!;
    received[i]! += chains.radiantShare[c]! * chains.fromNear[chains.start[c]!]!;
    surfaces[i]! += chains.radiantShare[c]!;
  }
  // Where there is no surface to warm, radiant heat has only the air.
  const radiant = rated.map((sum, i) => (sum > 0 && surfaces[i]! > 0 ? radiated[i]! / sum : 0));
  return {
    count: emitters.length,
    room: Int32Array.from(emitters, (e) => e.room),
    source: Int32Array.from(emitters, (e) => e.source),
    rated: Float64Array.from(emitters, (e) => e.ratedPower),
    excess: Float64Array.from(emitters, (e) => e.ratedExcess),
    exponent: Float64Array.from(emitters, (e) => e.exponent),
    water: Float64Array.from(emitters, (e) => home.sources[e.source]!.waterTemperature),
    lag: Float64Array.from(emitters, (e) => e.lag),
    power: Float64Array.from(home.sources, (s) => s.power),
    present: Uint8Array.from(rated, (sum) => (sum > 0 ? 1 : 0)),
    radiant,
    reach: radiant.map((share, i) => 1 - share + share * received[i]!),
  };
}

/**
 * Vapour from still room air to glass: 7e-9 kg/(s Pa) per W/K of convection (Lewis relation, from
 * memory) with 3 W/(m2 K) of natural convection on an upright pane. [kg/(s m2 Pa)]
 */
const VAPOUR_TO_GLASS = 7e-9 * 3;

/** Long-wave loss of an upward face to a clear-to-average sky, as a temperature (ASHRAE sol-air, from memory). [K] */
const SKY_LOSS_UPWARDS = 3.9;

const REFERENCE_T = 20; // °C
const REFERENCE_RH = 50; // %
