import {
  humidityRatioFromVapourPressure,
  vapourPressureFromHumidityRatio,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import { latentHeat } from '../../../src/physics/moist-air/latent-heat.ts';
import { moistAirHeatCapacity } from '../../../src/physics/moist-air/moist-air-heat-capacity.ts';
import { moistAirSpecificVolume } from '../../../src/physics/moist-air/moist-air-volume.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../../src/physics/moist-air/relative-humidity.ts';
import {
  saturationPressure,
  saturationPressureOverWater,
} from '../../../src/physics/moist-air/saturation-pressure.ts';
import { standardPressure } from '../../../src/physics/moist-air/standard-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { moistAirEnthalpy } from '../../reference/physics/moist-air/moist-air-enthalpy.ts';
import { humidityRatioFromWetBulb, wetBulb } from '../../reference/physics/moist-air/wet-bulb.ts';
import { testRanges } from '../test-ranges.ts';

testRanges([
  [
    'humidityRatioFromVapourPressure: air pressure',
    [20_000, 180_000],
    'Pa',
    (x) => humidityRatioFromVapourPressure(1000, x),
  ],
  [
    'vapourPressureFromHumidityRatio: humidity ratio',
    [0, 1],
    'kg/kg',
    (x) => vapourPressureFromHumidityRatio(x, 101_325),
  ],
  [
    'vapourPressureFromHumidityRatio: air pressure',
    [20_000, 180_000],
    'Pa',
    (x) => vapourPressureFromHumidityRatio(0.007, x),
  ],
  ['latentHeat: temperature', [-40, 100], '°C', (x) => latentHeat(x)],
  ['moistAirEnthalpy: temperature', [-100, 200], '°C', (x) => moistAirEnthalpy(x, 0.007)],
  ['moistAirEnthalpy: humidity ratio', [0, 1], 'kg/kg', (x) => moistAirEnthalpy(20, x)],
  ['moistAirHeatCapacity: humidity ratio', [0, 1], 'kg/kg', (x) => moistAirHeatCapacity(x)],
  [
    'moistAirSpecificVolume: temperature',
    [-100, 200],
    '°C',
    (x) => moistAirSpecificVolume(x, 0.007, 101_325),
  ],
  [
    'moistAirSpecificVolume: humidity ratio',
    [0, 1],
    'kg/kg',
    (x) => moistAirSpecificVolume(20, x, 101_325),
  ],
  [
    'moistAirSpecificVolume: air pressure',
    [20_000, 180_000],
    'Pa',
    (x) => moistAirSpecificVolume(20, 0.007, x),
  ],
  ['relativeHumidity: vapour pressure', [0, 200_000], 'Pa', (x) => relativeHumidity(x, 20)],
  [
    'vapourPressureFromRelativeHumidity: relative humidity',
    [0, 100],
    '%',
    (x) => vapourPressureFromRelativeHumidity(20, x),
  ],
  ['saturationPressure: temperature', [-100, 200], '°C', (x) => saturationPressure(x)],
  [
    'saturationPressureOverWater: temperature',
    [-100, 200],
    '°C',
    (x) => saturationPressureOverWater(x),
  ],
  ['standardPressure: elevation', [-5000, 11_000], 'm', (x) => standardPressure(x)],
  ['vapourDensity: vapour pressure', [0, 200_000], 'Pa', (x) => vapourDensity(x, 20)],
  ['vapourDensity: temperature', [-100, 200], '°C', (x) => vapourDensity(1000, x)],
  ['wetBulb: temperature', [-50, 80], '°C', (x) => wetBulb(x, 0, 101_325)],
  ['wetBulb: air pressure', [50_000, 120_000], 'Pa', (x) => wetBulb(20, 0.004, x)],
  [
    'humidityRatioFromWetBulb: temperature',
    [-50, 80],
    '°C',
    (x) => humidityRatioFromWetBulb(x, x, 101_325),
  ],
  [
    'humidityRatioFromWetBulb: air pressure',
    [50_000, 120_000],
    'Pa',
    (x) => humidityRatioFromWetBulb(20, 15, x),
  ],
]);
