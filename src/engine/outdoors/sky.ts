import type { Home } from '../../home/home.ts';
import { relativeAirMass } from '../../physics/sun/air-mass.ts';
import { dayOfYear } from '../../physics/sun/day-of-year.ts';
import { extraterrestrialNormal } from '../../physics/sun/extraterrestrial.ts';
import { incidenceCosine } from '../../physics/sun/incidence-cosine.ts';
import {
  DIFFUSE_INCIDENCE_MODIFIER,
  incidenceModifier,
} from '../../physics/sun/incidence-modifier.ts';
import { perezSky } from '../../physics/sun/perez-sky.ts';
import { sunPosition } from '../../physics/sun/sun-position.ts';
import { diffuseOnPlane, directOnPlane } from '../../physics/sun/tilted-irradiance.ts';
import type { Weather } from '../../weather/weather.ts';
import { type SunSeries, sunSeries } from './sun-series.ts';

/** A plane by where it looks. [deg] */
export interface Facing {
  readonly azimuth: number;
  readonly tilt: number;
}

/** What the sun of a place sends on planes and through glass, one value per interval of its series. */
export interface Sky {
  readonly series: SunSeries;
  /** Irradiance on a plane. [W/m2] */
  readonly onPlane: (facing: Facing) => Float64Array;
  /** Irradiance that passes glass, as a share of what passes at right angles. [W/m2] */
  readonly throughGlass: (facing: Facing) => Float64Array;
}

/**
 * The sky over a place, as it was worked out for the run before where weather, place and steps are
 * the same: plans of one scenario share all but some planes of it, and all light where only the
 * ground around differs.
 *
 * @param dt    control step [s]
 * @param from  an instant at which a control step begins [s UTC]
 */
export function skyOf(site: Home['site'], weather: Weather, dt: number, from: number): Sky {
  const { latitude, longitude, albedo, sky: spread } = site;
  const phase = (((from - weather.start) % dt) + dt) % dt;
  const key = [latitude, longitude, spread, dt, phase].join();
  const known = kept.get(weather);
  const same = known?.key === key;
  if (same && known.albedo === albedo) return known.sky;
  const light = same ? known.light : lightOver(site, sunSeries(weather, dt, from));
  const sky = layOutSky(light, albedo);
  kept.set(weather, { key, albedo, light, sky });
  return sky;
}

interface Kept {
  readonly key: string;
  readonly albedo: number;
  readonly light: Light;
  readonly sky: Sky;
}

const kept = new WeakMap<Weather, Kept>();

/**
 * The sun stands where it stands in the middle of an interval; dark intervals have 0 everywhere. What
 * the sky sends from around the sun arrives as the direct sun does, on planes and through glass.
 */
function layOutSky(light: Light, albedo: number): Sky {
  const { series, elevation, azimuth, onFlat, fromSun, dome, horizon } = light;
  const { count } = series;

  function onPlane({ tilt, azimuth: facing }: Facing): Float64Array {
    const on = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      if (onFlat[k] === 0) continue;
      const cosine = incidenceCosine(elevation[k]!, azimuth[k]!, tilt, facing);
      on[k] =
        directOnPlane(fromSun[k]!, elevation[k]!, cosine) +
        diffuseOnPlane(dome[k]!, onFlat[k]!, tilt, albedo, horizon[k]!);
    }
    return on;
  }

  function throughGlass({ tilt, azimuth: facing }: Facing): Float64Array {
    const through = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      if (onFlat[k] === 0) continue;
      const cosine = incidenceCosine(elevation[k]!, azimuth[k]!, tilt, facing);
      const diffuse = diffuseOnPlane(dome[k]!, onFlat[k]!, tilt, albedo, horizon[k]!);
      through[k] =
        directOnPlane(fromSun[k]!, elevation[k]!, cosine) * incidenceModifier(cosine) +
        diffuse * DIFFUSE_INCIDENCE_MODIFIER;
    }
    return through;
  }

  return { series, onPlane: keeping(onPlane), throughGlass: keeping(throughGlass) };
}

type Light = ReturnType<typeof lightOver>;

/** Height and azimuth of the sun [deg], and what comes from it and from all over the sky [W/m2]. */
function lightOver({ latitude, longitude, sky }: Home['site'], series: SunSeries) {
  const { count, start, step, directNormal, diffuseHorizontal } = series;
  const column = (): Float64Array => new Float64Array(count);
  const [elevation, azimuth, onFlat] = [column(), column(), column()];
  const [fromSun, dome, horizon] = [column(), column(), column()];
  for (let k = 0; k < count; k++) {
    const direct = directNormal[k]!;
    const diffuse = diffuseHorizontal[k]!;
    if (diffuse <= 0 && direct <= 0) continue;
    const middle = start + (k + 0.5) * step;
    const sun = sunPosition(middle, latitude, longitude);
    elevation[k] = sun.elevation;
    azimuth[k] = sun.azimuth;
    const cosine = incidenceCosine(sun.elevation, sun.azimuth, 0, 0);
    onFlat[k] = diffuse + directOnPlane(direct, sun.elevation, cosine);
    const beyond = extraterrestrialNormal(dayOfYear(middle));
    const parts =
      sky === 'even'
        ? { circumsolar: 0, dome: diffuse, horizon: 0 }
        : perezSky(diffuse, direct, sun.elevation, relativeAirMass(sun.elevation), beyond);
    fromSun[k] = direct + parts.circumsolar;
    dome[k] = parts.dome;
    horizon[k] = parts.horizon;
  }
  return { series, elevation, azimuth, onFlat, fromSun, dome, horizon };
}

/** Works each plane out once, as long as they are not too many to keep. */
function keeping(work: (facing: Facing) => Float64Array): (facing: Facing) => Float64Array {
  const known = new Map<string, Float64Array>();
  return (facing) => {
    const key = `${facing.azimuth}/${facing.tilt}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    if (known.size >= MOST_PLANES) known.clear();
    const made = work(facing);
    known.set(key, made);
    return made;
  };
}

/** A home has some ten; a study that tries others must not fill the memory. */
const MOST_PLANES = 32;
