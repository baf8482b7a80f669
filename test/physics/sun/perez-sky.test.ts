import { describe, expect, test } from 'vitest';
import { incidenceCosine } from '../../../src/physics/sun/incidence-cosine.ts';
import { perezSky } from '../../../src/physics/sun/perez-sky.ts';
import { diffuseOnPlane, directOnPlane } from '../../../src/physics/sun/tilted-irradiance.ts';
import { compare } from '../../reference/compare.ts';

interface Light {
  readonly diffuse: number;
  readonly direct: number;
  readonly zenith: number;
  readonly sunAzimuth: number;
  readonly airMass: number;
  readonly beyond: number;
}

interface Plane {
  readonly tilt: number;
  readonly facing: number;
}

/** What a plane gets of the sky alone, by where it comes from. [W/m2] */
function onPlane({ diffuse, direct, zenith, sunAzimuth, airMass, beyond }: Light, plane: Plane) {
  const { circumsolar, dome, horizon } = perezSky(diffuse, direct, 90 - zenith, airMass, beyond);
  const cosine = incidenceCosine(90 - zenith, sunAzimuth, plane.tilt, plane.facing);
  const around = directOnPlane(circumsolar, 90 - zenith, cosine);
  return {
    dome: diffuseOnPlane(dome, 0, plane.tilt, 0),
    circumsolar: around,
    horizon: horizon * Math.sin((plane.tilt * Math.PI) / 180),
    all: around + diffuseOnPlane(dome, 0, plane.tilt, 0, horizon),
  };
}

const ROOF_A: Plane = { tilt: 40, facing: 180 };
const ROOF_B: Plane = { tilt: 34, facing: 180 };

/** Digits as they are printed there. */
const PRINTED: readonly {
  light: Light;
  plane: Plane;
  digits: number;
  dome: number;
  circumsolar: number;
  horizon: number;
}[] = [
  {
    light: {
      ...{ diffuse: 40.46149818, direct: 316.1949056, zenith: 82.85457, sunAzimuth: 66.7141 },
      ...{ airMass: 7.58831596, beyond: 1321.16558 },
    },
    ...{ plane: ROOF_A, digits: 5, dome: 26.84139, circumsolar: 0, horizon: 4.62212 },
  },
  {
    light: {
      ...{ diffuse: 62.03376265, direct: 646.22886, zenith: 72.41687, sunAzimuth: 287.04104 },
      ...{ airMass: 3.27930443, beyond: 1321.16558 },
    },
    ...{ plane: ROOF_A, digits: 5, dome: 31.72696, circumsolar: 4.47966, horizon: 9.25316 },
  },
  {
    light: {
      ...{ diffuse: 249, direct: 158, zenith: 57.746951, sunAzimuth: 171.003315 },
      ...{ airMass: 1.869315, beyond: 1414 },
    },
    ...{ plane: ROOF_B, digits: 3, dome: 166.785, circumsolar: 113.549, horizon: 1.076 },
  },
  {
    light: {
      ...{ diffuse: 165, direct: 19, zenith: 57.564205, sunAzimuth: 187.346924 },
      ...{ airMass: 1.859981, beyond: 1414 },
    },
    ...{ plane: ROOF_B, digits: 3, dome: 142.245, circumsolar: 16.0976, horizon: -6.1335 },
  },
  {
    light: {
      ...{ diffuse: 50, direct: 0, zenith: 75.353368, sunAzimuth: 228.317233 },
      ...{ airMass: 3.900136, beyond: 1414 },
    },
    ...{ plane: ROOF_B, digits: 3, dome: 45.7259, circumsolar: 0, horizon: -2.2089 },
  },
];

describe.each(PRINTED)('$light.diffuse W/m2 diffuse, sun at $light.sunAzimuth°', (printed) => {
  test.each(['dome', 'circumsolar', 'horizon'] as const)('%s', (part) => {
    const { light, plane, digits } = printed;
    compare({
      topic: 'Sun',
      what: `${part} on a plane of ${plane.tilt}°: ${light.diffuse} diffuse and ${light.direct} W/m2 direct, zenith ${light.zenith}°`,
      unit: 'W/m2',
      source:
        'printed in the tests of a public library for sunlight on planes; Perez 1990, all sites',
      mark: 'library',
      expected: printed[part],
      got: onPlane(light, plane)[part],
      tolerance: { absolute: 10 ** -digits },
      because: `given to ${digits} places, inputs to at least as many figures`,
    });
  });
});

describe('a row of the table each, sun due south at 30°', () => {
  const SOUTH: Plane = { tilt: 90, facing: 180 };
  const NORTH: Plane = { tilt: 90, facing: 0 };
  const sun = { zenith: 60, sunAzimuth: 180, airMass: 1.99429, beyond: 1367 };
  test.each([
    { diffuse: 100, direct: 0, plane: SOUTH, expected: 44.3305 },
    { diffuse: 100, direct: 30, plane: SOUTH, expected: 54.837 },
    { diffuse: 100, direct: 80, plane: SOUTH, expected: 72.7413 },
    { diffuse: 100, direct: 140, plane: SOUTH, expected: 92.4972 },
    { diffuse: 100, direct: 250, plane: SOUTH, expected: 119.772 },
    { diffuse: 100, direct: 500, plane: SOUTH, expected: 136.736 },
    { diffuse: 100, direct: 900, plane: SOUTH, expected: 129.197 },
    { diffuse: 60, direct: 900, plane: SOUTH, expected: 76.5497 },
    { diffuse: 100, direct: 500, plane: NORTH, expected: 46.6532 },
    { diffuse: 60, direct: 900, plane: NORTH, expected: 36.2715 },
  ])('$diffuse diffuse and $direct W/m2 direct on a wall at $plane.facing°', (c) => {
    // By a script of its own from equation 9 and table 6, to six figures.
    const got = onPlane({ ...sun, diffuse: c.diffuse, direct: c.direct }, c.plane).all;
    expect(Math.abs(got - c.expected)).toBeLessThan(5.1e-4);
  });
});

describe('laws', () => {
  const lights = [0, 10, 60, 150, 300].flatMap((diffuse) =>
    [0, 5, 40, 90, 200, 500, 900].flatMap((direct) =>
      [0.5, 3, 12, 35, 60, 90].map((elevation) => ({ diffuse, direct, elevation })),
    ),
  );
  const parts = ({ diffuse, direct, elevation }: (typeof lights)[number]) =>
    perezSky(diffuse, direct, elevation, 1 / Math.sin(((elevation + 1) * Math.PI) / 180), 1361);

  test('the horizontal gets back the diffuse light, but for the cap around a low sun', () => {
    for (const light of lights) {
      const { circumsolar, dome, horizon } = parts(light);
      const height = incidenceCosine(light.elevation, 0, 0, 0);
      const around = directOnPlane(circumsolar, light.elevation, height);
      const all = around + diffuseOnPlane(dome, 0, 0, 0, horizon);
      if (light.elevation > 5) expect(all).toBeCloseTo(light.diffuse, 9);
      else expect(all).toBeLessThanOrEqual(light.diffuse + 1e-9);
    }
  });

  test('no plane gets less than nothing', () => {
    for (const light of lights) {
      const { circumsolar, dome, horizon } = parts(light);
      expect(circumsolar).toBeGreaterThanOrEqual(0);
      for (let tilt = 0; tilt <= 180; tilt += 15) {
        expect(diffuseOnPlane(dome, 0, tilt, 0, horizon)).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('without brightness around the sun and at the horizon the sky is even', () => {
    for (const [diffuse, elevation] of [
      [0, 30],
      [80, 0],
      [80, -4],
    ] as const) {
      expect(perezSky(diffuse, 0, elevation, 2, 1361)).toEqual({
        circumsolar: 0,
        dome: diffuse,
        horizon: 0,
      });
    }
    const even = diffuseOnPlane(80, 0, 70, 0);
    expect(diffuseOnPlane(80, 0, 70, 0, 0)).toBe(even);
    // 80 (1 + cos 70°)/2
    expect(even).toBeCloseTo(53.6808, 4);
  });

  test('a horizon darker than the dome is bright leaves nothing, and takes none of the ground', () => {
    expect(diffuseOnPlane(20, 0, 90, 0.2, -30)).toBe(0);
    expect(diffuseOnPlane(20, 100, 90, 0.2, -30)).toBeCloseTo(10, 12);
  });
});
