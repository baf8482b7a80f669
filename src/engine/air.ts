import type { Commands } from '../control/observations.ts';
import type { Home } from '../home/home.ts';
import { doorwayExchange } from '../physics/airflow/doorway-exchange.ts';
import { type LeakageArea, leakageFlow } from '../physics/airflow/leakage-flow.ts';
import { singleSidedAiring } from '../physics/airflow/single-sided-airing.ts';
import { imposeAir } from './hold-rooms.ts';
import { AIR as HELD } from './lay-out-imposed.ts';
import type { Model } from './model.ts';
import { DOOR, FRAME, OUTSIDE, ROOM } from './state-layout.ts';
import { balanceFlows, partsOfHome } from './through-flow.ts';
import {
  type CrossVentilationWork,
  createCrossVentilationWork,
  crossVentilate,
} from './wind-through-home.ts';

/** How air gets in and out of a home, apart from its doorways. */
export interface Shell {
  readonly totalVolume: number;
  /** Constant leakage flow [m3/s]; used where the area is 0. */
  readonly rate: number;
  readonly leaks: LeakageArea;
  readonly openings: number;
  readonly openingRoom: Int32Array;
  readonly openingArea: Float64Array;
  readonly openingHeight: Float64Array;
  readonly openingAzimuth: Float64Array;
  /** Connected parts of the home, as `partsOfHome` numbers them. */
  readonly parts: Int32Array;
  readonly work: CrossVentilationWork;
}

export function layOutShell({ rooms, openings, doorways, leakage: { how } }: Home): Shell {
  return {
    totalVolume: rooms.reduce((sum, r) => sum + r.volume, 0),
    rate: how.by === 'rate' ? how.flow : 0,
    leaks: how.by === 'area' ? how : { area: 0, stack: 0, wind: 0 },
    openings: openings.length,
    openingRoom: Int32Array.from(openings, (o) => o.room),
    openingArea: Float64Array.from(openings, (o) => o.area),
    openingHeight: Float64Array.from(openings, (o) => o.height),
    openingAzimuth: Float64Array.from(openings, (o) => o.azimuth),
    parts: partsOfHome(
      rooms.length,
      doorways.map((d) => d.rooms),
    ),
    work: createCrossVentilationWork(rooms.length),
  };
}

/**
 * Compute the dry-air mass flows of a step and assemble the flow matrix: the diagonal holds the total
 * inflow of a room, off-diagonal entries are minus the inflow from each other room. [kg/s]
 *
 * Flows out of a room equal flows into it, so the balance of a room needs the inflows only; both
 * sides are summed independently and the ledger reports the difference.
 *
 * @param commands open shares of windows and doorways
 */
export function moveAir(m: Model, shell: Shell, commands: Commands): void {
  const { rooms, roomCount, density, outside } = m;
  const wind = outside[WIND]!;
  let indoor = 0;
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    indoor += rooms[r + VOLUME]! * rooms[r + GUESS]!;
  }
  const warmer = indoor / shell.totalVolume - outside[OUTDOOR]!;
  let oneSided = false;
  let windows = 0;
  const leakage = shell.leaks.area > 0 ? leakageFlow(shell.leaks, warmer, wind) : shell.rate;
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + LEAK] = density * leakage * rooms[r + LEAK_SHARE]!;
    rooms[r + LEAK_OUT] = rooms[r + LEAK]!;
    rooms[r + OPENING] = 0;
    rooms[r + OPENING_OUT] = 0;
    rooms[r + WINDOW_OPEN] = 0;
    if (rooms[r + EXTRACT] !== 0 || rooms[r + DRAUGHT] !== 0 || rooms[r + FAN] !== 0) {
      oneSided = true;
    }
  }
  for (let o = 0; o < shell.openings; o++) {
    const part = commands.openings[o]!;
    if (part <= 0) continue;
    openWindow(m, shell, o, part);
    const r = shell.openingRoom[o]! * ROOM_STRIDE;
    rooms[r + WINDOW_OPEN] = Math.max(rooms[r + WINDOW_OPEN]!, commands.openTimes[o]!);
    windows++;
  }
  moveThroughDoors(m, commands.doorways);
  if (windows > 1 && crossVentilate(m, shell, commands)) oneSided = true;
  if (oneSided) balanceFlows(m, shell.parts, commands.doorways);
  outside[LEAKAGE] = m.imposed.flags[HELD] === 1 ? imposeAir(m, leakage) : leakage;
  fillMatrix(m);
}

function openWindow(
  { rooms, density, outside }: Model,
  { openingRoom, openingArea, openingHeight }: Shell,
  o: number,
  part: number,
): void {
  const r = openingRoom[o]! * ROOM_STRIDE;
  const warmer = rooms[r + GUESS]! - outside[OUTDOOR]!;
  const area = part * openingArea[o]!;
  const flow = singleSidedAiring(area, openingHeight[o]!, outside[WIND]!, warmer);
  rooms[r + OPENING] = rooms[r + OPENING]! + density * flow;
  rooms[r + OPENING_OUT] = rooms[r + OPENING_OUT]! + density * flow;
}

function moveThroughDoors(
  { rooms, doors, frames, doorCount, density }: Model,
  open: Float64Array,
): void {
  for (let d = 0; d < doorCount; d++) {
    const door = d * DOOR_STRIDE;
    const frame = d * FRAME_STRIDE;
    const part = open[d]!;
    let flow = doors[door + SHUT]!;
    if (part > 0) {
      const a = rooms[frames[frame + A]! * ROOM_STRIDE + GUESS]!;
      const b = rooms[frames[frame + B]! * ROOM_STRIDE + GUESS]!;
      const width = part * doors[door + WIDTH]!;
      const exchange = doorwayExchange(width, doors[door + HEIGHT]!, a - b, 0.5 * (a + b));
      const least = part * doors[door + MIXING]!;
      flow += Math.max(exchange, least);
    }
    doors[door + FORTH] = density * flow;
    doors[door + BACK] = density * flow;
  }
}

/** Assemble the matrix of dry-air flows; entries of doorways that join the same rooms add up. [kg/s] */
function fillMatrix({
  rooms,
  roomCount,
  doors,
  frames,
  doorCount,
  flow,
  elimination,
}: Model): void {
  const { diagonal } = elimination;
  for (let k = 0; k < flow.length; k++) flow[k] = 0;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    const outdoors = rooms[r + LEAK]! + rooms[r + OPENING]!;
    rooms[r + EXCHANGE] = outdoors;
    flow[diagonal[i]!] = outdoors + rooms[r + FAN]!;
  }
  for (let d = 0; d < doorCount; d++) {
    const frame = d * FRAME_STRIDE;
    const toA = doors[d * DOOR_STRIDE + BACK]!;
    const toB = doors[d * DOOR_STRIDE + FORTH]!;
    const a = frames[frame + A]!;
    const b = frames[frame + B]!;
    const ab = frames[frame + AB]!;
    const ba = frames[frame + BA]!;
    const aa = diagonal[a]!;
    const bb = diagonal[b]!;
    flow[aa] = flow[aa]! + toA;
    flow[bb] = flow[bb]! + toB;
    flow[ab] = flow[ab]! - toA;
    flow[ba] = flow[ba]! - toB;
  }
}

/** Add the step's air into and out of each room to the sums that the air balance is checked by. [kg] */
export function settleAir({ rooms, roomCount, doors, frames, doorCount, dt }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    const into = rooms[r + EXCHANGE]! + rooms[r + FAN]!;
    const leaves =
      rooms[r + LEAK_OUT]! + rooms[r + OPENING_OUT]! + rooms[r + EXTRACT]! + rooms[r + DRAUGHT]!;
    rooms[r + AIR_NET] = rooms[r + AIR_NET]! + (into - leaves) * dt;
    rooms[r + AIR_THROUGH] = rooms[r + AIR_THROUGH]! + into * dt;
  }
  for (let d = 0; d < doorCount; d++) {
    const frame = d * FRAME_STRIDE;
    const a = frames[frame + A]! * ROOM_STRIDE;
    const b = frames[frame + B]! * ROOM_STRIDE;
    const toA = doors[d * DOOR_STRIDE + BACK]! * dt;
    const toB = doors[d * DOOR_STRIDE + FORTH]! * dt;
    rooms[a + AIR_NET] = rooms[a + AIR_NET]! + toA - toB;
    rooms[b + AIR_NET] = rooms[b + AIR_NET]! + toB - toA;
    rooms[a + AIR_THROUGH] = rooms[a + AIR_THROUGH]! + toA;
    rooms[b + AIR_THROUGH] = rooms[b + AIR_THROUGH]! + toB;
  }
}

const { temperature: OUTDOOR, windSpeed: WIND, leakage: LEAKAGE } = OUTSIDE;
const { volume: VOLUME, guess: GUESS, leakShare: LEAK_SHARE, leak: LEAK, opening: OPENING } = ROOM;
const { fan: FAN, extract: EXTRACT, exchange: EXCHANGE, windowOpen: WINDOW_OPEN } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, draught: DRAUGHT } = ROOM;
const { airNet: AIR_NET, airThrough: AIR_THROUGH } = ROOM;
const { width: WIDTH, height: HEIGHT, mixing: MIXING, shut: SHUT, forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B, ab: AB, ba: BA } = FRAME;

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
