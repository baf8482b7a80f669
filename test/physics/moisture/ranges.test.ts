import { humidityClass, humidityClassLimit } from '../../../src/physics/moisture/humidity-class.ts';
import { moistureEffusivity } from '../../../src/physics/moisture/moisture-effusivity.ts';
import { heatPerLitreAired } from '../../reference/physics/moisture/heat-per-litre-aired.ts';
import { materialEffusivity } from '../../reference/physics/moisture/material-effusivity.ts';
import {
  moistureDiffusivity,
  penetrationDepth,
} from '../../reference/physics/moisture/penetration-depth.ts';
import { surfaceTemperatureNeeded } from '../../reference/physics/moisture/temperature-factor-needed.ts';
import { testRanges } from '../test-ranges.ts';

testRanges([
  ['heatPerLitreAired: indoor', [-50, 60], '°C', (x) => heatPerLitreAired(x, 0.008, 5, 0.004)],
  [
    'heatPerLitreAired: humidity ratio indoors',
    [0, 1],
    'kg/kg',
    (x) => heatPerLitreAired(20, x, 5, 0),
  ],
  ['heatPerLitreAired: outdoor', [-60, 60], '°C', (x) => heatPerLitreAired(20, 0.008, x, 0.004)],
  [
    'heatPerLitreAired: humidity ratio outdoors',
    [0, 1],
    'kg/kg',
    (x) => heatPerLitreAired(20, 1, 5, x),
  ],
  ['humidityClass: excess', [-10_000, 10_000], 'Pa', (x) => humidityClass(x, 5)],
  ['humidityClass: excess', [-10_000, 10_000], 'g/m3', (x) => humidityClass(x, 5, 'g/m3')],
  ['humidityClassLimit: outdoor temperature', [-60, 60], '°C', (x) => humidityClassLimit(2, x)],
  [
    'moistureEffusivity: moisture buffer value',
    [0, 100],
    'g/(m2 %RH)',
    (x) => moistureEffusivity(x, 2800),
  ],
  ['moistureEffusivity: saturation pressure', [1, 1e5], 'Pa', (x) => moistureEffusivity(1, x)],
  [
    'materialEffusivity: permeability',
    [0, 2e-10],
    'kg/(m s Pa)',
    (x) => materialEffusivity(x, 100, 2800),
  ],
  [
    'materialEffusivity: moisture capacity',
    [0, 2000],
    'kg/m3',
    (x) => materialEffusivity(1e-11, x, 2800),
  ],
  [
    'materialEffusivity: saturation pressure',
    [1, 1e5],
    'Pa',
    (x) => materialEffusivity(1e-11, 100, x),
  ],
  ['penetrationDepth: diffusivity', [1e-18, 1], 'm2/s', (x) => penetrationDepth(x, 86_400)],
  ['penetrationDepth: period', [1, 1e12], 's', (x) => penetrationDepth(1e-7, x)],
  [
    'moistureDiffusivity: permeability',
    [1e-16, 2e-10],
    'kg/(m s Pa)',
    (x) => moistureDiffusivity(x, 100, 2800),
  ],
  [
    'moistureDiffusivity: moisture capacity',
    [0.01, 2000],
    'kg/m3',
    (x) => moistureDiffusivity(1e-11, x, 2800),
  ],
  [
    'moistureDiffusivity: saturation pressure',
    [1, 1e5],
    'Pa',
    (x) => moistureDiffusivity(1e-11, 100, x),
  ],
  [
    'surfaceTemperatureNeeded: critical humidity',
    [1, 100],
    '%',
    (x) => surfaceTemperatureNeeded(1200, x),
  ],
]);
