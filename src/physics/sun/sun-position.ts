import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { requireWithin } from '../../units/require-within.ts';
import { DEGREE, turn } from './angles.ts';
import { equationOfTime, solarDeclination } from './solar-coordinates.ts';

export interface SunPosition {
  /** Elevation of the sun's centre over the horizon, without refraction. [deg] */
  readonly elevation: number;
  /** Azimuth, clockwise from north. [deg] */
  readonly azimuth: number;
  /** Angle north of the celestial equator. [deg] */
  readonly declination: number;
  /** Hour angle: 0 at solar noon, 15 an hour, positive in the afternoon; -180 to 180. [deg] */
  readonly hourAngle: number;
}

/**
 * Where the sun stands, for any place and time from 1950 to 2100, to about 0.01°.
 *
 * Refraction is left out, because it does not reach what a wall receives before the sun is low; see
 * `refraction`. At the poles the azimuth is that of a place a hair away from them.
 *
 * @param utc  seconds since 1970-01-01 UTC
 * @param latitude  north positive [deg]
 * @param longitude  east positive [deg]
 * @throws RangeError outside these ranges
 */
export function sunPosition(utc: number, latitude: number, longitude: number): SunPosition {
  requireWithin(utc, YEARS, 'sunPosition: time', 's');
  requireWithin(latitude, [-90, 90], 'sunPosition: latitude', '°');
  requireWithin(longitude, [-180, 180], 'sunPosition: longitude', '°');
  const declination = solarDeclination(utc);
  const hourAngle = solarHourAngle(utc, longitude);
  const geocentric = solarElevation(latitude, declination, hourAngle);
  return {
    elevation: geocentric - PARALLAX * cosineOf(geocentric * DEGREE),
    azimuth: solarAzimuth(latitude, declination, hourAngle),
    declination,
    hourAngle,
  };
}

/** Hour angle of the sun over a longitude at an instant [s UTC]. [deg] */
export function solarHourAngle(utc: number, longitude: number): number {
  const minutes = utc / 60 + equationOfTime(utc);
  return turn(minutes / 4 + longitude) - 180;
}

/** Height of the sun over the horizon [deg], from latitude, declination and hour angle [deg]. */
export function solarElevation(latitude: number, declination: number, hourAngle: number): number {
  const phi = latitude * DEGREE;
  const delta = declination * DEGREE;
  const sine =
    sineOf(phi) * sineOf(delta) + cosineOf(phi) * cosineOf(delta) * cosineOf(hourAngle * DEGREE);
  return Math.asin(Math.min(1, Math.max(-1, sine))) / DEGREE;
}

/** Compass direction of the sun, clockwise from north [deg], from latitude, declination and hour angle [deg]. */
export function solarAzimuth(latitude: number, declination: number, hourAngle: number): number {
  const phi = latitude * DEGREE;
  const delta = declination * DEGREE;
  const h = hourAngle * DEGREE;
  const east = -cosineOf(delta) * sineOf(h);
  const north = cosineOf(phi) * sineOf(delta) - sineOf(phi) * cosineOf(delta) * cosineOf(h);
  return turn(Math.atan2(east, north) / DEGREE);
}

/**
 * Hour angle at which the sun sets on a flat horizon; it rises at the negative of it.
 *
 * @returns 0 where it never rises that day, 180 where it never sets [deg]
 * Source: Duffie and Beckman, Solar Engineering of Thermal Processes, equation 1.6.10.
 */
export function sunsetHourAngle(latitude: number, declination: number): number {
  const cosine = -Math.tan(latitude * DEGREE) * Math.tan(declination * DEGREE);
  return Math.acos(Math.min(1, Math.max(-1, cosine))) / DEGREE;
}

const PARALLAX = 8.794 / 3600; // the sun stands lower from the surface than from the centre [deg]
const YEARS = [-631_152_000, 4_133_980_800] as const; // 1950 to 2101
