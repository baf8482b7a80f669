import type { Element, HeatSource, Home } from '../../home/home.ts';
import { OUTER_SURFACE_RESISTANCE } from '../../physics/heat/surface-resistance.ts';
import { humidityRatioFromRelativeHumidity } from '../../physics/moist-air/humidity-ratio.ts';
import { latentHeat } from '../../physics/moist-air/latent-heat.ts';
import { moistAirHeatCapacity } from '../../physics/moist-air/moist-air-heat-capacity.ts';
import { dryAirDensity } from '../../physics/moist-air/moist-air-volume.ts';
import { saturationCubics } from '../../physics/moist-air/saturation-table.ts';
import { along } from '../../units/along.ts';
import type { i32 } from '../../units/portable.ts';
import { type Elimination, planElimination } from '../numerics/sparse.ts';
import { type HeatNetwork, layOutHeat } from './heat-network.ts';
import { type Blinds, layOutBlinds } from './lay-out-blinds.ts';
import { type Coolers, layOutCoolers } from './lay-out-coolers.ts';
import { type Films, layOutFilms } from './lay-out-films.ts';
import { type ImposedWork, layOutImposed } from './lay-out-imposed.ts';
import { layOutDoors, layOutEmitters, layOutFrames } from './lay-out-parts.ts';
import { layOutRooms } from './lay-out-rooms.ts';
import { layOutSpecies, layOutTracers, type SpeciesWork } from './lay-out-species.ts';
import { layOutWalls } from './lay-out-walls.ts';
import { skyDrop } from './sky-drop.ts';
import { OUTSIDE } from './state-layout.ts';
import type { WallModes } from './wall-modes.ts';
import type { Walls } from './walls.ts';

/**
 * A home laid out for the time loop: what stays the same from step to step, what changes, and room
 * to work in. Everything the loop touches is made here, once a run.
 *
 * One reference air (20 °C, 50 % relative humidity, the place's pressure) gives the mass of dry air
 * in a cubic metre and its heat capacity; both are constants of a run, so that stored heat and
 * carried heat speak of the same air. Most hours of a heated room are within 3 % of it; a room at
 * 5 °C or a day of very high or low pressure is 5 % off.
 */
export interface Model {
  readonly home: Home;
  /** Control step. [s] */
  readonly dt: number;
  /** Mean station pressure. [Pa] */
  readonly pressure: number;
  /** Dry air in a cubic metre of room air. [kg/m3] */
  readonly density: number;
  /** Heat capacity of moist air per kilogram of its dry air. [J/(kg K)] */
  readonly airCp: number;
  /** Heat taken when a kilogram of water evaporates indoors. [J/kg] */
  readonly evaporation: number;
  /** Table of saturation pressures; see saturationAt. */
  readonly cubics: Float64Array;

  readonly roomCount: i32;
  /** ROOM records. */
  readonly rooms: Float64Array;
  readonly walls: Walls;
  /** How the nodes of each wall make its modes; for the start of a run. */
  readonly wallModes: readonly WallModes[];
  readonly heat: HeatNetwork;
  readonly blinds: Blinds;
  readonly coolers: Coolers;
  readonly boundaries: readonly Boundary[];
  /** Boundary temperatures, mean over the step. [°C] */
  readonly boundary: Float64Array;
  readonly films: Films;
  readonly doorCount: i32;
  /** DOOR and FRAME records. */
  readonly doors: Float64Array;
  readonly frames: Int32Array;
  readonly emitterCount: i32;
  /** EMITTER records, and the room and source of each. */
  readonly emitters: Float64Array;
  readonly emitterRoom: Int32Array;
  readonly emitterSource: Int32Array;
  readonly sourceCount: i32;
  /** Power of each source; its backup and what was drawn, mean over the step, follow. [W] */
  readonly power: Float64Array;
  readonly backup: Float64Array;
  readonly drawn: Float64Array;
  /** 1 for each source that serves those calling longest first. */
  readonly firstCome: Uint8Array;
  /** Scratch, per emitter. */
  readonly served: Uint8Array;
  /** OUTSIDE record. */
  readonly outside: Float64Array;
  /** Useful heat per unit of fuel of each source, by outdoor temperature. [-] */
  readonly conversion: readonly ((outdoor: number) => number)[];
  /** TRACER records, species side by side in each room. */
  readonly tracers: Float64Array;
  readonly species: SpeciesWork;
  /** What each room's emitters are held at; see heat.ts. */
  readonly held: Uint8Array;
  readonly imposed: ImposedWork;

  readonly elimination: Elimination;
  /** Values by position: flows of dry air [kg/s]; work. */
  readonly flow: Float64Array;
  readonly matrix: Float64Array;
  readonly matrixWork: Float64Array;
  /** One number a room: right-hand sides and solution. */
  readonly rhs: Float64Array;
  readonly rhsWork: Float64Array;
  readonly solution: Float64Array;
}

/** A temperature at the far end of walls. */
type Boundary =
  | {
      readonly is: 'outdoors';
      readonly azimuth: number;
      readonly tilt: number;
      /** Rise of what the outer face sees per W/m2 of sun [m2 K/W], and its drop to the sky [K]. */
      readonly perSun: number;
      readonly skyDrop: number;
    }
  | { readonly is: 'ground'; readonly damping: number }
  | { readonly is: 'neighbour'; readonly temperature: number };

export function layOutModel(home: Home, pressure: number, dt: number): Model {
  const n = home.rooms.length;
  const humidity = humidityRatioFromRelativeHumidity(REFERENCE_T, REFERENCE_RH, pressure);
  const density = dryAirDensity(REFERENCE_T, humidity, pressure);
  const airCp = moistAirHeatCapacity(humidity);
  const boundaries: Boundary[] = [];
  const { walls, steps } = layOutWalls(home, (e) => boundaryOf(e, boundaries), dt);
  const rooms = layOutRooms(home, walls, density, airCp, dt);
  const heat = layOutHeat(home, walls, rooms);
  const elimination = planElimination(
    n,
    home.doorways.map((d) => d.rooms),
  );
  const perValue = (): Float64Array => new Float64Array(elimination.size);
  return {
    home,
    dt,
    pressure,
    density,
    airCp,
    evaporation: latentHeat(REFERENCE_T),
    cubics: saturationCubics(),
    roomCount: n,
    rooms,
    walls,
    wallModes: steps,
    heat,
    blinds: layOutBlinds(home, rooms, heat),
    coolers: layOutCoolers(home, rooms, density, pressure),
    boundaries,
    boundary: new Float64Array(boundaries.length),
    films: layOutFilms(home, rooms),
    doorCount: home.doorways.length,
    doors: layOutDoors(home),
    frames: layOutFrames(home, elimination),
    emitterCount: home.emitters.length,
    emitters: layOutEmitters(home),
    emitterRoom: Int32Array.from(home.emitters, (e) => e.room),
    emitterSource: Int32Array.from(home.emitters, (e) => e.source),
    sourceCount: home.sources.length,
    power: Float64Array.from(home.sources, (s) => s.power),
    backup: Float64Array.from(home.sources, (s) => s.backup ?? 0),
    drawn: new Float64Array(home.sources.length),
    firstCome: Uint8Array.from(home.sources, (s) => (s.sharing === 'first come' ? 1 : 0)),
    served: new Uint8Array(home.emitters.length),
    outside: new Float64Array(OUTSIDE.stride),
    conversion: home.sources.map(conversionOf),
    tracers: layOutTracers(home),
    species: layOutSpecies(home, elimination.size),
    held: new Uint8Array(n),
    imposed: layOutImposed(home),
    elimination,
    flow: perValue(),
    matrix: perValue(),
    matrixWork: perValue(),
    rhs: new Float64Array(n),
    rhsWork: new Float64Array(n),
    solution: new Float64Array(n),
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
          skyDrop: skyDrop(far.tilt),
        }
      : far.to === 'ground'
        ? { is: 'ground', damping: far.damping }
        : { is: 'neighbour', temperature: far.temperature };
  const same = JSON.stringify(wanted);
  const known = boundaries.findIndex((b) => JSON.stringify(b) === same);
  return known >= 0 ? known : boundaries.push(wanted) - 1;
}

function conversionOf({ conversion }: HeatSource): (outdoor: number) => number {
  if (conversion.by === 'efficiency') return () => conversion.efficiency;
  const curve = { outdoor: conversion.outdoor, value: conversion.cop };
  return (outdoor) => along(curve, outdoor);
}

const REFERENCE_T = 20; // °C
const REFERENCE_RH = 50; // %
