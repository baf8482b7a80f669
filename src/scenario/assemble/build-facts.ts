import { COMMON } from '../../units/preset.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import {
  ABSORPTANCE,
  type Age,
  ALBEDO,
  ageOf,
  FLOOR_DEPTH,
  FRAME,
  FURNISHING_FACTOR,
  GLAZING,
  INNER_FLOOR_U,
  INNER_WALL_U,
  INTERNAL_MASS,
  LIKELY_GLAZING,
  LOFT,
  roofUValue,
  SHADING,
  SUN_TO_AIR,
  WALL_CAPACITY,
  wallOf,
  wallUValue,
} from '../presets/fabric.ts';
import { WINDOW_HEAD } from '../presets/rooms.ts';
import type { Defaults } from './defaults.ts';

/** What age and build say of every room alike. U-values in W/(m2 K), heat capacities in J/(m2 K). */
export type BuildFacts = ReturnType<typeof buildFacts>;

export function buildFacts(data: ScenarioData, defaults: Defaults) {
  const build = data.home.build ?? {};
  const at = (key: string) => ['home', 'build', key];
  const age: Age =
    typeof build.age === 'number'
      ? ageOf(build.age)
      : defaults.word(at('age'), build.age, '1950-1966', COMMON);
  const wall = defaults.word(at('walls'), build.walls, wallOf(age), 'most common of its age');
  const glazing = defaults.word(at('glazing'), build.glazing, LIKELY_GLAZING, COMMON);
  const panes = GLAZING[glazing];
  const roofGiven = build['roof u-value'];
  const loft = roofGiven === undefined ? defaults.number(at('loft'), build.loft, LOFT) : 0;
  const number = (key: NumberKey, preset: Parameters<Defaults['number']>[2]) =>
    defaults.number(at(key), build[key], preset);
  return {
    age,
    wall,
    shape: defaults.word(at('shape'), build.shape, 'semi-detached', COMMON),
    front: defaults.number(at('front'), build.front, FRONT),
    floor: defaults.word(at('floor'), build.floor, 'solid', COMMON),
    floorUValue: build['floor u-value'],
    exposedFloorUValue: build['exposed floor u-value'],
    wallUValue: number('wall u-value', wallUValue(wall, age)),
    wallCapacity: 1000 * number('wall heat capacity', WALL_CAPACITY[wall]),
    roofUValue: number('roof u-value', roofUValue(loft)),
    windowUValue: number('window u-value', panes.uValue),
    windowGValue: number('window g-value', panes.gValue),
    frame: number('window frame', FRAME),
    shading: number('window shading', SHADING),
    absorptance: number('absorptance', ABSORPTANCE),
    innerWallUValue: number('inner wall u-value', INNER_WALL_U),
    innerFloorUValue: number('inner floor u-value', INNER_FLOOR_U),
    internalMass: 1000 * number('internal mass', INTERNAL_MASS),
    furnishingFactor: number('furnishing factor', FURNISHING_FACTOR),
    sunToAir: number('sun to air', SUN_TO_AIR),
    windowHead: number('window head', WINDOW_HEAD),
    floorDepth: number('floor depth', FLOOR_DEPTH),
    albedo: defaults.number(['site', 'albedo'], data.site?.albedo, ALBEDO),
  };
}

type NumberKey =
  | 'wall u-value'
  | 'wall heat capacity'
  | 'roof u-value'
  | 'window u-value'
  | 'window g-value'
  | 'window frame'
  | 'window shading'
  | 'absorptance'
  | 'window head'
  | 'floor depth'
  | 'inner wall u-value'
  | 'inner floor u-value'
  | 'internal mass'
  | 'furnishing factor'
  | 'sun to air';

const FRONT = {
  value: 180,
  low: 0,
  high: 360,
  source: 'nobody said; sunshine depends on it',
};
