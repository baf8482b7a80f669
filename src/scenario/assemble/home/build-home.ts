import type { WeekSchedule } from '../../../control/household.ts';
import type { Home, Site } from '../../../home/home.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import type { Finding } from '../../unplaced-problem.ts';
import { type BuildFacts, buildFacts } from '../build-facts.ts';
import { carriedSpecies } from '../carried-species.ts';
import type { Defaults } from '../defaults.ts';
import { devicesOf } from '../devices/devices.ts';
import { coolersOf } from '../heating/coolers.ts';
import { heatPlant } from '../heating/heat-sources.ts';
import { type RoomPlan, roomPlans } from '../room-plans.ts';
import { speciesOf } from '../species.ts';
import { type BlindPlan, blindPlans } from './blinds.ts';
import { doorwayPlans } from './doorways.ts';
import { type FloorsBetween, floorsBetween } from './floors-between.ts';
import { groundOf } from './ground-of.ts';
import { innerElements } from './inner-elements.ts';
import { leakageOf } from './leakage-of.ts';
import { roomOf } from './room-of.ts';
import { roomShell } from './shell.ts';
import { windOf } from './wind-of.ts';

export interface BuiltHome {
  readonly home: Home;
  readonly plans: readonly RoomPlan[];
  /** One per doorway. */
  readonly doors: readonly WeekSchedule[];
  /** One per blind. */
  readonly blinds: readonly BlindPlan[];
  readonly floors: FloorsBetween;
  /** What only showed when walls were drawn. */
  readonly findings: readonly Finding[];
}

/**
 * The home of a checked scenario, with everything nobody gave filled in.
 *
 * @param files  texts of the files that the scenario names, by their path there
 * @throws InputProblems for a file that cannot be read
 */
export function buildHome(
  data: ScenarioData,
  place: Pick<Site, 'latitude' | 'longitude' | 'elevation'>,
  files: ReadonlyMap<string, string>,
  defaults: Defaults,
): BuiltHome {
  const facts = buildFacts(data, defaults);
  const plans = roomPlans(data, facts, defaults);
  const elevation = elevations(plans, facts);
  const findings: Finding[] = [];
  const ground = groundOf(plans, facts, defaults);
  const shells = plans.map((plan) => roomShell(plan, { facts, plans, ground, defaults, findings }));
  const doors = doorwayPlans(data, plans, defaults);
  const doorways = doors.map(({ doorway }) => doorway);
  const floors = floorsBetween(plans, defaults);
  const elements = [
    ...shells.flatMap((shell) => shell.elements),
    ...innerElements(plans, doorways, facts, floors.pieces),
  ];
  const panes = shells.flatMap((shell) => shell.panes);
  const carried = carriedSpecies(data);
  const species = speciesOf(carried, data, files, defaults);
  const outer = outerRooms({ elements, panes });
  const rooms = plans.map((plan) =>
    roomOf(plan, {
      data,
      facts,
      species: carried,
      defaults,
      elevation: elevation(plan.storey),
      inside: !outer.has(plan.index),
    }),
  );
  const leakage = leakageOf(data, facts, { rooms, elements, panes }, defaults, findings);
  const windRatio = windOf(data, plans, facts, elevation, defaults);
  const sky = data.site?.sky ?? 'uneven';
  const site = { ...place, albedo: facts.albedo, sky };
  const openings = shells.flatMap((shell) => shell.openings);
  const { emitters, sources } = heatPlant(data, plans, defaults);
  const cooling = coolersOf(data, plans, emitters, defaults);
  const blinds = blindPlans(data, plans, panes, defaults);
  const home: Home = {
    site,
    rooms,
    elements,
    panes,
    openings,
    doorways,
    leakage,
    windRatio,
    emitters,
    sources,
    species,
    devices: devicesOf(data, plans, carried, defaults),
    ...(cooling.length > 0 && { cooling }),
    ...(blinds.length > 0 && { blinds: blinds.map(({ blind }) => blind) }),
  };
  findings.push(...cutOff(home));
  return { home, plans, floors, doors: doors.map(({ open }) => open), blinds, findings };
}

/** Rooms with something outdoors or on the ground. */
function outerRooms({ elements, panes }: Pick<Home, 'elements' | 'panes'>): Set<number> {
  const outside = elements.filter(({ far }) => far.to === 'outdoors' || far.to === 'ground');
  return new Set([...outside, ...panes].map(({ room }) => room));
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

/** Height of each storey's floor above that of storey 0: the highest room below and the depth of a floor more. [m] */
function elevations(
  plans: readonly RoomPlan[],
  { floorDepth }: Pick<BuildFacts, 'floorDepth'>,
): (storey: number) => number {
  const typical = Math.max(...plans.map(({ height }) => height));
  const rise = (storey: number): number => {
    const here = plans.filter((plan) => plan.storey === storey).map(({ height }) => height);
    return (here.length > 0 ? Math.max(...here) : typical) + floorDepth;
  };
  return (storey) => {
    let height = 0;
    for (let s = 0; s < storey; s++) height += rise(s);
    for (let s = storey; s < 0; s++) height -= rise(s);
    return height;
  };
}
