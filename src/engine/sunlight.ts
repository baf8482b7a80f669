import type { Home } from '../home/home.ts';
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
  /** Gain of each room through its panes, `[interval * rooms + room]`. [W] */
  readonly gain: Float64Array;
}

export function layOutSunlight(home: Home, sky: Sky, planes: readonly Facing[]): Sunlight {
  const gain = new Float64Array(sky.series.count * home.rooms.length);
  for (const group of groupPanes(home)) addGains(gain, home.rooms.length, sky, group);
  return { on: planes.map(sky.onPlane), gain };
}

/** Add what panes that look the same way let into the rooms behind them. [W] */
function addGains(gain: Float64Array, rooms: number, sky: Sky, group: PaneGroup): void {
  const { behind, admits } = group;
  const through = sky.throughGlass(group);
  for (let k = 0; k < through.length; k++) {
    const irradiance = through[k]!;
    if (irradiance === 0) continue;
    for (let q = 0; q < behind.length; q++) {
      const at = k * rooms + behind[q]!;
      gain[at] = gain[at]! + admits[q]! * irradiance;
    }
  }
}

/** Panes that look the same way, with the rooms behind them and what each admits. [m2] */
interface PaneGroup extends Facing {
  readonly behind: number[];
  readonly admits: number[];
}

function groupPanes({ panes }: Home): PaneGroup[] {
  const groups = new Map<string, PaneGroup>();
  for (const { azimuth, tilt, room, area, frameShare, gValue, unshaded } of panes) {
    const key = `${azimuth}/${tilt}`;
    const group = groups.get(key) ?? { azimuth, tilt, behind: [], admits: [] };
    groups.set(key, group);
    const admits = area * (1 - frameShare) * gValue * unshaded;
    const known = group.behind.indexOf(room);
    if (known >= 0) group.admits[known]! += admits;
    else {
      group.behind.push(room);
      group.admits.push(admits);
    }
  }
  return [...groups.values()];
}
