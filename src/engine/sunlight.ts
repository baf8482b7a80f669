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
  /** On each plane, one value per interval. [W/m2] */
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
  const { count, start, step, directNormal, diffuseHorizontal } = series;
  const rooms = home.rooms.length;
  const on = planes.map(() => new Float64Array(count));
  const gain = new Float64Array(count * rooms);
  const glass = groupPanes(home);
  for (let k = 0; k < count; k++) {
    const diffuse = diffuseHorizontal[k]!;
    const direct = directNormal[k]!;
    if (diffuse <= 0 && direct <= 0) continue;
    const { elevation, azimuth } = sunPosition(
      start + (k + 0.5) * step,
      home.site.latitude,
      home.site.longitude,
    );
    const onFlat =
      diffuse + directOnPlane(direct, elevation, incidenceCosine(elevation, azimuth, 0, 0));
    planes.forEach((plane, p) => {
      const cosine = incidenceCosine(elevation, azimuth, plane.tilt, plane.azimuth);
      on[p]![k] =
        directOnPlane(direct, elevation, cosine) +
        diffuseOnPlane(diffuse, onFlat, plane.tilt, home.site.albedo);
    });
    for (const { azimuth: facing, tilt, rooms: behind, admits } of glass) {
      const cosine = incidenceCosine(elevation, azimuth, tilt, facing);
      const through =
        directOnPlane(direct, elevation, cosine) * incidenceModifier(cosine) +
        diffuseOnPlane(diffuse, onFlat, tilt, home.site.albedo) * DIFFUSE_INCIDENCE_MODIFIER;
      for (let q = 0; q < behind.length; q++) gain[k * rooms + behind[q]!]! += admits[q]! * through;
    }
  }
  return { on, gain };
}

/** Panes that look the same way, with the rooms behind them and what each admits. [m2] */
function groupPanes({ panes }: Home): (Facing & { rooms: number[]; admits: number[] })[] {
  const groups = new Map<string, Facing & { rooms: number[]; admits: number[] }>();
  for (const pane of panes) {
    const key = `${pane.azimuth}/${pane.tilt}`;
    const group = groups.get(key) ?? {
      azimuth: pane.azimuth,
      tilt: pane.tilt,
      rooms: [],
      admits: [],
    };
    groups.set(key, group);
    const admits = pane.area * (1 - pane.frameShare) * pane.gValue * pane.unshaded;
    const known = group.rooms.indexOf(pane.room);
    if (known >= 0) group.admits[known]! += admits;
    else {
      group.rooms.push(pane.room);
      group.admits.push(admits);
    }
  }
  return [...groups.values()];
}
