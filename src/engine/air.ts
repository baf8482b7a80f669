import type { Home } from '../home/home.ts';
import { doorwayExchange } from '../physics/airflow/doorway-exchange.ts';
import { type LeakageArea, leakageFlow } from '../physics/airflow/leakage-flow.ts';
import { singleSidedAiring } from '../physics/airflow/single-sided-airing.ts';

/**
 * How much air moves where during a step, as mass of dry air. [kg/s]
 *
 * Every flow out of a room is matched by flows into it, so a room's balance needs only what comes
 * in. `airBalance` adds up both sides all the same and the ledger reports the difference.
 */
export interface Air {
  /** Into each room from outdoors, by way: through leaks, through openings, through fans. */
  readonly leak: Float64Array;
  readonly opening: Float64Array;
  readonly fan: Float64Array;
  /** Out of each room to outdoors, all ways together. */
  readonly out: Float64Array;
  /** Through each doorway, from its first room to its second and back. */
  readonly forth: Float64Array;
  readonly back: Float64Array;
  /** Largest open share among each room's openings. [-] */
  readonly windowOpen: Float64Array;
  /** [0]: leakage of the whole home. [m3/s] */
  readonly infiltration: Float64Array;
}

export function createAir(home: Home): Air {
  const rooms = home.rooms.length;
  const doorways = home.doorways.length;
  return {
    leak: new Float64Array(rooms),
    opening: new Float64Array(rooms),
    fan: new Float64Array(rooms),
    out: new Float64Array(rooms),
    forth: new Float64Array(doorways),
    back: new Float64Array(doorways),
    windowOpen: new Float64Array(rooms),
    infiltration: new Float64Array(1),
  };
}

/** What of the home the flows depend on, flat. */
export interface AirPaths {
  readonly rooms: number;
  readonly doorways: number;
  readonly openings: number;
  readonly volume: Float64Array;
  readonly totalVolume: number;
  readonly share: Float64Array;
  readonly leakRate: number;
  readonly leakArea: LeakageArea;
  readonly openingRoom: Int32Array;
  readonly openingArea: Float64Array;
  readonly openingHeight: Float64Array;
  readonly doorA: Int32Array;
  readonly doorB: Int32Array;
  readonly doorWidth: Float64Array;
  readonly doorHeight: Float64Array;
  readonly doorMixing: Float64Array;
  readonly doorShut: Float64Array;
}

export function layOutAirPaths(home: Home): AirPaths {
  const { rooms, openings, doorways, leakage } = home;
  const { how } = leakage;
  return {
    rooms: rooms.length,
    doorways: doorways.length,
    openings: openings.length,
    volume: Float64Array.from(rooms, (r) => r.volume),
    totalVolume: rooms.reduce((sum, r) => sum + r.volume, 0),
    share: Float64Array.from(leakage.share),
    leakRate: how.by === 'rate' ? how.flow : 0,
    leakArea: how.by === 'area' ? how : { area: 0, stack: 0, wind: 0 },
    openingRoom: Int32Array.from(openings, (o) => o.room),
    openingArea: Float64Array.from(openings, (o) => o.area),
    openingHeight: Float64Array.from(openings, (o) => o.height),
    doorA: Int32Array.from(doorways, (d) => d.rooms[0]),
    doorB: Int32Array.from(doorways, (d) => d.rooms[1]),
    doorWidth: Float64Array.from(doorways, (d) => d.width),
    doorHeight: Float64Array.from(doorways, (d) => d.height),
    doorMixing: Float64Array.from(doorways, (d) => d.mixing),
    doorShut: Float64Array.from(doorways, (d) => d.shut),
  };
}

/**
 * Work out the flows of one step.
 *
 * @param temperature  of each room, guessed for the middle of the step [°C]
 * @param outdoor      outdoor temperature [°C]
 * @param wind         wind speed [m/s]
 * @param density      dry air in a cubic metre of room air [kg/m3]
 * @param open         share by which openings stand open, from `[openAt]` on
 * @param doors        share by which doorways stand open, from `[doorAt]` on
 */
export function moveAir(
  air: Air,
  paths: AirPaths,
  temperature: Float64Array,
  outdoor: number,
  wind: number,
  density: number,
  open: Float64Array,
  openAt: number,
  doors: Float64Array,
  doorAt: number,
): void {
  const { leak, opening, fan, out, forth, back, windowOpen, infiltration } = air;
  const { rooms, openings, doorways, volume, share } = paths;
  let indoor = 0;
  for (let i = 0; i < rooms; i++) indoor += volume[i]! * temperature[i]!;
  indoor /= paths.totalVolume;
  const leakage =
    paths.leakArea.area > 0 ? leakageFlow(paths.leakArea, indoor - outdoor, wind) : paths.leakRate;
  infiltration[0] = leakage;
  for (let i = 0; i < rooms; i++) {
    leak[i] = density * leakage * share[i]!;
    opening[i] = 0;
    windowOpen[i] = 0;
  }
  for (let o = 0; o < openings; o++) {
    const part = open[openAt + o]!;
    if (part <= 0) continue;
    const i = paths.openingRoom[o]!;
    const difference = Math.abs(temperature[i]! - outdoor);
    const area = part * paths.openingArea[o]!;
    opening[i] =
      opening[i]! + density * singleSidedAiring(area, paths.openingHeight[o]!, wind, difference);
    if (part > windowOpen[i]!) windowOpen[i] = part;
  }
  for (let d = 0; d < doorways; d++) {
    const part = doors[doorAt + d]!;
    let flow = paths.doorShut[d]!;
    if (part > 0) {
      const a = temperature[paths.doorA[d]!]!;
      const b = temperature[paths.doorB[d]!]!;
      const width = part * paths.doorWidth[d]!;
      const exchange = doorwayExchange(width, paths.doorHeight[d]!, Math.abs(a - b), 0.5 * (a + b));
      flow += Math.max(part * paths.doorMixing[d]!, exchange);
    }
    forth[d] = density * flow;
    back[d] = density * flow;
  }
  for (let i = 0; i < rooms; i++) out[i] = leak[i]! + opening[i]! + fan[i]!;
}

/**
 * Add what came in less what went out of each room, and what came in. [kg/s]
 *
 * @param net      receives in - out, added
 * @param through  receives in, added
 */
export function addAirBalance(
  air: Air,
  paths: AirPaths,
  net: Float64Array,
  through: Float64Array,
): void {
  const { leak, opening, fan, out, forth, back } = air;
  for (let i = 0; i < paths.rooms; i++) {
    const into = leak[i]! + opening[i]! + fan[i]!;
    net[i] = net[i]! + into - out[i]!;
    through[i] = through[i]! + into;
  }
  for (let d = 0; d < paths.doorways; d++) {
    const a = paths.doorA[d]!;
    const b = paths.doorB[d]!;
    net[a] = net[a]! + back[d]! - forth[d]!;
    net[b] = net[b]! + forth[d]! - back[d]!;
    through[a] = through[a]! + back[d]!;
    through[b] = through[b]! + forth[d]!;
  }
}
