import type { Commands } from '../../control/observations.ts';
import { doorwayExchange } from '../../physics/airflow/doorway-exchange.ts';
import { singleSidedAiring } from '../../physics/airflow/single-sided-airing.ts';
import type { f64, i32 } from '../../units/portable.ts';
import { AIR as HELD } from '../layout/lay-out-imposed.ts';
import type { Model } from '../layout/model.ts';
import { DOOR, FRAME, IMPOSED, LINK, OUTSIDE, PATH, ROOM } from '../layout/state-layout.ts';
import { setDensities, setDrives } from './air-drives.ts';
import { solvePressures } from './air-network.ts';
import { GAP, holeOf, type Shell, usualFlow } from './lay-out-shell.ts';
import { setWind } from './wind-on-sides.ts';

/**
 * Compute the dry-air mass flows of a step and assemble the flow matrix: the diagonal holds the total
 * inflow of a room, off-diagonal entries are minus the inflow from each other room. [kg/s]
 *
 * Pressures of the rooms give what passes every crack, window and doorway in one direction. Windows and
 * doorways also exchange air by themselves, in both directions at once; where one passes N that way and
 * would exchange S, then `max(N, S + N/2)` goes with N and N less of it against.
 *
 * Flows out of a room equal flows into it, so the balance of a room needs the inflows only; both
 * sides are summed independently and the ledger reports the difference.
 *
 * Source of the superposition: L. Palmiter and T. Bond, "Interaction of mechanical systems and natural
 * infiltration", 1991, from memory; integrating Bernoulli over the height of a doorway with a shifted
 * neutral level gives it within a tenth. EN 16798-7:2017 adds squares instead.
 *
 * @param commands open shares of windows and doorways
 */
export function moveAir(m: Model, shell: Shell, commands: Commands): void {
  const { network } = shell;
  const { outside } = m;
  const degree = Math.trunc(Math.max(0, Math.min(359, outside[WIND_FROM]!))) as i32;
  setDensities(network, m.rooms, GUESS, ROOM_STRIDE, outside[TEMPERATURE]!, m.pressure);
  const wind = shell.windRatio * outside[WIND]!;
  setWind(network, shell.wind, wind, degree, outside[WIND_FROM]! - degree);
  setDrives(network);
  const held = m.imposed.flags[HELD]!;
  if (held !== 0 || shell.replaced[0] !== 0) replaceLeaks(m, shell);
  shell.replaced[0] = held;
  openPaths(m, shell, commands);
  solvePressures(network);
  clearFlows(m);
  leak(m, shell);
  moveThroughWindows(m, shell, commands);
  moveThroughDoors(m, shell, commands.doorways);
  fillMatrix(m);
}

/** Shut the cracks of rooms on which outdoor air is imposed, and let that pass both ways instead. */
function replaceLeaks(
  { roomCount, imposed: { records } }: Model,
  { network: { paths, links }, cracks, steady, ownSteady, ownOpen }: Shell,
): void {
  const firstResort = cracks - roomCount;
  for (let p = 0; p < cracks; p++) {
    const given = records[links[p * LINK_STRIDE + TO]! * IMPOSED_STRIDE + OUTDOOR_AIR]!;
    const own = Number.isNaN(given);
    const last = p >= firstResort;
    const other: f64 = last ? 1 : 0;
    paths[p * PATH_STRIDE + OPEN] = own ? ownOpen[p]! : other;
    const air: f64 = last ? given : 0;
    steady[p] = own ? ownSteady[p]! : air;
  }
}

/** Set what windows and doorways let through, and what fans and flues take. */
function openPaths(m: Model, shell: Shell, commands: Commands): void {
  const { rooms, roomCount, doorCount, doors } = m;
  const { network, cracks, openings, openingLaw } = shell;
  const { paths, given } = network;
  for (let i = 0; i < roomCount; i++) {
    const r = i * ROOM_STRIDE;
    given[i] = rooms[r + FAN]! - rooms[r + EXTRACT]! - rooms[r + DRAUGHT]!;
  }
  for (let o = 0; o < openings; o++) {
    const at = (cracks + o) * PATH_STRIDE;
    const part = commands.openings[o]!;
    if (part > 0) {
      paths[at + FRICTION] = openingLaw[3 * o]! / part;
      paths[at + INERTIA] = openingLaw[3 * o + 1]! / (part * part);
      paths[at + USUAL] = openingLaw[3 * o + 2]! * part;
    }
    paths[at + OPEN] = part > 0 ? 1 : 0;
  }
  for (let d = 0; d < doorCount; d++) {
    const at = (cracks + openings + d) * PATH_STRIDE;
    const door = d * DOOR_STRIDE;
    const area = commands.doorways[d]! * doors[door + WIDTH]! * doors[door + HEIGHT]! + GAP;
    const whole = area * area;
    paths[at + INERTIA] = ONE_HOLE / whole;
    paths[at + FRICTION] = ONE_FRICTION / area;
    paths[at + USUAL] = ONE_USUAL * area;
  }
}

function clearFlows({ rooms, roomCount }: Model): void {
  for (let r = 0; r < roomCount * ROOM_STRIDE; r += ROOM_STRIDE) {
    rooms[r + LEAK] = 0;
    rooms[r + LEAK_OUT] = 0;
    rooms[r + OPENING] = 0;
    rooms[r + OPENING_OUT] = 0;
    rooms[r + WINDOW_OPEN] = 0;
  }
}

/** Book what passes cracks, and what comes in by them. */
function leak({ rooms, density, outside }: Model, { network, cracks, steady }: Shell): void {
  const { paths, links } = network;
  let all: f64 = 0;
  for (let p = 0; p < cracks; p++) {
    const r = links[p * LINK_STRIDE + TO]! * ROOM_STRIDE;
    const net = paths[p * PATH_STRIDE + FLOW]!;
    const size = Math.abs(net);
    const more = Math.max(size, density * steady[p]! + 0.5 * size);
    const into = net > 0 ? more : more - size;
    rooms[r + LEAK] = rooms[r + LEAK]! + into;
    rooms[r + LEAK_OUT] = rooms[r + LEAK_OUT]! + (net > 0 ? more - size : more);
    all += into;
  }
  outside[LEAKAGE] = all / density;
}

function moveThroughWindows(
  { rooms, density, outside }: Model,
  { network, cracks, openings, openingArea, openingHeight }: Shell,
  commands: Commands,
): void {
  const { paths, links } = network;
  for (let o = 0; o < openings; o++) {
    const part = commands.openings[o]!;
    if (part <= 0) continue;
    const p = cracks + o;
    const r = links[p * LINK_STRIDE + TO]! * ROOM_STRIDE;
    const warmer = rooms[r + GUESS]! - outside[TEMPERATURE]!;
    const alone = singleSidedAiring(
      part * openingArea[o]!,
      openingHeight[o]!,
      outside[WIND]!,
      warmer,
    );
    const net = paths[p * PATH_STRIDE + FLOW]!;
    const size = Math.abs(net);
    const more = Math.max(size, density * alone + 0.5 * size);
    rooms[r + OPENING] = rooms[r + OPENING]! + (net > 0 ? more : more - size);
    rooms[r + OPENING_OUT] = rooms[r + OPENING_OUT]! + (net > 0 ? more - size : more);
    rooms[r + WINDOW_OPEN] = Math.max(rooms[r + WINDOW_OPEN]!, commands.openTimes[o]!);
  }
}

function moveThroughDoors(m: Model, shell: Shell, open: Float64Array): void {
  const { rooms, doors, frames, doorCount, density } = m;
  const { paths } = shell.network;
  const first = shell.cracks + shell.openings;
  for (let d = 0; d < doorCount; d++) {
    const door = d * DOOR_STRIDE;
    const frame = d * FRAME_STRIDE;
    const part = open[d]!;
    let alone = doors[door + SHUT]!;
    if (part > 0) {
      const a = rooms[frames[frame + A]! * ROOM_STRIDE + GUESS]!;
      const b = rooms[frames[frame + B]! * ROOM_STRIDE + GUESS]!;
      const width = part * doors[door + WIDTH]!;
      const exchange = doorwayExchange(width, doors[door + HEIGHT]!, a - b, 0.5 * (a + b));
      const least = part * doors[door + MIXING]!;
      alone += Math.max(exchange, least);
    }
    const net = paths[(first + d) * PATH_STRIDE + FLOW]!;
    const size = Math.abs(net);
    const more = Math.max(size, density * alone + 0.5 * size);
    doors[door + FORTH] = net > 0 ? more : more - size;
    doors[door + BACK] = net > 0 ? more - size : more;
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
  const { diagonal, size } = elimination;
  for (let k = 0; k < size; k++) flow[k] = 0;
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

const { guess: GUESS, leak: LEAK, opening: OPENING } = ROOM;
const { fan: FAN, extract: EXTRACT, exchange: EXCHANGE, windowOpen: WINDOW_OPEN } = ROOM;
const { leakOut: LEAK_OUT, openingOut: OPENING_OUT, draught: DRAUGHT } = ROOM;
const { airNet: AIR_NET, airThrough: AIR_THROUGH } = ROOM;
const { width: WIDTH, height: HEIGHT, mixing: MIXING, shut: SHUT, forth: FORTH, back: BACK } = DOOR;
const { a: A, b: B, ab: AB, ba: BA } = FRAME;

const ROOM_STRIDE = ROOM.stride;
const DOOR_STRIDE = DOOR.stride;
const FRAME_STRIDE = FRAME.stride;
const { friction: FRICTION, inertia: INERTIA, usual: USUAL, flow: FLOW, open: OPEN } = PATH;
const {
  temperature: TEMPERATURE,
  windSpeed: WIND,
  windFrom: WIND_FROM,
  leakage: LEAKAGE,
} = OUTSIDE;
const { to: TO, stride: LINK_STRIDE } = LINK;
const { outdoorAir: OUTDOOR_AIR, stride: IMPOSED_STRIDE } = IMPOSED;
const PATH_STRIDE = PATH.stride;

/** Law of a hole of a square metre. */
const { inertia: ONE_HOLE, friction: ONE_FRICTION } = holeOf(1);
const ONE_USUAL = usualFlow(holeOf(1));
