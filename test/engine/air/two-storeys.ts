import { setDensities, setDrives } from '../../../src/engine/air/air-drives.ts';
import { solvePressures } from '../../../src/engine/air/air-network.ts';
import { type AirNetwork, layOutAirNetwork } from '../../../src/engine/air/lay-out-air-network.ts';
import type { PathPlan } from '../../../src/engine/air/path-plan.ts';
import { type Side, setWind, windTable } from '../../../src/engine/air/wind-on-sides.ts';
import { PATH } from '../../../src/engine/layout/state-layout.ts';
import { crackFlow } from '../../../src/physics/airflow/crack-flow.ts';
import { quadraticLaw } from '../../../src/physics/airflow/quadratic-law.ts';
import { hole } from './a-network.ts';

/**
 * A house of 250 m3 and 8 air changes at 50 Pa: living room, kitchen and hall below, two bedrooms and a
 * bathroom above, joined by doors to the hall and by the stairs in it; a window in every room.
 */
export interface TwoStoreys {
  readonly net: AirNetwork;
  readonly table: Float64Array;
  /** Path of each room's window, in the order of the rooms. */
  readonly windows: readonly number[];
}

export function twoStoreys(tolerance?: number): TwoStoreys {
  const cracks = cracksOf(SHELL.map(({ part }) => part));
  const paths: PathPlan[] = cracks.map(({ part, share, height }) => {
    const { room, side } = SHELL[part]!;
    return { to: room, from: -1, height, side, always: true, ...crack(share) };
  });
  for (const [to, area, bottom] of DOORS) {
    const height = bottom + 1;
    paths.push({
      to,
      from: HALL,
      height,
      side: -1,
      always: true,
      ...hole(area),
    });
  }
  const windows = ROOMS.map((storey, to) => {
    const side = SHELL.find(({ room }) => room === to)!.side;
    const height = 1.5 + 2.5 * storey;
    return paths.push({ to, from: -1, height, side, always: false, ...hole(0.2) }) - 1;
  });
  const net = layOutAirNetwork(ROOMS.length, paths, SIDES.length, tolerance);
  return { net, table: windTable(SIDES), windows };
}

/** Weather, warmth and windows of a step, and its solution. */
export function solveStep(
  { net, table, windows }: TwoStoreys,
  weather: { outdoor: number; wind: number; windFrom: number },
  indoors: Float64Array,
  open: readonly number[],
  fan = 0,
): void {
  setDensities(net, indoors, 0, 1, weather.outdoor, 101_325);
  const degree = Math.floor(weather.windFrom) % 360;
  setWind(net, table, 0.6 * weather.wind, degree, weather.windFrom - Math.floor(weather.windFrom));
  setDrives(net);
  windows.forEach((path, room) => {
    net.paths[path * PATH.stride + PATH.open] = open.includes(room) ? 1 : 0;
  });
  net.given[BATH] = -fan;
  solvePressures(net);
}

/** Cracks by area; those of a wall at a quarter and at three quarters of its height. */
function cracksOf(parts: readonly (typeof SHELL)[number]['part'][]) {
  const whole = parts.reduce((sum, { area }) => sum + area, 0);
  return parts.flatMap(({ kind, area, bottom, height }, part) =>
    kind === 'roof'
      ? [{ part, share: area / whole, height: bottom }]
      : [0.25, 0.75].map((up) => ({ part, share: area / whole / 2, height: bottom + up * height })),
  );
}

/** Crack that passes a share of 8 x 250 m3/h at 50 Pa, exponent 0.65, per density of 1.204. */
function crack(share: number): { friction: number; inertia: number } {
  const c = (share * 8 * 250) / 3600 / 50 ** 0.65;
  const at = (pressure: number) => ({ pressure, flow: crackFlow(c, 0.65, pressure) });
  const { a, b } = quadraticLaw(at(1), at(10));
  return { friction: a, inertia: b / 1.204 };
}

/** Storey of living room, kitchen, hall, two bedrooms and bathroom. */
const ROOMS = [0, 0, 0, 1, 1, 1] as const;
const HALL = 2;
const BATH = 5;
const SIDES: readonly Side[] = [{ azimuth: 0 }, { azimuth: 180 }, { coefficient: -0.4 }];
const SHELL = [
  { room: 0, side: 1, area: 16, storey: 0 },
  { room: 1, side: 0, area: 10, storey: 0 },
  { room: 2, side: 0, area: 6, storey: 0 },
  { room: 3, side: 1, area: 12, storey: 1 },
  { room: 4, side: 0, area: 10, storey: 1 },
  { room: 5, side: 0, area: 6, storey: 1 },
  { room: 3, side: 2, area: 16, storey: 2 },
  { room: 4, side: 2, area: 14, storey: 2 },
].map(({ room, side, area, storey }) => {
  const kind = storey === 2 ? ('roof' as const) : ('wall' as const);
  return { room, side, part: { kind, area, bottom: 2.5 * storey, height: 2.5 } };
});
/** Room, area and floor of doors to the hall: open 1.6 m2, ajar 0.3, shut 0.01. */
const DOORS = [
  [0, 1.6, 0],
  [1, 1.6, 0],
  [3, 0.3, 2.5],
  [4, 0.01, 2.5],
  [5, 0.01, 2.5],
] as const;
