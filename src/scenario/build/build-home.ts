import type { WeekLine } from '../../control/household.ts';
import { chainFromUValue, chainUValue } from '../../home/chain.ts';
import { exposedAreas } from '../../home/exposed-area.ts';
import { type GroundElement, groundElement, SOILS } from '../../home/ground.ts';
import type { Home, Leakage, Room, Site, Species } from '../../home/home.ts';
import {
  type LeakageShell,
  leakageFromAch50,
  leakageFromArea,
  leakageFromRate,
} from '../../home/leakage.ts';
import { bufferFromFurnishing } from '../../home/moisture-buffer.ts';
import type { Finding } from '../finding.ts';
import type { ScenarioData } from '../model/scenario-model.ts';
import { GROUND_FLOOR, INTERNAL_MASS_AREA, SURFACES, WALL_THICKNESS } from '../presets/fabric.ts';
import { ACH50, SHELTER_CLASS, VENTS } from '../presets/leakage.ts';
import { COMMON } from '../presets/preset.ts';
import { COLD_SPOT, INNER_ROOM, likelyColdSpot } from '../presets/rooms.ts';
import { type BuildFacts, buildFacts } from './build-facts.ts';
import { doorwayPlans } from './doorways.ts';
import type { Fill } from './fill.ts';
import { heatPlant } from './heat-sources.ts';
import { innerElements } from './inner-elements.ts';
import { outerWalls, type RoomPlan, roomPlans } from './room-plans.ts';
import { roomShell } from './shell.ts';

export interface BuiltHome {
  readonly home: Home;
  readonly plans: readonly RoomPlan[];
  /** One per doorway. */
  readonly doors: readonly WeekLine[];
  /** What only showed when walls were drawn. */
  readonly findings: readonly Finding[];
}

/** The home of a checked scenario, with everything nobody gave filled in. */
export function buildHome(
  data: ScenarioData,
  place: Pick<Site, 'latitude' | 'longitude' | 'elevation'>,
  fill: Fill,
): BuiltHome {
  const facts = buildFacts(data, fill);
  const plans = roomPlans(data, facts, fill);
  const findings: Finding[] = [];
  const ground = groundOf(plans, facts, fill);
  const shells = plans.map((plan) => roomShell(plan, { facts, plans, ground, fill, findings }));
  const doors = doorwayPlans(data, plans, fill);
  const doorways = doors.map(({ doorway }) => doorway);
  const elements = [
    ...shells.flatMap((shell) => shell.elements),
    ...innerElements(plans, doorways, facts, fill),
  ];
  const panes = shells.flatMap((shell) => shell.panes);
  const species = SPECIES;
  const outer = outerRooms({ elements, panes });
  const rooms = plans.map((plan) =>
    roomOf(plan, { data, facts, species, fill, inside: !outer.has(plan.index) }),
  );
  const leakage = leakageOf(data, plans, { rooms, elements, panes }, fill);
  const site = { ...place, albedo: facts.albedo };
  const openings = shells.flatMap((shell) => shell.openings);
  const { emitters, sources } = heatPlant(data, plans, fill);
  const home: Home = {
    site,
    rooms,
    elements,
    panes,
    openings,
    doorways,
    leakage,
    emitters,
    sources,
    species,
  };
  findings.push(...cutOff(home));
  return { home, plans, doors: doors.map(({ open }) => open), findings };
}

interface RoomContext {
  readonly data: ScenarioData;
  readonly facts: BuildFacts;
  readonly species: readonly Species[];
  readonly fill: Fill;
  /** True where no wall, floor or window of the room is outdoors or on the ground. */
  readonly inside: boolean;
}

function roomOf(plan: RoomPlan, { data, facts, species, fill, inside }: RoomContext): Room {
  const { name, area, height } = plan;
  const furnishing =
    plan.data.furnishing ??
    fill.word(['home', 'furnishing'], data.home.furnishing, 'furnished', COMMON);
  return {
    name,
    floorArea: area,
    volume: area * height,
    furnishingFactor: facts.furnishingFactor,
    mass: { capacity: facts.internalMass * area, area: INTERNAL_MASS_AREA * area },
    buffer: bufferFromFurnishing(furnishing, area, height),
    coldSpotFactor: coldSpotOf(plan, data, facts, inside, fill),
    deposition: species.map(() => 0),
    sunToAir: facts.sunToAir,
  };
}

/** A word is a range; where it was given for the home, or nowhere, the range is the home's. */
function coldSpotOf(
  plan: RoomPlan,
  data: ScenarioData,
  facts: BuildFacts,
  inside: boolean,
  fill: Fill,
): number {
  const own = plan.data['cold spot factor'];
  const path = ['home', 'rooms', plan.name, 'cold spot factor'];
  if (typeof own === 'number') return own;
  if (own !== undefined) return fill.number(path, undefined, COLD_SPOT[own]);
  if (inside) return fill.number(path, undefined, INNER_ROOM);
  const home = data.home['cold spot factor'];
  if (typeof home === 'number') return home;
  const word = home ?? likelyColdSpot(facts.wallUValue);
  return fill.number(['home', 'cold spot factor'], undefined, COLD_SPOT[word]);
}

/** Rooms with something outdoors or on the ground. */
function outerRooms({ elements, panes }: Pick<Home, 'elements' | 'panes'>): Set<number> {
  const outside = elements.filter(({ far }) => far.to === 'outdoors' || far.to === 'ground');
  return new Set([...outside, ...panes].map(({ room }) => room));
}

function groundOf(plans: readonly RoomPlan[], facts: BuildFacts, fill: Fill): GroundElement {
  const low = plans.filter(({ below }) => below === 'ground');
  const area = low.reduce((sum, plan) => sum + plan.area, 0);
  const edge = low.reduce((sum, plan) => {
    const walls = outerWalls(plan, facts, fill);
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
    fill.number(path, undefined, preset);
    return built;
  }
  const chain = chainFromUValue(facts.floorUValue, 300_000, SURFACES.floor, 'inside');
  return { chain, uValue: chainUValue(chain), damping: built.damping };
}

function leakageOf(
  data: ScenarioData,
  plans: readonly RoomPlan[],
  home: Pick<Home, 'rooms' | 'elements' | 'panes'>,
  fill: Fill,
): Leakage {
  const exposed = exposedAreas(home);
  const whole = exposed.reduce((sum, area) => sum + area, 0);
  const volume = home.rooms.reduce((sum, room) => sum + room.volume, 0);
  const given = data.home.leakage ?? {};
  if (given['air changes'] !== undefined) {
    return leakageFromRate(given['air changes'], { volume, exposed });
  }
  const free = fill.number(['home', 'background vents'], data.home['background vents'], VENTS);
  const vents = exposed.map((area) => (free * 1e-6 * area) / whole);
  const shell: LeakageShell = { volume, exposed, vents };
  const shelter = fill.word(['site', 'shelter'], data.site?.shelter, 'suburban', COMMON);
  const top = Math.max(...plans.map(({ storey }) => storey)) + 1;
  const storeys = fill.number(['site', 'storeys'], data.site?.storeys, {
    value: Math.min(3, Math.max(1, top)),
    low: 1,
    high: 3,
    source: 'the highest storey of a room',
  });
  const site = { storeys, shelterClass: SHELTER_CLASS[shelter] };
  if (given.area !== undefined) return leakageFromArea(given.area, shell, site);
  const feels = data.home.build?.draughts;
  if (feels === undefined && given.ach50 === undefined) {
    fill.word(['home', 'build', 'draughts'], undefined, 'average', COMMON);
  }
  const ach50 = fill.number(['home', 'leakage', 'ach50'], given.ach50, ACH50[feels ?? 'average']);
  return leakageFromAch50(ach50, shell, site);
}

/** Rooms that nothing leads out of: no doorway, no pane, no element that heat passes. */
function cutOff({ rooms, elements, panes, doorways }: Home): Finding[] {
  return rooms.flatMap((room, index): Finding[] => {
    const reached =
      panes.some((pane) => pane.room === index) ||
      doorways.some((doorway) => doorway.rooms.includes(index)) ||
      elements.some(
        ({ room: own, far }) =>
          (own === index && far.to !== 'nothing') || (far.to === 'room' && far.room === index),
      );
    if (reached) return [];
    const expected = 'a doorway, a window or a wall that heat passes';
    return [
      { path: ['home', 'rooms', room.name], expected, got: 'a room cut off from everything' },
    ];
  });
}

/** What the air carries besides water. */
const SPECIES: readonly Species[] = [{ name: 'co2', unit: 'ppm', outdoor: 420, penetration: 1 }];
const GROUND_SOURCE = 'ISO 13370 for its size and edge, clay soil';
