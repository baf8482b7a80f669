import type { i32 } from '../../units/portable.ts';
import { LINK, PATH, PRESSURE_COUNT } from '../layout/state-layout.ts';
import { type Elimination, planElimination, positionOf } from '../numerics/sparse.ts';
import type { PathPlan } from './path-plan.ts';
import { routesToOutdoors } from './routes-to-outdoors.ts';

/**
 * Ways of air between rooms and outdoors, with one unknown pressure a room.
 *
 * A path lets q through where `dp = (friction + inertia rho |q|) q`, with q its flow by volume and rho
 * the density where the air comes from; flows are kept by mass, towards the room `to` of their path.
 * Pressures are those at the home's height 0 less what stands outdoors at that height; z metres up a
 * room has `buoyancy z` more.
 */
export interface AirNetwork {
  readonly roomCount: i32;
  readonly pathCount: i32;
  readonly sideCount: i32;
  /** PATH and LINK records. */
  readonly paths: Float64Array;
  readonly links: Int32Array;
  /** By room: air that fans and flues bring, less what they take. [kg/s] */
  readonly given: Float64Array;
  /** By room. [Pa] */
  readonly pressure: Float64Array;
  /** By room: how much slower its pressure falls with height than outdoors. [Pa/m] */
  readonly buoyancy: Float64Array;
  /** One over the density of each room's air, and outdoors at the end. [m3/kg] */
  readonly lightness: Float64Array;
  /** Pressure that wind puts on each side. [Pa] */
  readonly sides: Float64Array;
  /** Error that may be left: of flows over all air that comes in, of pressures over 10 Pa. [-] */
  readonly tolerance: number;
  /** Rooms in an order that walks each from the far end outdoors, and by room the path it takes. */
  readonly routeOrder: Int32Array;
  readonly routePath: Int32Array;
  /** By room: what a pascal more would let out of it, in the system being solved. [kg/(s Pa)] */
  readonly outlets: Float64Array;
  /** PRESSURE_COUNT fields. */
  readonly counts: Float64Array;
  readonly elimination: Elimination;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
}

/**
 * Lay out a network. Rooms that nothing joins to outdoors, one by one or together, get a seam each such
 * group, because no room is quite tight and a fan in one must find its air.
 *
 * @param given      rooms are numbered from 0; seams come after these paths
 * @param sides      how many sides wind blows on
 * @param tolerance  see AirNetwork
 * @throws RangeError where a path has no friction, or ends in a room that there is not
 */
export function layOutAirNetwork(
  roomCount: number,
  given: readonly PathPlan[],
  sides: number,
  tolerance: number = TOLERANCE,
): AirNetwork {
  given.forEach((plan, p) => {
    check(plan, p, roomCount, sides);
  });
  const { plans, order, path } = routesToOutdoors(roomCount, given, SEAM);
  const inner = plans.filter(({ from }) => from >= 0);
  const elimination = planElimination(
    roomCount,
    inner.map(({ to, from }) => [to, from] as const),
  );
  return {
    roomCount,
    pathCount: plans.length,
    sideCount: sides,
    paths: layOutPaths(plans),
    links: layOutLinks(plans, elimination),
    given: new Float64Array(roomCount),
    pressure: new Float64Array(roomCount),
    buoyancy: new Float64Array(roomCount),
    lightness: new Float64Array(roomCount + 1).fill(1 / USUAL_DENSITY),
    sides: new Float64Array(sides),
    tolerance,
    routeOrder: order,
    routePath: path,
    outlets: new Float64Array(roomCount),
    counts: new Float64Array(PRESSURE_COUNT.stride),
    elimination,
    matrix: new Float64Array(elimination.size),
    rhs: new Float64Array(roomCount),
  };
}

function layOutPaths(plans: readonly PathPlan[]): Float64Array {
  const paths = new Float64Array(plans.length * PATH.stride);
  plans.forEach(({ friction, inertia, height, always }, p) => {
    const at = p * PATH.stride;
    paths[at + PATH.friction] = friction;
    paths[at + PATH.inertia] = inertia;
    paths[at + PATH.height] = height;
    const drag = friction + Math.sqrt(friction * friction + 4 * inertia * USUAL_DENSITY);
    paths[at + PATH.usual] = (2 * USUAL_DENSITY) / drag;
    paths[at + PATH.open] = always ? 1 : 0;
  });
  return paths;
}

function layOutLinks(plans: readonly PathPlan[], elimination: Elimination): Int32Array {
  const links = new Int32Array(plans.length * LINK.stride);
  plans.forEach(({ to, from, side }, p) => {
    const toFrom = from < 0 ? -1 : positionOf(elimination, to, from);
    const fromTo = from < 0 ? -1 : positionOf(elimination, from, to);
    links.set([to, from, toFrom, fromTo, side], p * LINK.stride);
  });
  return links;
}

function check(plan: PathPlan, p: number, rooms: number, sides: number): void {
  const { to, from, friction, inertia, side } = plan;
  const refuse = (what: string): never => {
    throw new RangeError(`layOutAirNetwork: path ${p} ${what}`);
  };
  if (!(to >= 0 && to < rooms) || !(from >= -1 && from < rooms)) refuse('ends in no room');
  if (to === from) refuse('leads from a room to itself');
  if (!(friction > 0 && inertia >= 0))
    refuse('must have friction above 0 and inertia of at least 0');
  if (!(side >= -1 && side < sides)) refuse('is on no side');
}

/** A hundredth at most, less than a thousandth as a rule: far below what is known of any crack. [-] */
const TOLERANCE = 0.01;
/** Of dry air at 20 °C. [kg/m3] */
export const USUAL_DENSITY = 1.204;
/** A hole of a square centimetre, discharge coefficient 0.6. */
const SEAM = {
  friction: 1,
  inertia: 1 / (2 * 0.6e-4 * 0.6e-4),
  height: 0,
  side: -1,
  always: true,
};
