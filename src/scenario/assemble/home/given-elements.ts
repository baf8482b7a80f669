import { chainFromLayers, chainFromUValue } from '../../../home/chain.ts';
import type { Chain, Element, FarSide } from '../../../home/home.ts';
import { surfacesOf } from '../../../home/surfaces.ts';
import { INNER_CAPACITY, ROOF_CAPACITY, WALL_CAPACITY } from '../../presets/fabric.ts';
import type { Path } from '../../yaml/place-of.ts';
import { attempt } from '../attempt.ts';
import type { BuildFacts } from '../build-facts.ts';
import { type RoomPlan, roomCalled } from '../room-plans.ts';
import type { ShellContext } from './shell-context.ts';

/** Elements that the person gave, one by one. */
export function givenElements(plan: RoomPlan, context: ShellContext): Element[] {
  const { facts, plans, ground, findings } = context;
  return (plan.data.elements ?? []).flatMap((given, k): Element[] => {
    const path: Path = ['home', 'rooms', plan.name, 'elements', k];
    const built = attempt(() => givenChain(given, facts), path, findings);
    if (built === null) return [];
    const far = farSide(given, plan, { facts, plans, ground });
    const name = given.name ?? `${plan.name} ${given.kind} ${k + 1}`;
    return [{ name, room: plan.index, kind: given.kind, area: given.area, chain: built, far }];
  });
}

type GivenElement = NonNullable<RoomPlan['data']['elements']>[number];

function givenChain(given: GivenElement, facts: BuildFacts): Chain {
  const inside =
    given.kind === 'partition' || typeof given.to === 'object' || given.to === 'nothing';
  const sides = surfacesOf(inside && given.kind === 'wall' ? 'partition' : given.kind);
  if (given.layers !== undefined) {
    const layers = given.layers.map((layer) => ({
      thickness: layer.thickness,
      conductivity: layer.conductivity,
      density: layer.density,
      specificHeat: layer['specific heat'],
    }));
    return chainFromLayers(layers, sides);
  }
  const usual = {
    wall: WALL_CAPACITY[facts.wall].value,
    floor: 200,
    roof: ROOF_CAPACITY,
    partition: INNER_CAPACITY,
  }[given.kind];
  const capacity = 1000 * (given['heat capacity'] ?? usual);
  return chainFromUValue(given['u-value'] ?? facts.wallUValue, capacity, sides, 'even');
}

function farSide(
  given: GivenElement,
  plan: RoomPlan,
  { facts, plans, ground }: Pick<ShellContext, 'facts' | 'plans' | 'ground'>,
): FarSide {
  const { to = given.kind === 'partition' ? 'nothing' : 'outdoors' } = given;
  if (to === 'ground') return { to, damping: ground.damping };
  if (to === 'nothing') return { to };
  if (to === 'outdoors') {
    const tilt = given.tilt ?? { wall: 90, partition: 90, roof: 0, floor: 180 }[given.kind];
    const absorptance = given.absorptance ?? (given.kind === 'floor' ? 0 : facts.absorptance);
    return { to, azimuth: given.faces ?? plan.faces, tilt, absorptance };
  }
  if ('neighbour' in to) return { to: 'neighbour', temperature: to.neighbour };
  return { to: 'room', room: roomCalled(to.room, plans) };
}
