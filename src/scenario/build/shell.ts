import { chainFromLayers, chainFromUValue, type MassPlace } from '../../home/chain.ts';
import type { GroundElement } from '../../home/ground.ts';
import type { Chain, Element, FarSide, Opening, Pane } from '../../home/home.ts';
import type { Finding } from '../finding.ts';
import { INNER_CAPACITY, ROOF_CAPACITY, SURFACES, WALL_CAPACITY } from '../presets/fabric.ts';
import { OPENABLE, OPENING_HEIGHT, WINDOW_SHARE, WINDOW_SOURCE } from '../presets/rooms.ts';
import type { Path } from '../yaml/place-of.ts';
import type { BuildFacts } from './build-facts.ts';
import type { Fill } from './fill.ts';
import { outerWalls, type RoomPlan } from './room-plans.ts';

/** What surrounds one room. */
export interface Shell {
  readonly elements: readonly Element[];
  readonly panes: readonly Pane[];
  readonly openings: readonly Opening[];
}

export interface ShellContext {
  readonly facts: BuildFacts;
  readonly plans: readonly RoomPlan[];
  readonly ground: GroundElement;
  readonly fill: Fill;
  readonly findings: Finding[];
}

export function roomShell(plan: RoomPlan, context: ShellContext): Shell {
  const panes = roomPanes(plan, context);
  const elements =
    plan.data.elements === undefined
      ? drawnElements(plan, panes, context)
      : givenElements(plan, context);
  return { elements, panes, openings: roomOpenings(plan, panes, context) };
}

function roomPanes(plan: RoomPlan, { facts, fill }: ShellContext): Pane[] {
  const { name, index, area, faces, data } = plan;
  const share = plan.data['outer sides'] === 0 ? 0 : WINDOW_SHARE[plan.use];
  const likely = Number((share * area).toPrecision(2));
  const preset = { value: likely, low: likely * 0.6, high: likely * 1.5, source: WINDOW_SOURCE };
  const drawn = share > 0 && (data.elements === undefined || data.elements.length > 0);
  return (data.panes ?? (drawn ? [{}] : [])).map((pane, k) => ({
    name: pane.name ?? `${name} window${k === 0 ? '' : ` ${k + 1}`}`,
    room: index,
    area: fill.number(['home', 'rooms', name, 'panes', k, 'area'], pane.area, preset),
    uValue: pane['u-value'] ?? facts.windowUValue,
    gValue: pane['g-value'] ?? facts.windowGValue,
    frameShare: pane.frame ?? facts.frame,
    unshaded: 1 - (pane.shading ?? facts.shading),
    azimuth: pane.faces ?? faces,
    tilt: pane.tilt ?? 90,
  }));
}

function roomOpenings(plan: RoomPlan, panes: readonly Pane[], context: ShellContext): Opening[] {
  const { name, index, faces, data } = plan;
  const first = panes[0];
  const given = data.openings ?? (first === undefined ? [] : [{}]);
  const glass = first?.area ?? 1;
  const preset = {
    value: Number((OPENABLE.value * glass).toPrecision(2)),
    low: OPENABLE.low * glass,
    high: OPENABLE.high * glass,
    source: 'common practice: 40 % of the window',
  };
  return given.map((opening, k) => {
    const at = (key: string) => ['home', 'rooms', name, 'openings', k, key];
    return {
      name: opening.name ?? `${name} window${k === 0 ? '' : ` ${k + 1}`}`,
      room: index,
      area: context.fill.number(at('area'), opening.area, preset),
      height: context.fill.number(at('height'), opening.height, OPENING_HEIGHT),
      azimuth: opening.faces ?? first?.azimuth ?? faces,
    };
  });
}

/** Walls, roof and floor from size, storey and shape. */
function drawnElements(plan: RoomPlan, panes: readonly Pane[], context: ShellContext): Element[] {
  const { facts, fill, ground, findings } = context;
  const { name, index: room, area } = plan;
  const walls = outerWalls(plan, facts, fill);
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
    SURFACES.wall,
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
  if (plan.above === 'roof') {
    const roof = chainFromUValue(facts.roofUValue, ROOF_CAPACITY * 1000, SURFACES.roof, 'inside');
    const far = { ...outdoors, azimuth: 0, tilt: 0 };
    elements.push({ name: `${name} roof`, room, kind: 'roof', area, chain: roof, far });
  }
  if (plan.below === 'ground') {
    const far = { to: 'ground', damping: ground.damping } as const;
    elements.push({ name: `${name} floor`, room, kind: 'floor', area, chain: ground.chain, far });
  }
  if (plan.below === 'outdoors') {
    const floor = chainFromUValue(facts.roofUValue, ROOF_CAPACITY * 1000, SURFACES.floor, 'inside');
    const far = { ...outdoors, absorptance: 0, azimuth: 0, tilt: 180 };
    elements.push({ name: `${name} floor`, room, kind: 'floor', area, chain: floor, far });
  }
  return elements;
}

/** Elements that the person gave, one by one. */
function givenElements(plan: RoomPlan, context: ShellContext): Element[] {
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
  const sides = inside && given.kind === 'wall' ? SURFACES.partition : SURFACES[given.kind];
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
  return { to: 'room', room: plans.findIndex(({ name }) => name === to.room) };
}

function attempt<T>(build: () => T, path: Path, findings: Finding[]): T | null {
  try {
    return build();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const got = error.message.replace(/^[^:]*: /, '');
    findings.push({ path, expected: 'an element that can be built', got });
    return null;
  }
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
