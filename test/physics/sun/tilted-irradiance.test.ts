import { expect, test } from 'vitest';
import { incidenceCosine } from '../../../src/physics/sun/incidence-cosine.ts';
import { solarAzimuth, solarElevation } from '../../../src/physics/sun/sun-position.ts';
import { diffuseOnPlane, directOnPlane } from '../../../src/physics/sun/tilted-irradiance.ts';
import { compare } from '../../reference/compare.ts';
import { declinationOfDay } from '../../reference/physics/sun/declination-of-day.ts';

test('textbook example of an even sky', () => {
  const declination = declinationOfDay(51);
  const elevation = solarElevation(40, declination, -37.5);
  const cosine = incidenceCosine(elevation, solarAzimuth(40, declination, -37.5), 60, 180);
  const direct = 0.244 / Math.sin((elevation * Math.PI) / 180); // hourly sums in MJ/m2 serve as well
  const row = {
    topic: 'Sun',
    unit: 'MJ/m2',
    source:
      'Duffie and Beckman, 4th ed., example 2.15.1, as in tests of solar water treatment (watertap-seto): 40° N, 20 February 9 to 10, slope 60°, albedo 0.6',
    mark: 'published arithmetic',
    tolerance: { absolute: 0.0012 },
    because: 'its tests hold to a thousandth of the whole',
  } as const;
  compare({
    ...row,
    what: 'beam on the slope',
    expected: 1.7144 * 0.2439, // ratio of the slope's beam, and the beam on the level
    got: directOnPlane(direct, elevation, cosine),
  });
  compare({
    ...row,
    what: 'sky and ground on the slope',
    expected: 1.17124 - 1.7144 * 0.2439,
    got: diffuseOnPlane(0.796, 1.04, 60, 0.6),
  });
  compare({
    ...row,
    what: 'all on the slope',
    expected: 1.17124,
    got: directOnPlane(direct, elevation, cosine) + diffuseOnPlane(0.796, 1.04, 60, 0.6),
  });
});

test('level ground receives the global irradiance, a ceiling the reflected', () => {
  const up = incidenceCosine(30, 180, 0, 0);
  expect(directOnPlane(400, 30, up) + diffuseOnPlane(100, 300, 0, 0.2)).toBeCloseTo(300, 9);
  expect(directOnPlane(400, 30, -up) + diffuseOnPlane(100, 300, 180, 0.2)).toBeCloseTo(60, 9);
});

test('no direct sun behind the plane or under the horizon', () => {
  expect(directOnPlane(800, 20, -0.1)).toBe(0);
  expect(directOnPlane(800, -1, 0.5)).toBe(0);
  expect(directOnPlane(800, 20, 0.5)).toBe(400);
});
