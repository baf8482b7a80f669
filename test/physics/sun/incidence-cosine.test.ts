import { expect, test } from 'vitest';
import { incidenceCosine } from '../../../src/physics/sun/incidence-cosine.ts';
import { solarAzimuth, solarElevation } from '../../../src/physics/sun/sun-position.ts';
import { compare } from '../../reference/compare.ts';
import { declinationOfDay } from '../../reference/physics/sun/declination-of-day.ts';

const DEGREE = Math.PI / 180;
const BOOK = 'Duffie and Beckman, Solar Engineering of Thermal Processes';

/** Angle of incidence [deg] and ratio of the beam on the plane to that on the level. */
function plane(latitude: number, day: number, hour: number, tilt: number, facing: number) {
  const declination = declinationOfDay(day);
  const hourAngle = (hour - 12) * 15;
  const elevation = solarElevation(latitude, declination, hourAngle);
  const azimuth = solarAzimuth(latitude, declination, hourAngle);
  const cosine = incidenceCosine(elevation, azimuth, tilt, facing);
  return { angle: Math.acos(cosine) / DEGREE, ratio: cosine / Math.sin(elevation * DEGREE) };
}

test('textbook examples of incidence', () => {
  const row = { topic: 'Sun', unit: '°', mark: 'published' } as const;
  compare({
    ...row,
    what: 'declination, 13 February',
    source: `${BOOK}, example 1.6.1`,
    expected: -14,
    got: declinationOfDay(44),
    tolerance: { absolute: 0.1 },
    because: 'printed in whole degrees; exact -13.95',
  });
  compare({
    ...row,
    what: 'incidence, 43° N, 13 February 10:30, slope 45°, 15° west of south',
    source: `${BOOK}, example 1.6.1`,
    expected: 35,
    got: plane(43, 44, 10.5, 45, 195).angle,
    tolerance: { absolute: 0.2 },
    because: 'printed in whole degrees from a declination in whole degrees',
  });
  compare({
    ...row,
    what: 'incidence, 38.54° N, 13 February 10:30, slope 45°, 15° west of south',
    source: 'a worked problem on a study site (Harrisonburg)',
    mark: 'published arithmetic',
    expected: 33.7,
    got: plane(38.54, 44, 10.5, 45, 195).angle,
    tolerance: { absolute: 0.1 },
    because: 'printed to a tenth',
  });
});

test('textbook examples of the beam ratio', () => {
  const row = { topic: 'Sun', unit: '-', mark: 'published' } as const;
  compare({
    ...row,
    what: 'beam ratio, 43° N, 13 February 10:30, slope 45°, 15° west of south',
    source: `${BOOK}, example 1.7.1`,
    expected: 1.66,
    got: plane(43, 44, 10.5, 45, 195).ratio,
    tolerance: { absolute: 0.013 },
    because: 'cosines rounded to three places on the way',
  });
  compare({
    ...row,
    what: 'beam ratio, 40° N, 16 February 9:30, slope 30° south',
    source: `${BOOK}, example 1.7.2`,
    expected: 1.61,
    got: plane(40, 47, 9.5, 30, 180).ratio,
    tolerance: { absolute: 0.005 },
    because: 'printed to two places',
  });
  compare({
    ...row,
    what: 'beam ratio, the same, slope 50°',
    source: `${BOOK}, the same example`,
    expected: 1.8,
    got: plane(40, 47, 9.5, 50, 180).ratio,
    tolerance: { relative: 0.015 },
    because: 'printed from rounded cosines; exact 1.786',
  });
});

test('a plane facing the sun gets it square, one turned away has it behind', () => {
  expect(incidenceCosine(30, 140, 60, 140)).toBeCloseTo(1, 12);
  expect(incidenceCosine(30, 140, 60, 320)).toBeLessThan(0);
  expect(incidenceCosine(30, 77, 0, 200)).toBeCloseTo(0.5, 12);
});
