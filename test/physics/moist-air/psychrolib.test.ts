import psychrolib from 'psychrolib';
import { beforeAll, expect, test } from 'vitest';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import {
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVapourPressure,
  vapourPressureFromHumidityRatio,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import {
  dryAirDensity,
  moistAirSpecificVolume,
} from '../../../src/physics/moist-air/moist-air-volume.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { standardPressure } from '../../../src/physics/moist-air/standard-pressure.ts';
import { compare } from '../../reference/compare.ts';
import { moistAirEnthalpy } from '../../reference/physics/moist-air/moist-air-enthalpy.ts';
import { humidityRatioFromWetBulb, wetBulb } from '../../reference/physics/moist-air/wet-bulb.ts';

// The whole range of rooms and weather: -20 to 50 °C, bone dry to saturated, sea to mountain.
const STATES: { t: number; rh: number; p: number }[] = [];
for (const p of [61_640, 84_556, 95_461, 101_325, 105_000]) {
  for (let t = -20; t <= 50; t += 1.25) {
    for (const rh of [1, 2, 5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 95, 99, 100]) {
      STATES.push({ t, rh, p });
    }
  }
}

beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

type Pair = readonly [ours: number, theirs: number];

/** Compare over all states at once; rounding below a thousandth of what is allowed is left out. */
function agree(
  what: string,
  unit: string,
  allowed: number,
  because: string,
  at: (t: number, rh: number, p: number, w: number) => Pair | null,
): void {
  let worst = 0;
  let compared = 0;
  for (const { t, rh, p } of STATES) {
    const pair = at(t, rh, p, humidityRatioFromRelativeHumidity(t, rh, p));
    if (pair === null) continue;
    const [ours, theirs] = pair;
    const off = unit === '-' ? Math.abs(ours / theirs - 1) : Math.abs(ours - theirs);
    worst = Number.isNaN(off) ? Number.NaN : Math.max(worst, off);
    compared++;
  }
  expect(compared).toBeGreaterThan(0.9 * STATES.length);
  compare({
    topic: 'Moist air',
    what: `${what}, largest ${unit === '-' ? 'relative ' : ''}difference over ${compared} states`,
    unit,
    source: 'psychrolib 2.5.0 (npm psychrolib 1.1.1)',
    mark: 'library',
    expected: 0,
    got: worst < 1e-3 * allowed ? 0 : Number(worst.toPrecision(2)),
    tolerance: { absolute: allowed },
    because,
  });
}

const SAME = 'the same equation: rounding only';

test('saturation pressure', () => {
  agree('saturation pressure', '-', 1e-9, SAME, (t) => [
    saturationPressure(t),
    psychrolib.GetSatVapPres(t),
  ]);
});

test('humidity ratio from relative humidity', () => {
  agree('humidity ratio from relative humidity', '-', 1e-9, SAME, (t, rh, p, w) => [
    w,
    psychrolib.GetHumRatioFromRelHum(t, rh / 100, p),
  ]);
});

test('humidity ratio from vapour pressure and back', () => {
  agree('humidity ratio from vapour pressure', '-', 1e-9, SAME, (t, rh, p) => {
    const pv = vapourPressureFromRelativeHumidity(t, rh);
    return [humidityRatioFromVapourPressure(pv, p), psychrolib.GetHumRatioFromVapPres(pv, p)];
  });
  agree('vapour pressure from humidity ratio', '-', 1e-9, SAME, (_t, _rh, p, w) => [
    vapourPressureFromHumidityRatio(w, p),
    psychrolib.GetVapPresFromHumRatio(w, p),
  ]);
});

test('relative humidity', () => {
  agree('relative humidity', '-', 1e-9, SAME, (t, _rh, p, w) => {
    const pv = vapourPressureFromHumidityRatio(w, p);
    return [
      relativeHumidity(pv, t),
      100 * psychrolib.GetRelHumFromVapPres(t, Math.min(pv, psychrolib.GetSatVapPres(t))),
    ];
  });
});

test('dew point', () => {
  agree('dew point', 'K', 0.002, 'the library iterates to 0.001 K', (t, rh) => {
    const pv = vapourPressureFromRelativeHumidity(t, rh);
    return [dewPoint(pv), psychrolib.GetTDewPointFromVapPres(t, pv)];
  });
});

test('enthalpy', () => {
  agree('enthalpy', 'J/kg', 1e-6, SAME, (t, _rh, _p, w) => [
    moistAirEnthalpy(t, w),
    psychrolib.GetMoistAirEnthalpy(t, w),
  ]);
});

test('volume and density', () => {
  const because = 'the library writes 1/0.621945 as 1.607858: 1.2e-6 of at most 0.16 kg/kg';
  agree('specific volume', '-', 2e-7, because, (t, _rh, p, w) => [
    moistAirSpecificVolume(t, w, p),
    psychrolib.GetMoistAirVolume(t, w, p),
  ]);
  agree('density', '-', 2e-7, because, (t, _rh, p, w) => [
    (1 + w) * dryAirDensity(t, w, p),
    psychrolib.GetMoistAirDensity(t, w, p),
  ]);
});

test('wet bulb, through the direct equation of the library', () => {
  agree('humidity ratio of our wet bulb', 'kg/kg', 1e-10, SAME, (t, _rh, p, w) => [
    w,
    psychrolib.GetHumRatioFromTWetBulb(t, Math.min(wetBulb(t, w, p), t), p),
  ]);
});

test('wet bulb, beside the inverse of the library', () => {
  agree('wet bulb', 'K', 0.002, 'the library iterates to 0.001 K', (t, _rh, p, w) => {
    const ours = wetBulb(t, w, p);
    // Where an iced bulb fits as well as a wet one, the two programs may choose differently.
    const wetAtZero = t > 0 ? humidityRatioFromWetBulbOrZero(t, 0, p) : 0;
    const icedAtZero = t > 0 ? humidityRatioFromWetBulbOrZero(t, -1e-9, p) : 0;
    if (w >= wetAtZero && w <= icedAtZero) return null;
    return [ours, psychrolib.GetTWetBulbFromHumRatio(t, w, p)];
  });
});

function humidityRatioFromWetBulbOrZero(t: number, bulb: number, p: number): number {
  try {
    return humidityRatioFromWetBulb(t, bulb, p);
  } catch {
    return 0; // drier than dry
  }
}

test.each([-500, 0, 500, 1000, 2500, 4000])('standard pressure at %s m', (elevation) => {
  compare({
    topic: 'Moist air',
    what: `standard pressure at ${elevation} m beside the library`,
    unit: 'Pa',
    source: 'psychrolib 2.5.0 (npm psychrolib 1.1.1)',
    mark: 'library',
    expected: psychrolib.GetStandardAtmPressure(elevation),
    got: standardPressure(elevation),
    tolerance: { absolute: 0.001 },
    because: SAME,
  });
});
