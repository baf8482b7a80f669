import { chainFromUValue, chainUValue } from '../../../home/chain.ts';
import { type GroundElement, groundElement, SOILS } from '../../../home/ground.ts';
import { surfacesOf } from '../../../home/surfaces.ts';
import { GROUND_FLOOR, WALL_THICKNESS } from '../../presets/fabric.ts';
import type { BuildFacts } from '../build-facts.ts';
import type { Defaults } from '../defaults.ts';
import { outerWalls, type RoomPlan } from '../room-plans.ts';

/** The floor that all rooms on the ground share, by its size and its edge outdoors. */
export function groundOf(
  plans: readonly RoomPlan[],
  facts: BuildFacts,
  defaults: Defaults,
): GroundElement {
  const low = plans.filter(({ below }) => below === 'ground');
  const area = low.reduce((sum, plan) => sum + plan.area, 0);
  const edge = low.reduce((sum, plan) => {
    const walls = outerWalls(plan, facts, defaults);
    return sum + walls.reduce((wall, { area: a }) => wall + a / plan.height, 0);
  }, 0);
  const built = groundElement({
    layers: GROUND_FLOOR[facts.floor],
    area: Math.max(1, area),
    exposedPerimeter: edge,
    wallThickness: WALL_THICKNESS,
    soil: SOILS.clay,
  });
  if (area === 0) return built;
  const path = ['home', 'build', 'floor u-value'];
  const value = Number(built.uValue.toPrecision(3));
  const preset = { value, low: value * 0.65, high: value * 1.35, source: GROUND_SOURCE };
  if (facts.floorUValue === undefined) {
    defaults.number(path, undefined, preset);
    return built;
  }
  const chain = chainFromUValue(facts.floorUValue, 300_000, surfacesOf('floor'), 'inside');
  return { chain, uValue: chainUValue(chain), damping: built.damping };
}

const GROUND_SOURCE = 'ISO 13370 for its size and edge, clay soil';
