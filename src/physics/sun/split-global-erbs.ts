import { requireWithin } from '../../units/require-within.ts';
import { extraterrestrialNormal } from './extraterrestrial.ts';

export interface SplitIrradiance {
  /** [W/m2] */
  readonly directNormal: number;
  /** [W/m2] */
  readonly diffuseHorizontal: number;
}

/**
 * Hourly global irradiance split into direct and diffuse.
 *
 * The two always add up to the global given. With the sun so low that the split would need more
 * direct sun than there is outside the atmosphere, the excess counts as diffuse.
 *
 * @param globalHorizontal  on the horizontal [W/m2], 0 to 1600 (edges of clouds exceed clear sky)
 * @param cosZenith  of the sun, hourly mean or middle; 0 or less is night [-]
 * @param dayOfYear  1 to 366
 * @throws RangeError outside these ranges
 * Source: Erbs, Klein and Duffie 1982, Solar Energy 28, 293-302, equation 1, as in the package pvlib,
 * irradiance.erbs; hourly values scatter about it by a third.
 */
export function splitGlobalErbs(
  globalHorizontal: number,
  cosZenith: number,
  dayOfYear: number,
): SplitIrradiance {
  requireWithin(globalHorizontal, [0, 1600], 'splitGlobalErbs: global irradiance', 'W/m2');
  requireWithin(cosZenith, [-1, 1], 'splitGlobalErbs: cosine of zenith', '');
  if (cosZenith <= 0) return { directNormal: 0, diffuseHorizontal: globalHorizontal };
  const beyond = extraterrestrialNormal(dayOfYear);
  const clearness = globalHorizontal / (beyond * Math.max(cosZenith, LOWEST));
  const wanted = (globalHorizontal * (1 - diffuseShareErbs(Math.min(clearness, 1)))) / cosZenith;
  const directNormal = Math.min(wanted, beyond * CLEAREST);
  return {
    directNormal,
    diffuseHorizontal: Math.max(0, globalHorizontal - directNormal * cosZenith),
  };
}

/** Share of hourly global irradiance that is diffuse, from the clearness index, 0 to 1. [-] */
export function diffuseShareErbs(clearness: number): number {
  requireWithin(clearness, [0, 1], 'diffuseShareErbs: clearness index', '');
  if (clearness <= 0.22) return 1 - 0.09 * clearness;
  if (clearness > 0.8) return 0.165;
  return (
    0.9511 +
    clearness * (-0.1604 + clearness * (4.388 + clearness * (-16.638 + clearness * 12.336)))
  );
}

const LOWEST = 0.065; // cosine of 86.3°: below, the index means nothing
const CLEAREST = 0.9; // no air is clearer than this
