import { describe, expect, test } from 'vitest';
import { DRY_AIR_DENSITY } from '../../../src/physics/moist-air/constants.ts';
import {
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVapourPressure,
  vapourPressureFromHumidityRatio,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import { latentHeat } from '../../../src/physics/moist-air/latent-heat.ts';
import { moistAirHeatCapacity } from '../../../src/physics/moist-air/moist-air-heat-capacity.ts';
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
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { compare } from '../../reference/compare.ts';
import { moistAirEnthalpy } from '../../reference/physics/moist-air/moist-air-enthalpy.ts';
import { humidityRatioFromWetBulb, wetBulb } from '../../reference/physics/moist-air/wet-bulb.ts';

const near = (a: number, b: number): number => Math.abs(a / b - 1);

describe('one air, said in several ways', () => {
  test('the vapour density is the humidity ratio times the dry air', () => {
    for (const t of [-15, 0, 20, 45]) {
      for (const p of [70_000, 101_325]) {
        const pv = vapourPressureFromRelativeHumidity(t, 60);
        const w = humidityRatioFromVapourPressure(pv, p);
        expect(near(vapourDensity(pv, t), 1000 * w * dryAirDensity(t, w, p))).toBeLessThan(1e-12);
      }
    }
  });

  test('a kilogram of dry air fills its specific volume', () => {
    const w = 0.012;
    const dry = dryAirDensity(25, w, 98_000);
    expect(near(moistAirSpecificVolume(25, w, 98_000), 1 / dry)).toBeLessThan(1e-12);
  });

  test('moist air is lighter than dry', () => {
    expect(1.014 * dryAirDensity(20, 0.014, 101_325)).toBeLessThan(dryAirDensity(20, 0, 101_325));
  });

  test('ratio and pressure, pressure and humidity undo one another', () => {
    for (const w of [0, 1e-5, 0.007, 0.09, 0.9]) {
      const pv = vapourPressureFromHumidityRatio(w, 95_000);
      expect(humidityRatioFromVapourPressure(pv, 95_000)).toBeCloseTo(w, 12);
    }
    for (const rh of [0, 3, 50, 100]) {
      expect(relativeHumidity(vapourPressureFromRelativeHumidity(17, rh), 17)).toBeCloseTo(rh, 10);
    }
  });

  test('more than saturated is shown as more than 100 %', () => {
    expect(relativeHumidity(1.2 * saturationPressure(8), 8)).toBeCloseTo(120, 9);
  });

  test('the heat capacity is the slope of the enthalpy', () => {
    const slope = moistAirEnthalpy(21, 0.008) - moistAirEnthalpy(20, 0.008);
    expect(near(slope, moistAirHeatCapacity(0.008))).toBeLessThan(1e-10);
    expect(moistAirHeatCapacity(0)).toBe(1006);
  });
});

describe('wetBulb', () => {
  test('is the air temperature in saturated air and below it in any other', () => {
    for (const t of [-30, -5, 0, 0.5, 12, 35, 79]) {
      const saturated = humidityRatioFromRelativeHumidity(t, 100, 90_000);
      expect(wetBulb(t, saturated, 90_000)).toBeCloseTo(t, 8);
      expect(wetBulb(t, 0.7 * saturated, 90_000)).toBeLessThan(t);
    }
  });

  test('undoes humidityRatioFromWetBulb on both sides of freezing', () => {
    for (const [t, bulb] of [
      [-20, -20.3],
      [-1, -5],
      [10, 3],
      [30, 25],
      [50, 20],
    ] as const) {
      const w = humidityRatioFromWetBulb(t, bulb, 101_325);
      expect(wetBulb(t, w, 101_325)).toBeCloseTo(bulb, 8);
    }
  });

  test('gives the wet bulb where an iced one would fit too', () => {
    const wet = humidityRatioFromWetBulb(5, 0.1, 101_325);
    const iced = humidityRatioFromWetBulb(5, -0.1, 101_325);
    expect(iced).toBeGreaterThan(wet); // the ambiguity is real
    expect(wetBulb(5, iced, 101_325)).toBeGreaterThan(0);
  });

  test('finds the bulb of completely dry air', () => {
    for (const t of [-50, -10, 20, 80]) {
      const bulb = wetBulb(t, 0, 101_325);
      expect(bulb).toBeLessThan(t);
      expect(humidityRatioFromWetBulb(t, bulb + 1e-6, 101_325)).toBeCloseTo(0, 8);
    }
  });

  test('refuses air that holds more than it can, and impossible bulbs, in words', () => {
    expect(() => wetBulb(20, 0.02, 101_325)).toThrow(
      /^wetBulb: humidity ratio must be between 0 and 0\.0146\d* kg\/kg, which is saturation at 20 °C, got 0\.02 kg\/kg$/,
    );
    expect(() => humidityRatioFromWetBulb(40, 5, 101_325)).toThrow(
      'humidityRatioFromWetBulb: a wet bulb of 5 °C cannot be in air of 40 °C: ' +
        'completely dry air would cool it less',
    );
    expect(() => humidityRatioFromWetBulb(20, 21, 101_325)).toThrow(
      'humidityRatioFromWetBulb: wet-bulb temperature must be between -100 and 20 °C, got 21 °C',
    );
  });
});

test.each([
  [0, 0.695],
  [10, 0.688],
  [20, 0.682],
  [25, 0.678],
])('a litre at %s °C takes %s kWh to evaporate', (t, expected) => {
  compare({
    topic: 'Moist air',
    what: `latent heat at ${t} °C`,
    unit: 'kWh/L',
    source:
      'Stull 1988, page 641: 2.501 - 0.00237 t MJ/kg, in the manual of the R package bigleaf: latent.heat.vaporization',
    mark: 'published',
    expected,
    got: latentHeat(t) / 3.6e6,
    tolerance: { absolute: 0.0005 },
    because: 'half the last digit given here; our slope is 2.361',
  });
});

test('pressure falls with height', () => {
  for (let z = -5000; z < 11_000; z += 500) {
    expect(standardPressure(z + 500)).toBeLessThan(standardPressure(z));
  }
});

describe('what cannot be is refused', () => {
  const NAN = Number.NaN;
  test.each([
    ['humidity ratio of no number', () => humidityRatioFromVapourPressure(NAN, 1e5)],
    ['humidity ratio of negative pressure', () => humidityRatioFromVapourPressure(-1, 1e5)],
    ['humidity ratio in kPa', () => humidityRatioFromVapourPressure(1, 101)],
    ['vapour pressure of no number', () => vapourPressureFromHumidityRatio(NAN, 1e5)],
    ['vapour pressure of g/kg', () => vapourPressureFromHumidityRatio(7, 1e5)],
    ['relative humidity of no number', () => relativeHumidity(NAN, 20)],
    ['relative humidity in kelvins', () => relativeHumidity(1000, 293)],
    ['more than 100 %', () => vapourPressureFromRelativeHumidity(20, 100.1)],
    ['vapour density of no number', () => vapourDensity(1000, NAN)],
    ['vapour density of negative pressure', () => vapourDensity(-1, 20)],
    ['enthalpy of no number', () => moistAirEnthalpy(NAN, 0.01)],
    ['enthalpy of negative water', () => moistAirEnthalpy(20, -0.01)],
    ['heat capacity of no number', () => moistAirHeatCapacity(NAN)],
    ['volume of no number', () => moistAirSpecificVolume(20, 0.01, NAN)],
    ['density in hPa', () => dryAirDensity(20, 0.01, 1013)],
    ['latent heat beyond boiling', () => latentHeat(101)],
    ['latent heat of no number', () => latentHeat(NAN)],
    ['pressure in space', () => standardPressure(12_000)],
    ['pressure of no number', () => standardPressure(NAN)],
    ['wet bulb of no number', () => wetBulb(20, NAN, 1e5)],
  ])('%s', (_what, attempt) => {
    expect(attempt).toThrow(RangeError);
  });

  test('boiling air is named', () => {
    expect(() => humidityRatioFromRelativeHumidity(100, 100, 101_325)).toThrow(
      /^humidityRatioFromVapourPressure: vapour pressure must be at least 0 Pa and below the air pressure of 101325 Pa, got 1014\d\d\.?\d* Pa$/,
    );
    expect(() => humidityRatioFromVapourPressure(101_325, 101_325)).toThrow(RangeError);
  });
});

test('the density of dry air at 20 °C is that of an ideal gas of 28.966 g/mol', () => {
  const density = (101_325 * 0.028966) / (8.314463 * 293.15);
  expect(Math.abs(DRY_AIR_DENSITY - density)).toBeLessThan(0.0001); // its last digit
});
