import { describe, expect, test } from 'vitest';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import {
  humidityRatioFromRelativeHumidity,
  vapourPressureFromHumidityRatio,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import { moistAirHeatCapacity } from '../../../src/physics/moist-air/moist-air-heat-capacity.ts';
import { dryAirDensity } from '../../../src/physics/moist-air/moist-air-volume.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressureOverWater } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { type Comparison, compare } from '../../reference/compare.ts';
import { heatPerLitreAired } from '../../reference/physics/moisture/heat-per-litre-aired.ts';

const NAN = Number.NaN;
const SEA_LEVEL = 101_325;
const KWH = 3.6e6;

/** As weather services mean it: over water also in frost. [Pa] */
const pressure = (t: number, rh: number): number => (rh / 100) * saturationPressureOverWater(t);
/** [g/m3] */
const density = (t: number, rh: number): number => vapourDensity(pressure(t, rh), t);
const ratio = (t: number, rh: number): number =>
  humidityRatioFromRelativeHumidity(t, rh, SEA_LEVEL);

const worked = (
  row: Pick<Comparison, 'what' | 'unit' | 'expected' | 'got'>,
  absolute: number,
): void =>
  compare({
    topic: 'Everyday damp',
    source: 'worked out apart with a Magnus formula, as householders do',
    mark: 'closed form',
    tolerance: { absolute },
    because: 'the last digit printed, and 0.3 % between formulas of saturation',
    ...row,
  });

describe('water in a cubic metre', () => {
  test.each([
    [20, 60, 10.3],
    [18, 65, 10.0],
    [5, 85, 5.8],
    [5, 95, 6.5],
    [0, 80, 3.9],
    [-5, 80, 2.7],
    [10, 90, 8.4],
    [26, 55, 13.4],
  ])('air of %s °C and %s %%', (t, rh, expected) => {
    const what = `water in air of ${t} °C and ${rh} %`;
    worked({ what, unit: 'g/m3', expected, got: density(t, rh) }, 0.1);
  });

  test.each([
    [20, 60, 12],
    [26, 55, 16],
  ])('dew point of air of %s °C and %s %%', (t, rh, expected) => {
    const what = `dew point of air of ${t} °C and ${rh} %`;
    const got = dewPoint(vapourPressureFromRelativeHumidity(t, rh));
    worked({ what, unit: '°C', expected, got }, expected === 12 ? 0.06 : 0.5);
  });

  test.each([
    [5, 85, 32],
    [0, 80, 21],
    [-5, 80, 14],
    [10, 90, 47],
  ])('air of %s °C and %s %% warmed to 20 °C', (t, rh, expected) => {
    const what = `humidity of air of ${t} °C and ${rh} % warmed to 20 °C`;
    worked({ what, unit: '%', expected, got: relativeHumidity(pressure(t, rh), 20) }, 0.6);
  });
});

describe('what a sensor is off by', () => {
  const read = (t: number, rh: number): readonly [grams: number, dew: number] => [
    density(t, rh),
    dewPoint(vapourPressureFromRelativeHumidity(t, rh)),
  ];
  const [grams, dew] = read(20, 60);
  const [gramsDamp, dewDamp] = read(20, 63);
  const [gramsWarm, dewWarm] = read(20.3, 60);
  test.each([
    ['3 % of humidity, in water', 'g/m3', 0.52, gramsDamp - grams],
    ['3 % of humidity, in dew point', 'K', 0.74, dewDamp - dew],
    ['0.3 K, in water', 'g/m3', 0.18, gramsWarm - grams],
    ['0.3 K, in dew point', 'K', 0.28, dewWarm - dew],
  ])('%s', (what, unit, expected, got) => {
    worked({ what: `sensor off by ${what}, at 20 °C and 60 %`, unit, expected, got }, 0.01);
  });

  test.each([
    [1, 61],
    [2, 57],
    [3, 54],
    [5, 48],
  ])('warmer by %s K, it shows true 18 °C and 65 %% as %s %%', (bias, expected) => {
    const what = `sensor warmer by ${bias} K in air of 18 °C and 65 %`;
    const got = relativeHumidity(vapourPressureFromRelativeHumidity(18, 65), 18 + bias);
    worked({ what, unit: '%', expected, got }, 0.6);
  });
});

describe('what airing costs', () => {
  test('one change of 200 m3 at 15 K', () => {
    const w = ratio(20, 60);
    const heat = dryAirDensity(20, w, SEA_LEVEL) * 200 * moistAirHeatCapacity(w) * 15;
    worked({ what: 'one change of 200 m3, 15 K', unit: 'kWh', expected: 1, got: heat / KWH }, 0.05);
  });

  /** As householders work it out: grams a cubic metre, each at its own temperature. [kWh/L] */
  const shortcut = (rh: number, outdoor: number, rhOutdoor: number): number =>
    (0.336 * (20 - outdoor)) / (density(20, rh) - density(outdoor, rhOutdoor));
  const exact = (rh: number, outdoor: number, rhOutdoor: number): number => {
    const w = vapourRatio(outdoor, rhOutdoor);
    return heatPerLitreAired(20, ratio(20, rh), outdoor, w) / KWH;
  };
  const vapourRatio = (t: number, rh: number): number => {
    const p = pressure(t, rh);
    return (0.621945 * p) / (SEA_LEVEL - p);
  };
  const cases = [
    [60, 0, 85, 1.08],
    [60, 5, 85, 1.1],
    [60, 8, 90, 1.38],
    [60, 10, 90, 1.76],
    [70, 0, 85, 0.84],
    [70, 5, 85, 0.8],
    [70, 8, 90, 0.87],
    [70, 10, 90, 0.92],
    [70, 12, 95, 1.37],
    [70, 14, 90, 1.63],
  ] as const;

  test.each(cases)('a litre by the shortcut, %s %% inside, %s °C and %s %% outside', (...row) => {
    const [rh, outdoor, rhOutdoor, expected] = row;
    const what = `heat a litre aired, 20 °C ${rh} % inside, ${outdoor} °C ${rhOutdoor} % outside, by grams a cubic metre`;
    const got = shortcut(rh, outdoor, rhOutdoor);
    worked({ what, unit: 'kWh/L', expected, got }, 0.02);
  });

  test.each(cases)('is less by kilograms of dry air, %s %%, %s °C and %s %%', (...row) => {
    const [rh, outdoor, rhOutdoor] = row;
    expect(exact(rh, outdoor, rhOutdoor)).toBeLessThan(shortcut(rh, outdoor, rhOutdoor));
    expect(exact(rh, outdoor, rhOutdoor)).toBeGreaterThan(0.7 * shortcut(rh, outdoor, rhOutdoor));
  });

  test('the heat that leaves with the air, litre by litre, is what warms the fresh air', () => {
    // 100 kg of dry air leave room air and come in from 5 °C and 85 %.
    const [inside, outside] = [ratio(20, 60), vapourRatio(5, 85)];
    const litres = 100 * (inside - outside);
    const warming = 100 * (1006 + 1860 * outside) * 15;
    expect(heatPerLitreAired(20, inside, 5, outside) * litres).toBeCloseTo(warming, 3);
    expect(vapourPressureFromHumidityRatio(outside, SEA_LEVEL)).toBeCloseTo(pressure(5, 85), 6);
  });

  test('mild damp air dries hardly, or makes it damper', () => {
    expect(exact(60, 12, 95)).toBeGreaterThan(4);
    expect(exact(60, 14, 90)).toBe(Number.POSITIVE_INFINITY);
    expect(heatPerLitreAired(20, 0.008, 25, 0.005)).toBeLessThan(0);
    expect(heatPerLitreAired(20, 0.008, 25, 0.008)).toBe(Number.POSITIVE_INFINITY);
  });

  test.each([
    ['no room', () => heatPerLitreAired(NAN, 0.008, 5, 0.004)],
    ['no outdoors', () => heatPerLitreAired(20, 0.008, NAN, 0.004)],
    ['percent', () => heatPerLitreAired(20, 60, 5, 0.004)],
    ['no water outdoors', () => heatPerLitreAired(20, 0.008, 5, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});
