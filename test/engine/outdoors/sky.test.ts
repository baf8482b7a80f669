import { describe, expect, test } from 'vitest';
import { type Facing, type Sky, skyOf } from '../../../src/engine/outdoors/sky.ts';
import type { Weather } from '../../../src/weather/weather.ts';
import { NEW_YEAR } from '../homes.ts';
import { lastDays } from '../short-weather.ts';

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
    ['spread of light', { ...SITE, sky: 'even' as const }, 600, 0],
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

describe('an uneven sky beside an even one, a clear day', () => {
  const clear = lastDays({ direct: () => 600, diffuse: () => 80 }, 1);
  const sumOf = (values: Float64Array): number => values.reduce((a, b) => a + b, 0);
  const of = (plane: Facing, what: 'onPlane' | 'throughGlass', sky: 'even' | 'uneven'): number =>
    sumOf(skyOf({ ...SITE, sky }, clear, 3600, NEW_YEAR)[what](plane));
  const NORTH: Facing = { azimuth: 0, tilt: 90 };
  const LEVEL: Facing = { azimuth: 0, tilt: 0 };

  test('sends more to what faces the sun and less to what looks away', () => {
    for (const what of ['onPlane', 'throughGlass'] as const) {
      expect(of(SOUTH, what, 'uneven')).toBeGreaterThan(1.02 * of(SOUTH, what, 'even'));
      expect(of(NORTH, what, 'uneven')).toBeLessThan(of(NORTH, what, 'even'));
    }
  });

  test('sends the same to the ground', () => {
    // But for what is left out around a sun less than 5° high: one of eight hours there.
    const share = of(LEVEL, 'onPlane', 'uneven') / of(LEVEL, 'onPlane', 'even');
    expect(share).toBeLessThanOrEqual(1);
    expect(share).toBeGreaterThan(0.98);
  });

  test('passes what comes from around the sun through glass as the direct sun', () => {
    // Glass that faces the sun lets light from there pass better than light from everywhere.
    const passed = (sky: 'even' | 'uneven') =>
      of({ azimuth: 180, tilt: 75 }, 'throughGlass', sky) /
      of({ azimuth: 180, tilt: 75 }, 'onPlane', sky);
    expect(passed('uneven')).toBeGreaterThan(passed('even'));
  });
});

test('a sky is uneven unless told', () => {
  const uneven = valuesOf(skyOf({ ...SITE, sky: 'uneven' }, sunny(), 600, NEW_YEAR));
  expect(valuesOf(skyOf(SITE, sunny(), 600, NEW_YEAR))).toEqual(uneven);
});
