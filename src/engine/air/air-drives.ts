import { GRAVITY } from '../../physics/airflow/gravity.ts';
import { DRY_AIR_GAS_CONSTANT, ZERO_CELSIUS } from '../../physics/moist-air/constants.ts';
import type { f64, i32 } from '../../units/portable.ts';
import { LINK, PATH } from '../layout/state-layout.ts';
import type { AirNetwork } from './lay-out-air-network.ts';

/**
 * Set how light the air outdoors and in each room is, as dry air: vapour in an ordinary room makes it
 * lighter by as much as a kelvin would.
 *
 * @param temperatures  one number a room, every `stride` from `first` on [°C]
 * @param outdoor       [°C]
 * @param pressure      of the air [Pa]
 */
export function setDensities(
  { roomCount, lightness, buoyancy }: AirNetwork,
  temperatures: Float64Array,
  first: i32,
  stride: i32,
  outdoor: number,
  pressure: number,
): void {
  const perKelvin: f64 = DRY_AIR_GAS_CONSTANT / pressure;
  const outside: f64 = perKelvin * (outdoor + ZERO_CELSIUS);
  lightness[roomCount] = outside;
  for (let i = 0; i < roomCount; i++) {
    const inside: f64 = perKelvin * (temperatures[first + i * stride]! + ZERO_CELSIUS);
    lightness[i] = inside;
    buoyancy[i] = GRAVITY * (1 / outside - 1 / inside);
  }
}

/** Pressure across every path by wind on its side and by the weight of the air on either side. */
export function setDrives({ pathCount, paths, links, buoyancy, sides }: AirNetwork): void {
  for (let p = 0; p < pathCount; p++) {
    const at = p * PATH_STRIDE;
    const side = links[p * LINK_STRIDE + SIDE]!;
    const from = links[p * LINK_STRIDE + FROM]!;
    if (from < 0 && side < 0) continue;
    const here = buoyancy[links[p * LINK_STRIDE + TO]!]! * paths[at + HEIGHT]!;
    const there = from < 0 ? sides[side]! : buoyancy[from]! * paths[at + HEIGHT]!;
    paths[at + DRIVE] = there - here;
  }
}

const { height: HEIGHT, drive: DRIVE, stride: PATH_STRIDE } = PATH;
const { to: TO, from: FROM, side: SIDE, stride: LINK_STRIDE } = LINK;
