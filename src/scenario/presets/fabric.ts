import { COMMON, type Preset } from '../../units/preset.ts';
import { AGES, type GLAZINGS, type WALLS } from '../choices.ts';

export type Wall = (typeof WALLS)[number];
export type Age = (typeof AGES)[number];

/** Age band of a year. */
export function ageOf(year: number): Age {
  const k = LAST_YEARS.findIndex((last) => year <= last);
  return AGES[k < 0 ? AGES.length - 1 : k]!;
}

/** Most likely wall of an age. */
export const wallOf = (age: Age): Wall => (AGES.indexOf(age) <= 1 ? 'solid brick' : 'cavity');

/** U-value of an outer wall as built. [W/(m2 K)] */
export function wallUValue(wall: Wall, age: Age): Preset {
  const value = WALL_U[wall][AGES.indexOf(age)]!;
  if (wall === 'filled cavity') {
    return { value, low: value * 0.7, high: value * 1.4, source: FILLED_SOURCE };
  }
  if (wall === 'solid brick' && value > 1.3) {
    return { value: 1.3, low: 0.9, high: 2.1, source: SOLID_SOURCE };
  }
  return { value, low: value * 0.75, high: Math.min(2.8, value * 1.25), source: EPC };
}

/** Heat capacity of an outer wall [kJ/(m2 K)], from usual thickness and density of its material. */
export const WALL_CAPACITY: Readonly<Record<Wall, Preset>> = {
  'solid brick': { value: 300, low: 250, high: 500, source: COMMON },
  cavity: { value: 260, low: 180, high: 320, source: COMMON },
  'filled cavity': { value: 260, low: 180, high: 320, source: COMMON },
  'timber frame': { value: 60, low: 30, high: 120, source: COMMON },
  granite: { value: 900, low: 700, high: 1300, source: COMMON },
  sandstone: { value: 850, low: 600, high: 1200, source: COMMON },
  'system built': { value: 330, low: 200, high: 450, source: COMMON },
};

/**
 * Top ceiling under a loft with this much mineral wool. [W/(m2 K)]
 *
 * A bare one at 2.3 and wool of 0.044 W/(m K) in series: 0.37 at 100 mm, 0.15 at 270 mm, as the UK
 * assessment's table has them (from memory).
 */
export function roofUValue(loft: number): Preset {
  const value = round(1 / (1 / 2.3 + loft / 1000 / 0.044));
  const source = 'bare ceiling 2.3 W/m2K and mineral wool 0.044 W/mK in series';
  return { value, low: round(value * 0.85), high: round(value * 1.5), source };
}

/** Mineral wool in a loft. [mm] */
export const LOFT: Preset = { value: 150, low: 50, high: 300, source: COMMON };

/** Heat capacity of a top ceiling. [kJ/(m2 K)] */
export const ROOF_CAPACITY = 20;

/** U-value as built of a floor over open air: over a passage, a garage, a porch. [W/(m2 K)] */
export function exposedFloorUValue(age: Age): Preset {
  const value = EXPOSED_FLOOR_U[AGES.indexOf(age)]!;
  const bare = value > 1; // many have been insulated since, and boards alone lose more
  return {
    value,
    low: round(value * (bare ? 0.4 : 0.7)),
    high: round(value * (bare ? 1.7 : 1.4)),
    source: 'UK assessment of existing homes: exposed upper floors by age band (from memory)',
  };
}

/** Heat capacity of boards on joists. [kJ/(m2 K)] */
export const EXPOSED_FLOOR_CAPACITY = 30;

export interface GlazingPreset {
  readonly uValue: Preset;
  readonly gValue: Preset;
}

const SOLID_SOURCE = 'measured: 1.3 ± 0.4 over 58 walls (Li and others 2015); tables say 2.1';
const U_SOURCE = 'MacKay 2008, table E.2, and trade tables';
const G_SOURCE = 'SAP table 6b (from memory)';

/** Windows, glass and frame [W/(m2 K)], and share of sunshine that gets through the glass [-]. */
export const GLAZING: Readonly<Record<(typeof GLAZINGS)[number], GlazingPreset>> = {
  single: {
    uValue: { value: 5, low: 4.5, high: 5.6, source: U_SOURCE },
    gValue: { value: 0.85, low: 0.8, high: 0.88, source: G_SOURCE },
  },
  double: {
    uValue: { value: 2.9, low: 2.6, high: 3.1, source: U_SOURCE },
    gValue: { value: 0.76, low: 0.7, high: 0.78, source: G_SOURCE },
  },
  'double low-e': {
    uValue: { value: 1.7, low: 1.4, high: 2, source: U_SOURCE },
    gValue: { value: 0.63, low: 0.55, high: 0.72, source: G_SOURCE },
  },
  triple: {
    uValue: { value: 0.9, low: 0.7, high: 1.2, source: U_SOURCE },
    gValue: { value: 0.57, low: 0.5, high: 0.68, source: G_SOURCE },
  },
};

/** Most likely glazing. */
export const LIKELY_GLAZING = 'double';

/** Share of a window that is frame. [-] */
export const FRAME: Preset = {
  value: 0.3,
  low: 0.2,
  high: 0.4,
  source: 'SAP (from memory): 0.7 glass',
};

/** Share of sunshine kept off by neighbours, trees, reveals and curtains. [-] */
export const SHADING: Preset = { value: 0.25, low: 0, high: 0.6, source: COMMON };

/** Pitch of the roof over the top ceilings. [deg] */
export const ROOF_PITCH: Preset = { value: 35, low: 0, high: 50, source: COMMON };

/** From a ceiling to the floor above. [m] */
export const FLOOR_DEPTH: Preset = { value: 0.25, low: 0.15, high: 0.4, source: COMMON };

/** Share of sunshine that outer faces take. [-] */
export const ABSORPTANCE: Preset = { value: 0.6, low: 0.3, high: 0.9, source: COMMON };

/** Walls and floors between rooms, both surfaces included. [W/(m2 K)] */
export const INNER_WALL_U: Preset = { value: 1.8, low: 1.2, high: 2.4, source: COMMON };
export const INNER_FLOOR_U: Preset = { value: 1.5, low: 0.8, high: 2, source: COMMON };
/** Heat capacity of walls and floors between rooms. [kJ/(m2 K)] */
export const INNER_CAPACITY = 60;

/** Inner walls and furniture that are no element of their own, a square metre of floor. [kJ/(m2 K)] */
export const INTERNAL_MASS: Preset = {
  value: 60,
  low: 20,
  high: 150,
  source: 'common practice; air and furniture alone are counted as about 10',
};
/** Surface of inner walls and furniture per square metre of floor. [-] */
export const INTERNAL_MASS_AREA = 2;

/** Heat capacity of the air and what warms with it, as a multiple of the air's own. [-] */
export const FURNISHING_FACTOR: Preset = { value: 5, low: 3, high: 10, source: COMMON };

/** Share of the sunshine let in that warms air at once. [-] */
export const SUN_TO_AIR: Preset = { value: 0.1, low: 0, high: 0.3, source: COMMON };

/** Ground around the home. [-] */
export const ALBEDO: Preset = { value: 0.2, low: 0.1, high: 0.3, source: COMMON };

/** What lies on the ground, from the room downwards: [m], [W/(m K)], [kg/m3], [J/(kg K)]. */
export const GROUND_FLOOR = {
  solid: [{ thickness: 0.15, conductivity: 1.4, density: 2000, specificHeat: 1000 }],
  'suspended timber': [
    { thickness: 0.02, conductivity: 0.14, density: 600, specificHeat: 1600 },
    { resistance: 0.2 },
  ],
  insulated: [
    { thickness: 0.07, conductivity: 1.3, density: 2000, specificHeat: 1000 },
    { resistance: 2.5 },
  ],
} as const;

/** Thickness of the outer walls over the ground. [m] */
export const WALL_THICKNESS = 0.3;

const round = (value: number) => Number(value.toPrecision(3));

const LAST_YEARS = [1899, 1929, 1949, 1966, 1975, 1982, 1990, 1995, 2002, 2006];

// W/(m2 K), one for each of AGES.
const LATER = [1, 0.6, 0.45, 0.45, 0.3, 0.25];
const WALL_U: Readonly<Record<Wall, readonly number[]>> = {
  'solid brick': [2.1, 2.1, 2.1, 2.1, 1.7, ...LATER],
  cavity: [2.1, 1.6, 1.6, 1.6, 1.6, ...LATER],
  'filled cavity': [0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.45, 0.4, 0.4, 0.3, 0.25],
  'timber frame': [2.5, 1.9, 1.9, 1, 0.8, 0.5, 0.4, 0.4, 0.4, 0.3, 0.25],
  granite: [1.7, 1.7, 1.7, 1.7, 1.7, ...LATER],
  sandstone: [1.5, 1.5, 1.5, 1.5, 1.5, ...LATER],
  'system built': [2, 2, 2, 2, 1.7, ...LATER],
};
const EXPOSED_FLOOR_U = [1.2, 1.2, 1.2, 1.2, 1.2, 1.2, 1.2, 0.51, 0.51, 0.25, 0.22];
const EPC = 'Scottish Government, EPC supplementary notes: wall U-values by age band';
const FILLED_SOURCE = 'MacKay 2008, table E.2: insulated cavity 0.6; age band where lower';
