import type { Commands } from '../control/observations.ts';
import { crossFlow } from '../physics/airflow/cross-flow.ts';
import type { Shell } from './air.ts';
import type { Model } from './model.ts';
import { DOOR, FRAME, OUTSIDE, ROOM } from './state-layout.ts';

/** Room to work in for `blowThrough`: one number a room, used at the first room of each joined group. */
export interface CrossVentilationWork {
  /** First room of the group that open doorways join a room to. */
  readonly joined: Int32Array;
  /** Windward direction of the group [deg]; its largest open window [m2]. */
  readonly facing: Float64Array;
  readonly widest: Float64Array;
  /** Open area on the windward side and on the others [m2]; narrowest open doorway [m2]. */
  readonly windward: Float64Array;
  readonly leeward: Float64Array;
  readonly between: Float64Array;
  /** What the windows exchange by themselves, and what blows through beyond that. [kg/s] */
  readonly alone: Float64Array;
  readonly through: Float64Array;
}

export function createCrossVentilationWork(rooms: number): CrossVentilationWork {
  const perRoom = (): Float64Array => new Float64Array(rooms);
  return {
    joined: new Int32Array(rooms),
    facing: perRoom(),
    widest: perRoom(),
    windward: perRoom(),
    leeward: perRoom(),
    between: perRoom(),
    alone: perRoom(),
    through: perRoom(),
  };
}

/**
 * Cross ventilation by wind through rooms that open doorways join, from windward windows to those on
 * other sides, where that exceeds the single-sided exchange of the same windows.
 *
 * Adds the inflow to the openings of the windward rooms and the outflow to that of the others;
 * `balanceFlows` routes the air between them.
 *
 * Where nobody knows the wind's direction, the side of the largest open window counts as windward.
 *
 * @returns whether any wind blows through
 */
export function crossVentilate(m: Model, shell: Shell, commands: Commands): boolean {
  const { work } = shell;
  const wind = m.outside[WIND]!;
  joinRooms(m, work, commands.doorways);
  measureOpenings(m, shell, commands);
  let blows = false;
  for (let i = 0; i < m.roomCount; i++) {
    const { windward, leeward, between, alone, through } = work;
    through[i] = 0;
    if (windward[i] === 0 || leeward[i] === 0) continue;
    const flow = crossFlow(windward[i]!, leeward[i]!, between[i]!, wind, PRESSURE_DIFFERENCE);
    through[i] = Math.max(0, m.density * flow - alone[i]!);
    if (through[i]! > 0) blows = true;
  }
  if (blows) spread(m, shell, commands);
  return blows;
}

/** Number the rooms that open doorways join by the first among them; note the narrowest doorway. */
function joinRooms(m: Model, work: CrossVentilationWork, open: Float64Array): void {
  const { frames, doors, doorCount, roomCount, rooms } = m;
  const { joined, widest, windward, leeward, between, alone } = work;
  for (let i = 0; i < roomCount; i++) {
    joined[i] = i;
    widest[i] = 0;
    windward[i] = 0;
    leeward[i] = 0;
    alone[i] = 0;
    between[i] = Number.POSITIVE_INFINITY;
  }
  for (let d = 0; d < doorCount; d++) {
    if (open[d]! < AJAR) continue;
    const a = rootOf(joined, frames[d * FRAME_STRIDE + A]!);
    const b = rootOf(joined, frames[d * FRAME_STRIDE + B]!);
    joined[Math.max(a, b)] = Math.min(a, b);
  }
  for (let i = 0; i < roomCount; i++) {
    const first = rootOf(joined, i);
    joined[i] = first;
    alone[first] = alone[first]! + rooms[i * ROOM_STRIDE + OPENING]!;
  }
  for (let d = 0; d < doorCount; d++) {
    const part = open[d]!;
    if (part < AJAR) continue;
    const first = joined[frames[d * FRAME_STRIDE + A]!]!;
    const door = d * DOOR_STRIDE;
    const area = part * doors[door + WIDTH]! * doors[door + HEIGHT]!;
    between[first] = Math.min(between[first]!, area);
  }
}

function rootOf(joined: Int32Array, room: number): number {
  let root = room;
  while (joined[root] !== root) root = joined[root]!;
  return root;
}

function measureOpenings(m: Model, shell: Shell, commands: Commands): void {
  const windFrom = m.outside[WIND_FROM]!;
  const { openings, openingRoom, openingArea, openingAzimuth, work } = shell;
  const { joined, facing, widest, windward, leeward } = work;
  for (let i = 0; i < m.roomCount; i++) facing[i] = windFrom;
  for (let o = 0; o < openings && Number.isNaN(windFrom); o++) {
    const first = joined[openingRoom[o]!]!;
    const area = commands.openings[o]! * openingArea[o]!;
    if (area <= widest[first]!) continue;
    widest[first] = area;
    facing[first] = openingAzimuth[o]!;
  }
  for (let o = 0; o < openings; o++) {
    const area = commands.openings[o]! * openingArea[o]!;
    if (area <= 0) continue;
    const first = joined[openingRoom[o]!]!;
    const side = faces(openingAzimuth[o]!, facing[first]!) ? windward : leeward;
    side[first] = side[first]! + area;
  }
}

/** Share what blows through among the windows it passes, by their area. */
function spread(m: Model, shell: Shell, commands: Commands): void {
  const { openings, openingRoom, openingArea, openingAzimuth, work } = shell;
  const { joined, facing, windward, leeward, through } = work;
  const { rooms } = m;
  for (let o = 0; o < openings; o++) {
    const area = commands.openings[o]! * openingArea[o]!;
    const first = joined[openingRoom[o]!]!;
    const flow = through[first]!;
    if (area <= 0 || flow === 0) continue;
    const r = openingRoom[o]! * ROOM_STRIDE;
    if (faces(openingAzimuth[o]!, facing[first]!)) {
      rooms[r + OPENING] = rooms[r + OPENING]! + (flow * area) / windward[first]!;
    } else {
      rooms[r + OPENING_OUT] = rooms[r + OPENING_OUT]! + (flow * area) / leeward[first]!;
    }
  }
}

/** Whether a window looks towards a direction, give or take 60 degrees. */
function faces(azimuth: number, direction: number): boolean {
  return Math.cos(((azimuth - direction) * Math.PI) / 180) > 0.5;
}

const { windSpeed: WIND, windFrom: WIND_FROM } = OUTSIDE;
const { opening: OPENING, openingOut: OPENING_OUT } = ROOM;
const { width: WIDTH, height: HEIGHT } = DOOR;
const { a: A, b: B } = FRAME;
const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;

/** A doorway less open than this does not let wind through. [-] */
const AJAR = 0.1;
/** Between windward and other sides of a sheltered house, as a pressure coefficient; common practice. [-] */
const PRESSURE_DIFFERENCE = 0.4;
