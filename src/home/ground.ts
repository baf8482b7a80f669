import { type Layer, layerResistance, type MassiveLayer } from '../physics/heat/layer.ts';
import {
  innerSurfaceResistance,
  OUTER_SURFACE_RESISTANCE,
} from '../physics/heat/surface-resistance.ts';
import { cosineOf } from '../units/portable-math.ts';
import { requireWithin } from '../units/require-within.ts';
import { chainFromLayers } from './chain.ts';
import type { Chain } from './home.ts';

/** A floor on the ground and what lies under it. */
export interface GroundFloor {
  /** Layers of the floor from the room downwards, without the soil. */
  readonly layers: readonly Layer[];
  /** Area of the whole ground floor, not of one room. [m2] */
  readonly area: number;
  /** Perimeter of the ground floor along outdoor air; 0 is none. [m] */
  readonly exposedPerimeter: number;
  /** Thickness of the outer walls over the ground. [m] */
  readonly wallThickness: number;
  /** Conductivity [W/(m K)] and heat capacity [J/(m3 K)] of the soil. */
  readonly soil: { readonly conductivity: number; readonly capacity: number };
}

/** A floor with its soil, ready to be an element whose far side is the ground. */
export interface GroundElement {
  readonly chain: Chain;
  /** U-value against the year's mean outdoor temperature. [W/(m2 K)] */
  readonly uValue: number;
  /** How much of the year's swing outdoors arrives at the end of the chain. [-] */
  readonly damping: number;
}

/**
 * U-value, chain and damping of a slab on the ground.
 *
 * The chain is the floor, half a metre of soil, and a resistance that makes up the U-value; it ends
 * at a ground temperature that swings about the outdoor year's mean.
 *
 * @throws RangeError for a floor that no home has
 * Source: ISO 13370:2017 (from memory): characteristic dimension B = A/(P/2), equivalent thickness
 * d = w + k (Rsi + Rf + Rse), U = 2k/(pi B + d) ln(pi B/d + 1) or k/(0.457 B + d); outdoor periodic
 * coefficient 0.37 P k ln(depth/d + 1); soil layer of 0.5 m as in its annex on dynamic simulation.
 */
export function groundElement(floor: GroundFloor): GroundElement {
  requireFloor(floor);
  const { conductivity, capacity } = floor.soil;
  const uValue = groundUValue(floor);
  const own = floor.layers.reduce((sum, layer) => sum + layerResistance(layer), 0);
  const rest = 1 / uValue - INNER - own;
  const thickness = Math.min(SOIL_LAYER, Math.max(0.01, rest * 0.9 * conductivity));
  const soil: MassiveLayer = {
    thickness,
    conductivity,
    density: capacity / 1000,
    specificHeat: 1000,
  };
  const outer = Math.max(0, rest - thickness / conductivity);
  const periodic = annualDepth(floor.soil) / equivalentThickness(floor) + 1;
  const swing = OUTER_PERIODIC * floor.exposedPerimeter * conductivity * Math.log(periodic);
  return {
    chain: chainFromLayers([...floor.layers, soil], { inner: INNER, outer }),
    uValue,
    damping: Math.min(1, swing / (uValue * floor.area)),
  };
}

/** U-value of a slab on the ground, surfaces and soil included. [W/(m2 K)] */
export function groundUValue(floor: GroundFloor): number {
  requireFloor(floor);
  const k = floor.soil.conductivity;
  const dimension = floor.area / (0.5 * Math.max(floor.exposedPerimeter, LEAST_EDGE));
  const d = equivalentThickness(floor);
  return d < dimension
    ? ((2 * k) / (Math.PI * dimension + d)) * Math.log((Math.PI * dimension) / d + 1)
    : k / (0.457 * dimension + d);
}

/**
 * Temperature of the ground under a floor on a day.
 *
 * @param annualMean  of outdoor air [°C]
 * @param amplitude  of the outdoor year, half from coldest to warmest [K]
 * @param damping  share of it that arrives [-]
 * @param dayOfYear  1 to 366, fractions allowed
 * @param phase  day on which it is coldest there
 * @returns [°C]
 */
export function groundTemperature(
  annualMean: number,
  amplitude: number,
  damping: number,
  dayOfYear: number,
  phase: number,
): number {
  return annualMean - amplitude * damping * cosineOf((2 * Math.PI * (dayOfYear - phase)) / YEAR);
}

/** The thickness of soil that would resist as much as floor, walls and surfaces do. [m] */
function equivalentThickness({ layers, wallThickness, soil }: GroundFloor): number {
  const own = layers.reduce((sum, layer) => sum + layerResistance(layer), 0);
  return wallThickness + soil.conductivity * (INNER + own + OUTER);
}

/** How deep the year reaches into the soil. [m] */
function annualDepth({ conductivity, capacity }: GroundFloor['soil']): number {
  return Math.sqrt((YEAR * 86_400 * conductivity) / (Math.PI * capacity));
}

function requireFloor(floor: GroundFloor): void {
  requireWithin(floor.area, [1, 1e5], 'groundUValue: floor area', 'm2');
  requireWithin(floor.exposedPerimeter, [0, 1e4], 'groundUValue: exposed perimeter', 'm');
  requireWithin(floor.wallThickness, [0, 3], 'groundUValue: wall thickness', 'm');
  requireWithin(floor.soil.conductivity, [0.1, 10], 'groundUValue: soil conductivity', 'W/(m K)');
  requireWithin(floor.soil.capacity, [1e5, 1e7], 'groundUValue: soil capacity', 'J/(m3 K)');
}

/** Soils of ISO 13370, conductivity [W/(m K)] and heat capacity [J/(m3 K)] (from memory). */
export const SOILS = {
  clay: { conductivity: 1.5, capacity: 3e6 },
  sand: { conductivity: 2, capacity: 2e6 },
  rock: { conductivity: 3.5, capacity: 2e6 },
} as const;

const INNER = innerSurfaceResistance('downwards');
const OUTER = OUTER_SURFACE_RESISTANCE;
const SOIL_LAYER = 0.5; // [m]
const OUTER_PERIODIC = 0.37;
const LEAST_EDGE = 0.1; // [m] so that a floor without edge has a dimension
const YEAR = 365.25; // [days]
