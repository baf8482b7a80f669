import type { Curve } from '../../../home/home.ts';
import { along } from '../../../units/along.ts';
import { COP } from '../../presets/heating.ts';

/** One point of a table of a heat pump; `water` where the table knows several. [°C], [°C], [-] */
export interface CopPoint {
  readonly outdoor: number;
  readonly water?: number | undefined;
  readonly cop: number;
}

/**
 * A table by outdoor and water temperature, read along the water that the weather asks for.
 *
 * Where the water bends between two points of the table, the COP is worked out there as well.
 */
export function copAlong(points: readonly CopPoint[], water: Curve): Curve {
  const known = [...new Set(points.map(({ outdoor }) => outdoor))];
  const tables = known.map((t) => {
    const here = points.filter(({ outdoor }) => outdoor === t);
    return { outdoor: here.map((p) => p.water ?? 0), value: here.map(({ cop }) => cop) };
  });
  const [first, last] = [known[0]!, known.at(-1)!];
  const bends = water.outdoor.filter((t) => water.outdoor.length > 1 && t > first && t < last);
  const outdoor = [...new Set([...known, ...bends])].sort((a, b) => a - b);
  const value = outdoor.map((t) => {
    const here = along(water, t);
    return along({ outdoor: known, value: tables.map((table) => along(table, here)) }, t);
  });
  return { outdoor, value };
}

/**
 * The usual heat pump with other water: its COP by the same share of the ideal at each outdoor
 * temperature, the difference not below 20 K.
 *
 * Between two points the water may bend, so those of its curve are points as well.
 */
export function usualCop(water: Curve, usualWater: number): Curve {
  const usual = {
    outdoor: COP.points.map(({ outdoor }) => outdoor),
    value: COP.points.map(({ cop }) => cop),
  };
  if (water.value.every((t) => t === usualWater)) return usual;
  const outdoor = [...new Set([...usual.outdoor, ...water.outdoor])].sort((a, b) => a - b);
  const value = outdoor.map((t) => {
    const ratio = ideal(t, along(water, t)) / ideal(t, usualWater);
    return Math.max(1, along(usual, t) * ratio);
  });
  return { outdoor, value };
}

const ideal = (outdoor: number, water: number): number =>
  (water + ZERO_CELSIUS) / Math.max(LEAST_LIFT, water - outdoor);

const ZERO_CELSIUS = 273.15; // K
const LEAST_LIFT = 20; // K: compressors have a least pressure ratio
