import { type Layer, layerCapacity, layerResistance } from '../physics/heat/layer.ts';
import { requireWithin } from '../units/require-within.ts';
import { SECONDS_PER_DAY } from '../units/time-units.ts';
import { type Cell, fewestNodes, lump } from './chain-nodes.ts';
import type { Chain } from './home.ts';

/** Surface resistances of an element [m2 K/W], and whether its far face also stands in a room. */
export interface Surfaces {
  readonly inner: number;
  /** With all that resists beyond the last layer, such as ground. */
  readonly outer: number;
  /** Fit the far face as closely as the near one (partitions); otherwise only what it lets through. */
  readonly bothFaces?: boolean;
}

/**
 * The chain of resistances and capacities that stands for a layered element.
 *
 * First node on the inner face, last on the outer face. As few nodes as keep the answer to a daily
 * swing near the exact one of ISO 13786: admittance and areal heat capacity within 5 %, transmittance
 * within 5 % of the U-value. A cell may span several thin layers. Total resistance and capacity are kept exactly, except that
 * a face without mass of its own gets a film of 0.1 kJ/(m2 K), taken from the rest if there is any.
 *
 * @param layers  from the room outwards, at least one
 * @throws RangeError for a layer outside what building materials are
 */
export function chainFromLayers(layers: readonly Layer[], surfaces: Surfaces): Chain {
  requireWithin(layers.length, [1, 30], 'chainFromLayers: number of layers', 'layers');
  requireSurfaces('chainFromLayers', surfaces);
  for (const layer of layers) requireLayer(layer);
  return lumped(layers, surfaces);
}

/** Place of the mass of an element of which only U-value and heat capacity are known. */
export type MassPlace = 'inside' | 'middle' | 'outside' | 'even';

/**
 * A chain for an element of which only U-value and heat capacity are known.
 *
 * The mass is taken to be masonry (0.8 W/(m K), 1.7 MJ/(m3 K)), the rest resistance without mass;
 * 'even' spreads both alike, as in an uninsulated wall. Where the masonry alone would resist more
 * than the whole element does, it is spread evenly too.
 *
 * @param uValue  surfaces included [W/(m2 K)]
 * @param arealCapacity  of the whole element [J/(m2 K)]
 * @throws RangeError where the U-value is higher than the surfaces alone allow
 */
export function chainFromUValue(
  uValue: number,
  arealCapacity: number,
  surfaces: Surfaces,
  where: MassPlace,
): Chain {
  requireSurfaces('chainFromUValue', surfaces);
  const highest = surfaces.inner + surfaces.outer > 0 ? 1 / (surfaces.inner + surfaces.outer) : 100;
  requireWithin(uValue, [0.01, highest * 0.999], 'chainFromUValue: U-value', 'W/(m2 K)');
  requireWithin(arealCapacity, CAPACITY, 'chainFromUValue: areal capacity', 'J/(m2 K)');
  const resistance = 1 / uValue - surfaces.inner - surfaces.outer;
  const masonry = arealCapacity / MASONRY.perCubicMetre / MASONRY.conductivity;
  const spread = where === 'even' || masonry >= resistance;
  const mass = massOf(arealCapacity, spread ? resistance : masonry);
  const rest = resistance - masonry;
  if (arealCapacity < FAINT) return lumped([{ resistance }], surfaces);
  if (spread) return lumped([mass], surfaces);
  if (where === 'inside') return lumped([mass, { resistance: rest }], surfaces);
  if (where === 'outside') return lumped([{ resistance: rest }, mass], surfaces);
  const half = { resistance: rest / 2 };
  return lumped([half, mass, half], surfaces);
}

/** U-value of a chain, surfaces included. [W/(m2 K)] */
export function chainUValue(chain: Chain): number {
  return 1 / chain.resistance.reduce((sum, r) => sum + r, 0);
}

/** The chain of layers, which need not be building materials. */
function lumped(layers: readonly Layer[], surfaces: Surfaces): Chain {
  const key = JSON.stringify([layers, surfaces]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const cells = layers.flatMap(slices);
  const chain = lump(cells, fewestNodes(cells, layers, surfaces), surfaces);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, chain);
  return chain;
}

/** A layer in slices thin enough that it does not matter where between them a node is put. */
function slices(layer: Layer): Cell[] {
  const resistance = layerResistance(layer);
  const capacity = layerCapacity(layer);
  const depths = Math.sqrt((Math.PI * resistance * capacity) / SECONDS_PER_DAY);
  const n = Math.min(40, Math.max(1, Math.ceil(depths * 6)));
  return Array.from({ length: n }, () => ({ resistance: resistance / n, capacity: capacity / n }));
}

/** A layer of one metre with the given totals. */
function massOf(capacity: number, resistance: number): Layer {
  return {
    thickness: 1,
    conductivity: 1 / resistance,
    density: capacity / 1000,
    specificHeat: 1000,
  };
}

function requireSurfaces(who: string, { inner, outer }: Surfaces): void {
  requireWithin(inner, INNER, `${who}: inner surface resistance`, 'm2 K/W');
  requireWithin(outer, OUTER, `${who}: outer resistance`, 'm2 K/W');
}

function requireLayer(layer: Layer): void {
  if ('resistance' in layer) {
    requireWithin(layer.resistance, [0, 50], 'chainFromLayers: resistance', 'm2 K/W');
    return;
  }
  requireWithin(layer.thickness, [1e-4, 5], 'chainFromLayers: thickness', 'm');
  requireWithin(layer.conductivity, [0.005, 500], 'chainFromLayers: conductivity', 'W/(m K)');
  requireWithin(layer.density, [1, 12_000], 'chainFromLayers: density', 'kg/m3');
  requireWithin(layer.specificHeat, [100, 10_000], 'chainFromLayers: specific heat', 'J/(kg K)');
}

/** Chains by what they stand for: the plans of a home have most of their walls in common. */
const known = new Map<string, Chain>();
const MOST_KNOWN = 1000;
const INNER = [0, 10] as const;
const OUTER = [0, 1e6] as const; // also the ground's, under a floor that has next to no edge
const CAPACITY = [0, 5e6] as const;
const FAINT = 1e-3; // [J/(m2 K)] as good as no mass
const MASONRY = { conductivity: 0.8, perCubicMetre: 1.7e6 } as const;
