import { describe, expect, test } from 'vitest';
import { type Facing, type Sky, skyOf } from '../../src/engine/sky.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { NEW_YEAR } from './homes.ts';
import { lastDays } from './short-weather.ts';

const SITE = { latitude: 54, longitude: 0, elevation: 0, albedo: 0.2 };
const SOUTH: Facing = { azimuth: 180, tilt: 90 };
const WEST: Facing = { azimuth: 270, tilt: 45 };

const sunny = (): Weather =>
  lastDays({ direct: (t) => 300 + 200 * Math.sin(t), diffuse: () => 90 }, 2, 1800);

const valuesOf = (sky: Sky): number[][] =>
  [SOUTH, WEST].flatMap((plane) => [[...sky.onPlane(plane)], [...sky.throughGlass(plane)]]);

describe('a sky that is kept', () => {
  test('is the one of the run before where place, weather and steps are the same', () => {
    const weather = sunny();
    const sky = skyOf(SITE, weather, 600, NEW_YEAR);
    expect(skyOf({ ...SITE, elevation: 90 }, weather, 600, NEW_YEAR + 6000)).toBe(sky);
    expect(sky.onPlane({ ...SOUTH })).toBe(sky.onPlane(SOUTH));
    expect(sky.onPlane(SOUTH)).not.toEqual(sky.onPlane(WEST));
    expect(sky.throughGlass(SOUTH)).not.toEqual(sky.onPlane(SOUTH));
  });

  test.each([
    ['latitude', { ...SITE, latitude: 50 }, 600, 0],
    ['longitude', { ...SITE, longitude: 8 }, 600, 0],
    ['albedo', { ...SITE, albedo: 0.6 }, 600, 0],
    ['step', SITE, 3600, 0],
    ['begin of the steps', SITE, 3600, 1800],
  ])('is another with another %s, and no worse for the one before', (_, site, dt, later) => {
    const weather = sunny();
    const before = valuesOf(skyOf(SITE, weather, 600, NEW_YEAR));
    const fresh = valuesOf(skyOf(site, sunny(), dt, NEW_YEAR + later));
    expect(valuesOf(skyOf(site, weather, dt, NEW_YEAR + later))).toEqual(fresh);
    expect(fresh).not.toEqual(before);
    expect(valuesOf(skyOf(SITE, weather, 600, NEW_YEAR))).toEqual(before);
  });

  test('gives every one of many planes its own values', () => {
    const weather = sunny();
    const planes = Array.from({ length: 100 }, (_, k): Facing => ({ azimuth: 3 * k, tilt: 60 }));
    const sky = skyOf(SITE, weather, 600, NEW_YEAR);
    for (const plane of planes) sky.onPlane(plane);
    for (const plane of [planes[0]!, planes[50]!, planes[99]!]) {
      expect(sky.onPlane(plane)).toEqual(skyOf(SITE, sunny(), 600, NEW_YEAR).onPlane(plane));
    }
  });
});
