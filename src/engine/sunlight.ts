import type { Home } from '../home/home.ts';
import { incidenceCosine } from '../physics/sun/incidence-cosine.ts';
import {
  DIFFUSE_INCIDENCE_MODIFIER,
  incidenceModifier,
} from '../physics/sun/incidence-modifier.ts';
import { sunPosition } from '../physics/sun/sun-position.ts';
import { diffuseOnPlane, directOnPlane } from '../physics/sun/tilted-irradiance.ts';
import type { SunSeries } from './sun-series.ts';

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

/** A plane by where it looks. [deg] */
export interface Facing {
  readonly azimuth: number;
  readonly tilt: number;
}

export function layOutSunlight(home: Home, series: SunSeries, planes: readonly Facing[]): Sunlight {
  const sky = layOutSky(home, series);
  const gain = new Float64Array(series.count * home.rooms.length);
  for (const group of groupPanes(home)) addGains(gain, home.rooms.length, sky, group);
  return { on: planes.map((plane) => onPlane(sky, plane)), gain };
}

/** The sun and what comes of it on the flat, one value per interval; dark intervals have 0 everywhere. */
interface Sky {
  readonly count: number;
  /** [deg] */
  readonly elevation: Float64Array;
  readonly azimuth: Float64Array;
  /** [W/m2] */
  readonly directNormal: Float64Array;
  readonly diffuse: Float64Array;
  readonly onFlat: Float64Array;
  /** Albedo of the ground, by interval. [-] */
  readonly albedo: number;
}

function layOutSky({ site }: Home, series: SunSeries): Sky {
  const { count, start, step, directNormal, diffuseHorizontal } = series;
  const elevation = new Float64Array(count);
  const azimuth = new Float64Array(count);
  const onFlat = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    const direct = directNormal[k]!;
    const diffuse = diffuseHorizontal[k]!;
    if (diffuse <= 0 && direct <= 0) continue;
    const sun = sunPosition(start + (k + 0.5) * step, site.latitude, site.longitude);
    elevation[k] = sun.elevation;
    azimuth[k] = sun.azimuth;
    const cosine = incidenceCosine(sun.elevation, sun.azimuth, 0, 0);
    onFlat[k] = diffuse + directOnPlane(direct, sun.elevation, cosine);
  }
  const { albedo } = site;
  return { count, elevation, azimuth, directNormal, diffuse: diffuseHorizontal, onFlat, albedo };
}

/** Irradiance on a plane, one value per interval. [W/m2] */
function onPlane(sky: Sky, { tilt, azimuth: facing }: Facing): Float64Array {
  const { count, elevation, azimuth, directNormal, diffuse, onFlat, albedo } = sky;
  const on = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    if (onFlat[k] === 0) continue;
    const cosine = incidenceCosine(elevation[k]!, azimuth[k]!, tilt, facing);
    on[k] =
      directOnPlane(directNormal[k]!, elevation[k]!, cosine) +
      diffuseOnPlane(diffuse[k]!, onFlat[k]!, tilt, albedo);
  }
  return on;
}

/** Add what panes that look the same way let into the rooms behind them. [W] */
function addGains(gain: Float64Array, rooms: number, sky: Sky, group: PaneGroup): void {
  const { count, elevation, azimuth, directNormal, diffuse, onFlat, albedo } = sky;
  const { tilt, azimuth: facing, behind, admits } = group;
  for (let k = 0; k < count; k++) {
    if (onFlat[k] === 0) continue;
    const cosine = incidenceCosine(elevation[k]!, azimuth[k]!, tilt, facing);
    const through =
      directOnPlane(directNormal[k]!, elevation[k]!, cosine) * incidenceModifier(cosine) +
      diffuseOnPlane(diffuse[k]!, onFlat[k]!, tilt, albedo) * DIFFUSE_INCIDENCE_MODIFIER;
    for (let q = 0; q < behind.length; q++) {
      const at = k * rooms + behind[q]!;
      gain[at] = gain[at]! + admits[q]! * through;
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
