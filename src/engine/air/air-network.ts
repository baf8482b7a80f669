import type { f64, i32 } from '../../units/portable.ts';
import { LINK, PATH, PRESSURE_COUNT } from '../layout/state-layout.ts';
import { solveSparse } from '../numerics/sparse.ts';
import type { AirNetwork } from './lay-out-air-network.ts';

/**
 * Solve the pressures of all rooms, and the flow of every path with them.
 *
 * Newton's method on flows and pressures together: each path is a straight line about the flow that it
 * has, all rooms balance exactly on those lines, and the flows found are those of the next lines. It
 * needs no root, and it converges from anywhere, because a law of this kind grows with the flow and
 * bends one way; where an error does not fall, the next lines are drawn halfway. A step begins
 * from the flows of the one before. The flows left are those of the last system, so that as much air
 * enters each room as leaves it.
 *
 * Source: E. Todini and S. Pilati, "A gradient algorithm for the analysis of pipe networks", 1988, from
 * memory.
 */
export function solvePressures(net: AirNetwork): void {
  const { counts, elimination, matrix, rhs, pressure, tolerance } = net;
  let before = Number.POSITIVE_INFINITY;
  let solved: f64 = 0;
  while (solved < MOST) {
    assemble(net);
    solveSparse(elimination, matrix, rhs, pressure);
    solved += 1;
    findFlows(net);
    const error = counts[ERROR]!;
    if (error <= tolerance) break;
    takeFlows(net, error < before ? 1 : HALF);
    before = error;
  }
  takeFlows(net, 1);
  closeBalances(net);
  counts[STEPS] = counts[STEPS]! + 1;
  counts[SOLVED] = counts[SOLVED]! + solved;
  if (solved > 1) counts[AGAIN] = counts[AGAIN]! + 1;
  if (counts[ERROR]! > tolerance) counts[UNSETTLED] = counts[UNSETTLED]! + 1;
}

/** Straight lines about the flows that paths have, and the balance of every room on them. */
function assemble(net: AirNetwork): void {
  const { roomCount, pathCount, paths, links, given, elimination, matrix, rhs, outlets } = net;
  const { diagonal, size } = elimination;
  for (let k = 0; k < size; k++) matrix[k] = 0;
  for (let i = 0; i < roomCount; i++) {
    rhs[i] = given[i]!;
    outlets[i] = 0;
  }
  for (let p = 0; p < pathCount; p++) {
    if (paths[p * PATH_STRIDE + OPEN] === 0) {
      paths[p * PATH_STRIDE + FLOW] = 0;
      continue;
    }
    drawLine(net, p);
    const slope = paths[p * PATH_STRIDE + SLOPE]!;
    const fixed = paths[p * PATH_STRIDE + FIXED]!;
    const to = links[p * LINK_STRIDE + TO]!;
    const from = links[p * LINK_STRIDE + FROM]!;
    const own = diagonal[to]!;
    matrix[own] = matrix[own]! + slope;
    rhs[to] = rhs[to]! + fixed;
    outlets[to] = outlets[to]! + slope;
    if (from < 0) continue;
    const other = diagonal[from]!;
    const toFrom = links[p * LINK_STRIDE + TO_FROM]!;
    const fromTo = links[p * LINK_STRIDE + FROM_TO]!;
    matrix[other] = matrix[other]! + slope;
    matrix[toFrom] = matrix[toFrom]! - slope;
    matrix[fromTo] = matrix[fromTo]! - slope;
    rhs[from] = rhs[from]! - fixed;
    outlets[from] = outlets[from]! + slope;
  }
}

/**
 * The straight line of a path about its flow. One without any flow, new or just opened, gets the chord
 * to a pascal, because the tangent at rest lets far too much through.
 */
function drawLine({ roomCount, paths, links, lightness }: AirNetwork, p: i32): void {
  const at = p * PATH_STRIDE;
  const from = links[p * LINK_STRIDE + FROM]!;
  const flow = paths[at + FLOW]!;
  const source = flow < 0 ? links[p * LINK_STRIDE + TO]! : from < 0 ? roomCount : from;
  const friction = paths[at + FRICTION]! * lightness[source]!;
  const inertia = paths[at + INERTIA]! * lightness[source]!;
  const drop = inertia * Math.abs(flow);
  const slope = 1 / (friction + (flow === 0 ? inertia * paths[at + USUAL]! : 2 * drop));
  paths[at + SLOPE] = slope;
  paths[at + FIXED] = flow + slope * (paths[at + DRIVE]! - (friction + drop) * flow);
}

/**
 * Find the flows on the lines, and their error: over all air that comes in from outdoors or by fans, or
 * that of the pressure across a path, over ten pascals, where that is more.
 *
 * Each law bends away from its line by some pressure. That pressure drives no more through the home than
 * the path lets through, nor than its rooms have other outlets for: a wide doorway's does nothing. So
 * no flow is further off than this says.
 */
function findFlows(net: AirNetwork): void {
  const { roomCount, pathCount, paths, links, given, lightness, pressure, outlets, counts } = net;
  let astray: f64 = 0;
  let worst: f64 = 0;
  let into = LEAST;
  for (let i = 0; i < roomCount; i++) into += Math.abs(given[i]!);
  for (let p = 0; p < pathCount; p++) {
    const at = p * PATH_STRIDE;
    if (paths[at + OPEN] === 0) continue;
    const from = links[p * LINK_STRIDE + FROM]!;
    const before = paths[at + FLOW]!;
    const here = pressure[links[p * LINK_STRIDE + TO]!]!;
    const across = from < 0 ? -here : pressure[from]! - here;
    const slope = paths[at + SLOPE]!;
    const flow = paths[at + FIXED]! + slope * across;
    paths[at + FOUND] = flow;
    const change = Math.abs(flow - before);
    const chord = before === 0 ? paths[at + USUAL]! : 0.0;
    let bend = paths[at + INERTIA]! * lightness[roomCount]! * change * (change + chord);
    // Air from the other end is lighter or heavier, by a tenth at most in a home.
    if (flow * before < 0) bend += (LIGHTER * Math.abs(flow)) / slope;
    let outlet = Math.min(slope, outlets[links[p * LINK_STRIDE + TO]!]! - slope);
    if (from >= 0) outlet = Math.min(outlet, outlets[from]! - slope);
    else into += Math.max(0, flow);
    astray += bend * Math.max(0, outlet);
    worst = Math.max(worst, bend);
  }
  counts[ERROR] = Math.max(astray / into, worst / GALE);
}

/** Take over the flows just found, or part of the way to them. */
function takeFlows({ pathCount, paths }: AirNetwork, part: number): void {
  for (let p = 0; p < pathCount; p++) {
    const at = p * PATH_STRIDE;
    if (paths[at + OPEN] === 0) continue;
    const flow = paths[at + FLOW]!;
    paths[at + FLOW] = flow + part * (paths[at + FOUND]! - flow);
  }
}

/** Send what rounding left over in each room outdoors along its route. */
function closeBalances(net: AirNetwork): void {
  const { roomCount, pathCount, paths, links, given, rhs, routeOrder, routePath } = net;
  for (let i = 0; i < roomCount; i++) rhs[i] = given[i]!;
  for (let p = 0; p < pathCount; p++) {
    const flow = paths[p * PATH_STRIDE + FLOW]!;
    const to = links[p * LINK_STRIDE + TO]!;
    const from = links[p * LINK_STRIDE + FROM]!;
    rhs[to] = rhs[to]! + flow;
    if (from >= 0) rhs[from] = rhs[from]! - flow;
  }
  for (let k = 0; k < roomCount; k++) {
    const room = routeOrder[k]!;
    const p = routePath[room]!;
    const left = rhs[room]!;
    const to = links[p * LINK_STRIDE + TO]!;
    const flow = paths[p * PATH_STRIDE + FLOW]!;
    paths[p * PATH_STRIDE + FLOW] = to === room ? flow - left : flow + left;
    const next = to === room ? links[p * LINK_STRIDE + FROM]! : to;
    if (next >= 0) rhs[next] = rhs[next]! + left;
  }
}

const { friction: FRICTION, inertia: INERTIA, usual: USUAL, open: OPEN, drive: DRIVE } = PATH;
const { flow: FLOW, fixed: FIXED, slope: SLOPE, found: FOUND, stride: PATH_STRIDE } = PATH;
const { to: TO, from: FROM, toFrom: TO_FROM, fromTo: FROM_TO, stride: LINK_STRIDE } = LINK;
const { steps: STEPS, solved: SOLVED, again: AGAIN, unsettled: UNSETTLED } = PRESSURE_COUNT;
const { error: ERROR } = PRESSURE_COUNT;

/** Systems solved in a step at most. */
const MOST = 60;
const HALF = 0.5;
const LIGHTER = 0.1;
/** Pressures of a windy day, beside which an error of a pressure is small or not. [Pa] */
const GALE = 10;
/** Of the air that comes in, so that a home in which nothing moves has no error. [kg/s] */
const LEAST = 1e-4;
