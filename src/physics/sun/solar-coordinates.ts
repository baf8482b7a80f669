import { cosineOf, sineOf } from '../../units/portable-math.ts';
import { DEGREE, turn } from './angles.ts';

/**
 * Angle of the sun north of the celestial equator. [deg]
 *
 * @param utc  seconds since 1970-01-01 UTC, good for 1950 to 2100
 * Accurate to about 0.01°.
 * Source: Meeus 1998, Astronomical Algorithms, 2nd ed., chapter 25, low accuracy;
 * coefficients as in the package soniakeys/meeus, solar.
 */
export function solarDeclination(utc: number): number {
  const t = centuries(utc);
  return Math.asin(sineOf(obliquity(t)) * sineOf(apparentLongitude(t))) / DEGREE;
}

/**
 * True solar time less mean solar time: how far a sundial is ahead of a clock. [min]
 *
 * @param utc  seconds since 1970-01-01 UTC
 * Accurate to about 3 s.
 * Source: Meeus 1998, equation 28.1, with the sun of chapter 25, as in the same package, eqtime.
 */
export function equationOfTime(utc: number): number {
  const t = centuries(utc);
  const meanLongitude = 280.4664567 + 36_000.76982779 * t + 0.0003032 * t * t;
  const nutation = -0.00478 * sineOf(node(t)) * cosineOf(obliquity(t));
  const minutes = 4 * turn(meanLongitude - 0.0057183 - rightAscension(t) + nutation);
  return minutes > 720 ? minutes - 1440 : minutes;
}

/** [deg] */
function rightAscension(t: number): number {
  const longitude = apparentLongitude(t);
  const y = cosineOf(obliquity(t)) * sineOf(longitude);
  return Math.atan2(y, cosineOf(longitude)) / DEGREE;
}

/** Apparent longitude of the sun, with aberration and the main nutation term. [rad] */
function apparentLongitude(t: number): number {
  const mean = 280.46646 + 36_000.76983 * t + 0.0003032 * t * t;
  const anomaly = (357.52911 + 35_999.05029 * t - 0.0001537 * t * t) * DEGREE;
  const centre =
    (1.914602 - 0.004817 * t - 0.000014 * t * t) * sineOf(anomaly) +
    (0.019993 - 0.000101 * t) * sineOf(2 * anomaly) +
    0.000289 * sineOf(3 * anomaly);
  return (mean + centre - 0.00569 - 0.00478 * sineOf(node(t))) * DEGREE;
}

/** Obliquity of the ecliptic, with the main nutation term. [rad] */
function obliquity(t: number): number {
  return (23.4392911 - 0.0130042 * t + 0.00256 * cosineOf(node(t))) * DEGREE;
}

/** Longitude of the Moon's ascending node: argument of the main nutation term. [rad] */
function node(t: number): number {
  return (125.04 - 1934.136 * t) * DEGREE;
}

/** Julian centuries since J2000.0, dynamical time. */
function centuries(utc: number): number {
  return (utc + DELTA_T - J2000) / (36_525 * 86_400);
}

const J2000 = 946_728_000; // [s UTC]
const DELTA_T = 69; // dynamical less universal time in the 2020s; a minute's error is 0.0007° [s]
