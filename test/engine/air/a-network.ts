import { setDensities, setDrives } from '../../../src/engine/air/air-drives.ts';
import { solvePressures } from '../../../src/engine/air/air-network.ts';
import { type AirNetwork, layOutAirNetwork } from '../../../src/engine/air/lay-out-air-network.ts';
import type { PathPlan } from '../../../src/engine/air/path-plan.ts';
import { LINK, PATH } from '../../../src/engine/layout/state-layout.ts';

/** A path of a test: crack or hole at a height, with the pressure that wind puts on its outer side. */
export interface Way {
  readonly to: number;
  readonly from?: number;
  readonly height?: number;
  /** [Pa] */
  readonly wind?: number;
  readonly law: { readonly friction: number; readonly inertia: number };
}

/** Hole of an area, discharge coefficient 0.6, straight below about a millionth of a pascal. */
export function hole(area: number): Way['law'] {
  const inertia = 1 / (2 * (0.6 * area) ** 2);
  return { friction: Math.sqrt(1e-6 * inertia), inertia };
}

/** Law that has the flow and the slope of `C dp^n` at a pressure, for air of a density. */
export function touching(c: number, n: number, pressure: number, density: number): Way['law'] {
  const size = Math.abs(pressure);
  const flow = c * size ** n;
  const friction = (size / flow) * Math.max(LEAST, 2 - 1 / n);
  return { friction, inertia: (size * (1 / n - 1)) / flow ** 2 / density };
}

interface Given {
  /** By fans, into each room. [kg/s] */
  readonly given?: readonly number[];
  readonly tolerance?: number;
  /** One density for all air that passes, whatever its warmth. [kg/m3] */
  readonly passing?: number;
}

/** Solve a network at given temperatures. [°C] */
export function solved(
  ways: readonly Way[],
  indoors: readonly number[],
  outdoors: number,
  { given = [], tolerance = 1e-9, passing }: Given = {},
): AirNetwork {
  const plans = ways.map(
    ({ to, from = -1, height = 0, law }, side): PathPlan => ({
      ...{ to, from, height, side: from < 0 ? side : -1, always: true, ...law },
    }),
  );
  const net = layOutAirNetwork(indoors.length, plans, ways.length, tolerance);
  ways.forEach(({ wind = 0 }, side) => {
    net.sides[side] = wind;
  });
  given.forEach((flow, room) => {
    net.given[room] = flow;
  });
  setDensities(net, Float64Array.from(indoors), 0, 1, outdoors, 101_325);
  setDrives(net);
  if (passing !== undefined) net.lightness.fill(1 / passing);
  solvePressures(net);
  return net;
}

/** Mass flow of a path towards its room. [kg/s] */
export const flowOf = (net: AirNetwork, path: number): number =>
  net.paths[path * PATH.stride + PATH.flow]!;

/** Air that comes into a room less what leaves it. [kg/s] */
export function leftIn(net: AirNetwork, room: number): number {
  let left = net.given[room]!;
  for (let p = 0; p < net.pathCount; p++) {
    if (net.links[p * LINK.stride + LINK.to] === room) left += flowOf(net, p);
    if (net.links[p * LINK.stride + LINK.from] === room) left -= flowOf(net, p);
  }
  return left;
}

/** Dry air at normal pressure. [kg/m3] */
export const densityAt = (temperature: number): number =>
  101_325 / (287.042 * (temperature + 273.15));

/** No path is without friction, not even one of exponent 0.5. [-] */
const LEAST = 1e-6;
