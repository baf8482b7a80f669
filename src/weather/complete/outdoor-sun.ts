import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { extraterrestrialNormal } from '../../physics/sun/extraterrestrial.ts';
import { globalFromCloud } from '../../physics/sun/global-from-cloud.ts';
import { splitGlobalErbs } from '../../physics/sun/split-global-erbs.ts';
import { sunPosition } from '../../physics/sun/sun-position.ts';
import type { Quantity } from '../quantity.ts';
import type { SunOrigin } from '../weather.ts';
import { meanCosZenith } from './mean-cos-zenith.ts';

/** Direct and diffuse irradiance of a series, and where they come from. */
export interface OutdoorSun {
  readonly directNormal: Float64Array;
  readonly diffuseHorizontal: Float64Array;
  readonly sun: SunOrigin;
  /** What was derived, in words; empty for nothing. */
  readonly how: string;
}

/** Place, time and length of the steps of a series. */
export interface StepsAt {
  readonly start: number;
  readonly step: number;
  readonly count: number;
  readonly latitude: number;
  readonly longitude: number;
}

/**
 * The best sun that the columns allow: both parts as measured; one part and global; global split by
 * Erbs; global made from cloud by Kasten and Czeplak; or none.
 *
 * @param mean  column by quantity, means over the steps; undefined where the file has none
 */
export function outdoorSun(
  mean: (quantity: Quantity) => Float64Array | undefined,
  at: StepsAt,
): OutdoorSun {
  const direct = mean('direct normal');
  const diffuse = mean('diffuse horizontal');
  const global = mean('global horizontal');
  const cloud = mean('cloud cover');
  if (direct !== undefined && diffuse !== undefined) {
    return { directNormal: direct, diffuseHorizontal: diffuse, sun: 'measured', how: '' };
  }
  if (global !== undefined && (direct ?? diffuse) !== undefined) {
    return fromTwo(global, direct, diffuse, at);
  }
  if (global !== undefined) {
    return { ...split(global, at), sun: 'split from global', how: SPLIT };
  }
  if (cloud !== undefined) {
    return { ...split(fromCloud(cloud, at), at), sun: 'made from cloud', how: CLOUD };
  }
  const none = () => new Float64Array(at.count);
  return { directNormal: none(), diffuseHorizontal: none(), sun: 'none', how: NONE };
}

/** The third of global, direct and diffuse from the other two. */
function fromTwo(
  global: Float64Array,
  direct: Float64Array | undefined,
  diffuse: Float64Array | undefined,
  at: StepsAt,
): OutdoorSun {
  const cosines = cosinesOf(at);
  if (direct !== undefined) {
    const rest = global.map((value, k) => Math.max(0, value - direct[k]! * cosines[k]!));
    return { directNormal: direct, diffuseHorizontal: rest, sun: 'measured', how: NO_DIFFUSE };
  }
  const found = global.map((value, k) => {
    const onto = Math.max(0, value - diffuse![k]!);
    const most = extraterrestrialNormal(dayOfYear(at.start + k * at.step));
    return cosines[k]! > 0 ? Math.min(most, onto / cosines[k]!) : 0;
  });
  return { directNormal: found, diffuseHorizontal: diffuse!, sun: 'measured', how: NO_DIRECT };
}

function split(global: Float64Array, at: StepsAt) {
  const cosines = cosinesOf(at);
  const directNormal = new Float64Array(at.count);
  const diffuseHorizontal = new Float64Array(at.count);
  for (let k = 0; k < at.count; k++) {
    const day = Math.floor(dayOfYear(at.start + k * at.step));
    const parts = splitGlobalErbs(Math.min(1600, global[k]!), cosines[k]!, day);
    directNormal[k] = parts.directNormal;
    diffuseHorizontal[k] = parts.diffuseHorizontal;
  }
  return { directNormal, diffuseHorizontal };
}

/** Mean of the formula at a few moments of each step, since it bends near the horizon. */
function fromCloud(cloud: Float64Array, at: StepsAt): Float64Array {
  return cloud.map((percent, k) => {
    let sum = 0;
    for (let part = 0; part < MOMENTS; part++) {
      const moment = at.start + (k + (part + 0.5) / MOMENTS) * at.step;
      const { elevation } = sunPosition(moment, at.latitude, at.longitude);
      sum += globalFromCloud(percent / 100, elevation);
    }
    return sum / MOMENTS;
  });
}

function cosinesOf({ start, step, count, latitude, longitude }: StepsAt): Float64Array {
  const cosines = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    cosines[k] = meanCosZenith(start + k * step, step, latitude, longitude);
  }
  return cosines;
}

const MOMENTS = 4;
const SPLIT = 'direct and diffuse split from global horizontal (Erbs)';
const CLOUD =
  'sun made from cloud cover (Kasten and Czeplak) and split (Erbs): single hours are rough';
const NONE = 'no sun and no cloud in the file: the sun never shines';
const NO_DIFFUSE = 'diffuse is global less direct';
const NO_DIRECT = 'direct is global less diffuse, over the mean sine of the sun';
