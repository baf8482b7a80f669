import type { Home, Pane } from '../../home/home.ts';
import type { Facing, Sky } from './sky.ts';

/**
 * Sunshine on every plane of the home and through its glass, once per interval of the sun's series.
 *
 * The sun stands where it stands in the middle of the interval; within the interval the irradiance
 * is even. With hourly weather that moves gains by at most half an hour.
 */
export interface Sunlight {
  /** Irradiance on each plane, one value per interval. [W/m2] */
  readonly on: readonly Float64Array[];
  /** Gain of each room through its panes without blinds, `[interval * rooms + room]`. [W] */
  readonly gain: Float64Array;
  /** Irradiance on the pane of each blind, `[interval * blinds + blind]`. [W/m2] */
  readonly onBlinds: Float64Array;
  /** Gain through the pane of each blind while it is open, laid out alike. [W] */
  readonly throughBlinds: Float64Array;
}

export function layOutSunlight(home: Home, sky: Sky, planes: readonly Facing[]): Sunlight {
  const gain = new Float64Array(sky.series.count * home.rooms.length);
  for (const group of groupPanes(home)) addGains(gain, home.rooms.length, sky, group);
  return { on: planes.map(sky.onPlane), gain, ...layOutBlindSun(home, sky) };
}

function layOutBlindSun({ panes, blinds = [] }: Home, sky: Sky) {
  const across = blinds.length;
  const onBlinds = new Float64Array(sky.series.count * across);
  const throughBlinds = new Float64Array(sky.series.count * across);
  blinds.forEach((blind, b) => {
    const pane = panes[blind.pane]!;
    const on = sky.onPlane(pane);
    const through = sky.throughGlass(pane);
    const admitted = admits(pane);
    for (let k = 0; k < on.length; k++) {
      onBlinds[k * across + b] = on[k]!;
      throughBlinds[k * across + b] = admitted * through[k]!;
    }
  });
  return { onBlinds, throughBlinds };
}

/** Sunshine at right angles that a pane lets in. [m2] */
const admits = ({ area, frameShare, gValue, unshaded }: Pane): number =>
  area * (1 - frameShare) * gValue * unshaded;

/** Add what panes that look the same way let into the rooms behind them. [W] */
function addGains(gain: Float64Array, rooms: number, sky: Sky, group: PaneGroup): void {
  const { behind, admits: shares } = group;
  const through = sky.throughGlass(group);
  for (let k = 0; k < through.length; k++) {
    const irradiance = through[k]!;
    if (irradiance === 0) continue;
    for (let q = 0; q < behind.length; q++) {
      const at = k * rooms + behind[q]!;
      gain[at] = gain[at]! + shares[q]! * irradiance;
    }
  }
}

/** Panes that look the same way, with the rooms behind them and what each admits. [m2] */
interface PaneGroup extends Facing {
  readonly behind: number[];
  readonly admits: number[];
}

function groupPanes({ panes, blinds = [] }: Home): PaneGroup[] {
  const groups = new Map<string, PaneGroup>();
  const blinded = new Set(blinds.map(({ pane }) => pane));
  for (const [index, pane] of panes.entries()) {
    if (blinded.has(index)) continue;
    const { azimuth, tilt, room } = pane;
    const key = `${azimuth}/${tilt}`;
    const group = groups.get(key) ?? { azimuth, tilt, behind: [], admits: [] };
    groups.set(key, group);
    const admitted = admits(pane);
    const known = group.behind.indexOf(room);
    if (known >= 0) group.admits[known]! += admitted;
    else {
      group.behind.push(room);
      group.admits.push(admitted);
    }
  }
  return [...groups.values()];
}
