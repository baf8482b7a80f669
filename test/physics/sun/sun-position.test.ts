import { getSpa } from 'nrel-spa';
import { getPosition } from 'suncalc';
import { expect, test } from 'vitest';
import { equationOfTime, solarDeclination } from '../../../src/physics/sun/solar-coordinates.ts';
import {
  solarAzimuth,
  solarElevation,
  sunPosition,
  sunsetHourAngle,
} from '../../../src/physics/sun/sun-position.ts';
import { compare } from '../../reference/compare.ts';
import { declinationOfDay } from '../../reference/physics/sun/declination-of-day.ts';
import { refraction } from '../../reference/physics/sun/refraction.ts';

const TOPIC = 'Sun';
const DEGREE = Math.PI / 180;

/** Instants of thirty years and places all over the globe, without a common rhythm. */
function* everywhere(): Generator<[utc: number, latitude: number, longitude: number]> {
  for (let k = 0; k < 2000; k++) {
    yield [at('2000-01-01') + k * 473_123, -85 + ((k * 37) % 171), -179 + ((k * 53) % 358)];
  }
}

test('the hour angle runs from -180 to 180, 0 at noon of a sundial', () => {
  // Over Greenwich at 12 UTC it is the equation of time, at most 16.5 min: 4.1°.
  expect(Math.abs(sunPosition(at('2020-06-01') + 43_200, 51.5, 0).hourAngle)).toBeLessThan(4.2);
  expect(sunPosition(at('2020-06-01') + 64_800, 51.5, 0).hourAngle).toBeCloseTo(90, -1);
  expect(sunPosition(at('2020-06-01') + 21_600, 51.5, 0).hourAngle).toBeCloseTo(-90, -1);
});

test('agrees with the reference algorithm of the trade all over the globe', () => {
  let height = 0;
  let side = 0;
  for (const [utc, latitude, longitude] of everywhere()) {
    const ours = sunPosition(utc, latitude, longitude);
    const spa = getSpa(new Date(utc * 1000), latitude, longitude, 0, { pressure: 0, delta_t: 69 });
    const elevation = 90 - spa.zenith;
    const turned = ((spa.azimuth - ours.azimuth + 540) % 360) - 180;
    height = Math.max(height, Math.abs(elevation - ours.elevation));
    side = Math.max(side, Math.abs(turned) * Math.cos(elevation * DEGREE));
  }
  const row = {
    topic: TOPIC,
    unit: '°',
    source: 'npm nrel-spa 2.0.2 (Reda and Andreas 2004), 2000 places and hours of 2000 to 2030',
    mark: 'library',
    expected: 0,
    tolerance: { absolute: 0.01 },
    because:
      "the low-accuracy series of Meeus promises 0.01°; the reference's own error is 0.0003°",
  } as const;
  compare({ ...row, what: "largest error of the sun's elevation", got: height });
  compare({ ...row, what: "largest error of the sun's direction across the sky", got: side });
});

test('agrees with a popular sun routine, refraction included', () => {
  let worst = 0;
  for (const [utc, latitude, longitude] of everywhere()) {
    const ours = sunPosition(utc, latitude, longitude).elevation;
    if (ours < 1) continue;
    const theirs = getPosition(new Date(utc * 1000), latitude, longitude).altitude;
    worst = Math.max(worst, Math.abs(theirs - ours - refraction(ours)));
  }
  compare({
    topic: TOPIC,
    what: 'largest error of the apparent elevation, sun over 1°',
    unit: '°',
    source: 'npm suncalc 2.0.2, the same places and hours',
    mark: 'library',
    expected: 0,
    got: worst,
    tolerance: { absolute: 0.09 },
    because: 'it promises about 0.08°, ours 0.01°',
  });
});

test('textbook examples of angles', () => {
  const row = { topic: TOPIC, unit: '°', mark: 'published' } as const;
  const book = 'Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.6.2';
  compare({
    ...row,
    what: 'zenith, 43° N, 13 February, 9:30 solar time',
    source: book,
    expected: 66.5,
    got: 90 - solarElevation(43, declinationOfDay(44), -37.5),
    tolerance: { absolute: 0.2 },
    because: 'printed to half a degree, declination rounded on the way',
  });
  compare({
    ...row,
    mark: 'published',
    what: 'zenith, 43° N, 1 July, 18:30 solar time',
    source: `${book}, as worked out in tests of the package pachi/soljs`,
    expected: 79.59,
    got: 90 - solarElevation(43, declinationOfDay(182), 97.5),
    tolerance: { absolute: 0.06 },
    because: 'the declination is 23.18 degrees there, 0.06 more than by the formula of the book',
  });
  compare({
    ...row,
    what: 'sunset hour angle, 43° N, 15 April',
    source: 'Duffie and Beckman, example 1.8.1',
    expected: 98.9,
    got: sunsetHourAngle(43, declinationOfDay(105)),
    tolerance: { absolute: 0.1 },
    because: 'printed to a tenth',
  });
});

test('a worked example of the algorithm', () => {
  compare({
    topic: TOPIC,
    what: 'declination, 13 October 1992, 0 h dynamical time',
    unit: '°',
    source:
      'Meeus 1991, Astronomical Algorithms, example 24.a (25.a of 1998), in the manual of the R package oce: sunDeclinationRightAscension',
    mark: 'published',
    expected: -7.78507,
    got: solarDeclination(at('1992-10-13') - 69),
    tolerance: { absolute: 1e-5 },
    because: 'printed to five places',
  });
  compare({
    topic: TOPIC,
    what: 'equation of time, 13 October 1992, 0 h dynamical time',
    unit: 'min',
    source:
      'Meeus 1998, Astronomical Algorithms, 2nd ed., example 28.a, page 184, in tests of the packages SwiftAA (13.70940 min) and soniakeys/meeus (13 min 42.6 s)',
    mark: 'published',
    expected: 13.7094,
    got: equationOfTime(at('1992-10-13') - 69),
    tolerance: { absolute: 0.05 },
    because: 'the low-accuracy series promises 3 s',
  });
});

test('known moments of the year', () => {
  expect(solarDeclination(at('2024-06-20T20:51'))).toBeCloseTo(23.44, 2);
  expect(Math.abs(solarDeclination(at('2024-03-20T03:06')))).toBeLessThan(0.005);
  expect(equationOfTime(at('2024-11-03'))).toBeCloseTo(16.45, 1);
  expect(equationOfTime(at('2024-02-11'))).toBeCloseTo(-14.2, 1);
});

test('the sun is in the south at noon, in the east in the morning, and the other way down under', () => {
  expect(solarAzimuth(50, 10, 0)).toBeCloseTo(180, 9);
  expect(solarAzimuth(50, 0, -90)).toBeCloseTo(90, 9);
  expect(solarAzimuth(50, 0, 90)).toBeCloseTo(270, 9);
  expect(solarAzimuth(-50, 10, 0)).toBeCloseTo(0, 9);
});

test('polar day and polar night', () => {
  expect(sunsetHourAngle(80, 23)).toBe(180);
  expect(sunsetHourAngle(80, -23)).toBe(0);
  expect(sunsetHourAngle(0, 23)).toBeCloseTo(90, 9);
});

test('places off the globe and years out of reach are refused', () => {
  expect(() => sunPosition(0, 91, 0)).toThrow(
    'sunPosition: latitude must be between -90 and 90 °, got 91 °',
  );
  expect(() => sunPosition(0, 0, Number.NaN)).toThrow(RangeError);
  expect(() => sunPosition(-1e12, 0, 0)).toThrow(RangeError);
});

function at(text: string): number {
  return Date.parse(text.includes('T') ? `${text}Z` : `${text}T00:00Z`) / 1000;
}
