import type { Doorway, Home, Opening, Room } from '../../home/home.ts';
import { orificeFlow } from '../../physics/airflow/orifice-flow.ts';
import { quadraticFlow, quadraticLaw } from '../../physics/airflow/quadratic-law.ts';
import type { i32 } from '../../units/portable.ts';
import { LINK, PATH } from '../layout/state-layout.ts';
import { type AirNetwork, layOutAirNetwork, USUAL_DENSITY } from './lay-out-air-network.ts';
import type { PathPlan } from './path-plan.ts';
import { type Side, windTable } from './wind-on-sides.ts';

/** How air gets in and out of a home and from room to room: first its cracks, then windows, then doorways. */
export interface Shell {
  readonly network: AirNetwork;
  /** Wind over the wind of the weather [-], and pressure coefficients of the sides. */
  readonly windRatio: number;
  readonly wind: Float64Array;
  readonly cracks: i32;
  /** Leakage that passes each crack both ways whatever the weather, where it is given as a rate. [m3/s] */
  readonly steady: Float64Array;
  /** 1 for each crack that is open where no outdoor air is imposed on its room. */
  readonly ownOpen: Float64Array;
  /** The same where no outdoor air is imposed on the crack's room. */
  readonly ownSteady: Float64Array;
  /** [0]: 1 where some room's cracks are replaced by imposed air. */
  readonly replaced: Uint8Array;
  /** Half the height of each room's air, above the home's height 0. [m] */
  readonly middle: Float64Array;
  readonly openings: i32;
  readonly openingRoom: Int32Array;
  readonly openingArea: Float64Array;
  readonly openingHeight: Float64Array;
  /** Law of each window when wide open: friction, inertia, and what a pascal sends through it. */
  readonly openingLaw: Float64Array;
}

/**
 * @param density  of the air that cracks were measured with [kg/m3]
 * @param dt       control step [s]
 */
export function layOutShell(home: Home, density: number, dt: number): Shell {
  const sides: Side[] = [];
  const cracks = [...givenCracks(home, density, sides), ...lastResorts(home)];
  const windows = home.openings.map((o) => windowPath(o, home.rooms, sides));
  const doors = home.doorways.map((d) => doorPath(d, home.rooms));
  // An error that falls with the square of the step leaves the scheme its order.
  const tolerance = TOLERANCE * (dt / 600) * (dt / 600);
  const network = layOutAirNetwork(
    home.rooms.length,
    [...cracks, ...windows, ...doors],
    sides.length,
    tolerance,
  );
  const { how, share } = home.leakage;
  const steady = new Float64Array(cracks.length);
  const own = shutWhereNotNeeded(network, cracks.length, home.rooms.length);
  if (how.by === 'rate') {
    share.forEach((part, room) => {
      steady[cracks.length - home.rooms.length + room] = part * how.flow;
    });
  }
  return {
    ...{ network, windRatio: home.windRatio ?? 1, wind: windTable(sides), cracks: cracks.length },
    ...{
      steady: steady.slice(),
      ownOpen: own,
      ownSteady: steady,
      replaced: new Uint8Array(1),
      middle: Float64Array.from(home.rooms, middleOf),
      openings: windows.length,
    },
    openingRoom: Int32Array.from(home.openings, (o) => o.room),
    openingArea: Float64Array.from(home.openings, (o) => o.area),
    openingHeight: Float64Array.from(home.openings, (o) => o.height),
    openingLaw: Float64Array.from(
      windows.flatMap((path) => [path.friction, path.inertia, usualFlow(path)]),
    ),
  };
}

function givenCracks({ leakage: { how } }: Home, density: number, sides: Side[]): PathPlan[] {
  if (how.by === 'rate') return [];
  return how.cracks.map(({ room, height, azimuth, pressureCoefficient, flowAt1, flowAt10 }) => {
    const low = { pressure: 1, flow: flowAt1 };
    const { a, b } = quadraticLaw(low, { pressure: 10, flow: flowAt10 });
    const side = azimuth === null ? { coefficient: pressureCoefficient } : { azimuth };
    const inertia = b / density;
    const friction = Math.max(a, straightUpTo(STRAIGHT, inertia));
    return { ...OUTSIDE, to: room, friction, inertia, height, side: numberOf(sides, side) };
  });
}

/**
 * A way out of every room that neither wind nor warmth drives, so narrow that it counts only where fans
 * find no other: then each room gives by its share of the leakage. A home of no leaks still has to breathe.
 */
function lastResorts({ rooms, leakage: { share } }: Home): PathPlan[] {
  return rooms.map((_, to) => ({
    ...{ ...OUTSIDE, to, height: 0, side: -1, inertia: 0 },
    friction: 1 / (NARROW * Math.max(share[to]!, LEAST_SHARE)),
  }));
}

/** Shut the last resorts of rooms that have cracks. @returns which cracks and last resorts are open */
function shutWhereNotNeeded(
  { paths, links }: AirNetwork,
  count: number,
  rooms: number,
): Float64Array {
  const open = new Float64Array(count).fill(1);
  for (let p = 0; p < count - rooms; p++) {
    open[count - rooms + links[p * LINK.stride + LINK.to]!] = 0;
  }
  for (let p = 0; p < count; p++) paths[p * PATH.stride + PATH.open] = open[p]!;
  return open;
}

function windowPath(opening: Opening, rooms: readonly Room[], sides: Side[]): PathPlan {
  const { room: to, area, height, head = Math.max(HEAD, height), azimuth } = opening;
  const middle = (rooms[to]!.elevation ?? 0) + head - 0.5 * height;
  const side = numberOf(sides, { azimuth });
  return { ...OUTSIDE, ...holeOf(area), to, height: middle, side, always: false };
}

function doorPath({ rooms: [from, to], width, height }: Doorway, rooms: readonly Room[]): PathPlan {
  const [a, b] = [rooms[from]!.elevation ?? 0, rooms[to]!.elevation ?? 0];
  const middle = Math.abs(a - b) < STEP ? Math.max(a, b) + 0.5 * height : Math.max(a, b);
  const hole = holeOf(width * height + GAP);
  return { to, from, ...hole, height: middle, side: -1, always: true };
}

/** Law of a hole with sharp edges. @param area  [m2] */
export function holeOf(area: number): { readonly friction: number; readonly inertia: number } {
  const flow = orificeFlow(area, 0.5, 1);
  const inertia = 1 / (2 * flow * flow);
  return { friction: straightUpTo(STRAIGHT, inertia), inertia };
}

/** What a pascal sends through by a law. [kg/s] */
export function usualFlow({ friction, inertia }: Pick<PathPlan, 'friction' | 'inertia'>): number {
  return quadraticFlow({ a: friction, b: inertia * USUAL_DENSITY }, 1) * USUAL_DENSITY;
}

/** Friction that makes a law a straight line up to about a pressure. [Pa] */
function straightUpTo(pressure: number, inertia: number): number {
  return Math.sqrt(pressure * inertia);
}

function middleOf({ elevation = 0, volume, floorArea }: Room): number {
  return elevation + (0.5 * volume) / floorArea;
}

function numberOf(sides: Side[], side: Side): number {
  const same = JSON.stringify(side);
  const known = sides.findIndex((other) => JSON.stringify(other) === same);
  return known >= 0 ? known : sides.push(side) - 1;
}

const OUTSIDE = { from: -1, always: true } as const;
/** Upper edge of a window above the floor; common practice. [m] */
const HEAD = 2.1;
/** Rooms whose floors differ by more lie one over the other: what joins them is in the upper one's floor. [m] */
const STEP = 1;
/** Around a shut door: a centimetre under its leaf and less elsewhere; common practice. [m2] */
export const GAP = 0.01;
const STRAIGHT = 1e-6; // Pa
/** Of all last resorts together. [m3/(s Pa)] */
const NARROW = 1e-8;
const LEAST_SHARE = 1e-3;
/** Of a flow at a step of ten minutes, over all air that comes in: far below what is known of any crack. [-] */
const TOLERANCE = 1e-4;
