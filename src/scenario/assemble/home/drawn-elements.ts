import { chainFromUValue, type MassPlace } from '../../../home/chain.ts';
import type { Element, Pane } from '../../../home/home.ts';
import { surfacesOf } from '../../../home/surfaces.ts';
import { EXPOSED_FLOOR_CAPACITY, exposedFloorUValue, ROOF_CAPACITY } from '../../presets/fabric.ts';
import type { BuildFacts } from '../build-facts.ts';
import { outerWalls, type RoomPlan } from '../room-plans.ts';
import type { ShellContext } from './shell-context.ts';

/** Walls, roof and floor from size, storey and shape. */
export function drawnElements(
  plan: RoomPlan,
  panes: readonly Pane[],
  context: ShellContext,
): Element[] {
  const { facts, defaults, ground, findings } = context;
  const { name, index: room, area } = plan;
  const walls = outerWalls(plan, facts, defaults);
  const outer = walls.reduce((sum, wall) => sum + wall.area, 0);
  const glass = panes.reduce((sum, pane) => sum + (pane.tilt > 45 ? pane.area : 0), 0);
  if (glass > outer) {
    const expected = `windows no larger than the outer walls (${outer.toFixed(1)} m2)`;
    const got = `${glass.toFixed(1)} m2`;
    findings.push({ path: ['home', 'rooms', name, 'panes'], expected, got });
  }
  const chain = chainFromUValue(
    facts.wallUValue,
    facts.wallCapacity,
    surfacesOf('wall'),
    MASS_PLACE[facts.wall],
  );
  const left = outer > 0 ? Math.max(0, 1 - glass / outer) : 0;
  const outdoors = { to: 'outdoors', absorptance: facts.absorptance } as const;
  const elements: Element[] = walls
    .map((wall, k) => ({
      name: `${name} wall${k === 0 ? '' : ` ${k + 1}`}`,
      room,
      kind: 'wall' as const,
      area: wall.area * left,
      chain,
      far: { ...outdoors, azimuth: wall.faces, tilt: 90 },
    }))
    .filter((wall) => wall.area > 0);
  if (plan.above === 'roof' && (plan.data['exposed ceiling'] ?? 0) > 0) {
    const expected = `nothing in a room of the top storey, all of which has the roof over it unless "above" says otherwise`;
    findings.push({ path: ['home', 'rooms', name, 'exposed ceiling'], expected, key: true });
  }
  const bare = plan.above === 'roof' ? area : (plan.data['exposed ceiling'] ?? 0);
  if (bare > 0) {
    const roof = chainFromUValue(
      facts.roofUValue,
      ROOF_CAPACITY * 1000,
      surfacesOf('roof'),
      'inside',
    );
    const far = { ...outdoors, azimuth: 0, tilt: 0 };
    elements.push({ name: `${name} roof`, room, kind: 'roof', area: bare, chain: roof, far });
  }
  const hanging = plan.below === 'outdoors' ? area : (plan.data['exposed floor'] ?? 0);
  if (plan.below === 'ground' && area > hanging) {
    const far = { to: 'ground', damping: ground.damping } as const;
    const floor = { name: `${name} floor`, room, kind: 'floor' as const, area: area - hanging };
    elements.push({ ...floor, chain: ground.chain, far });
  }
  if (hanging > 0) {
    const path = ['home', 'build', 'exposed floor u-value'];
    const uValue = defaults.number(path, facts.exposedFloorUValue, exposedFloorUValue(facts.age));
    const capacity = EXPOSED_FLOOR_CAPACITY * 1000;
    const floor = chainFromUValue(uValue, capacity, surfacesOf('floor'), 'inside');
    const far = { ...outdoors, absorptance: 0, azimuth: 0, tilt: 180 };
    const over = plan.below === 'ground' ? `${name} floor over open air` : `${name} floor`;
    elements.push({ name: over, room, kind: 'floor', area: hanging, chain: floor, far });
  }
  return elements;
}

const MASS_PLACE: Readonly<Record<BuildFacts['wall'], MassPlace>> = {
  'solid brick': 'even',
  cavity: 'even',
  'filled cavity': 'even',
  'timber frame': 'inside',
  granite: 'even',
  sandstone: 'even',
  'system built': 'even',
};
