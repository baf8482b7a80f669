import {
  compressorDrying,
  compressorWorkingShare,
} from '../../../src/physics/equipment/compressor-drying.ts';
import {
  dehumidifierPower,
  waterPerDrying,
} from '../../../src/physics/equipment/dehumidifier-output.ts';
import { desiccantDrying } from '../../../src/physics/equipment/desiccant-drying.ts';
import { stoveHeatOver, woodRate } from '../../../src/physics/equipment/stove-burn.ts';
import {
  dehumidifierHeat,
  dehumidifierHeatPerLitre,
} from '../../reference/physics/equipment/dehumidifier-heat.ts';
import { woodEnergy } from '../../reference/physics/equipment/wood-energy.ts';
import { testRanges } from '../test-ranges.ts';

testRanges([
  ['compressorDrying: temperature', [-40, 60], '°C', (x) => compressorDrying(x, 60)],
  ['compressorDrying: relative humidity', [0, 200], '%', (x) => compressorDrying(20, x)],
  ['compressorWorkingShare: temperature', [-40, 60], '°C', (x) => compressorWorkingShare(x)],
  ['desiccantDrying: temperature', [-40, 60], '°C', (x) => desiccantDrying(x, 60)],
  ['desiccantDrying: relative humidity', [0, 200], '%', (x) => desiccantDrying(20, x)],
  ['dehumidifierHeat: power', [0, 1e5], 'W', (x) => dehumidifierHeat(x, 1e-4, 20)],
  ['dehumidifierHeat: water rate', [0, 1], 'kg/s', (x) => dehumidifierHeat(200, x, 20)],
  [
    'dehumidifierHeatPerLitre: efficiency',
    [0.05, 20],
    'L/kWh',
    (x) => dehumidifierHeatPerLitre(x, 20),
  ],
  ['waterPerDrying: rated water', [0, 1], 'kg/s', (x) => waterPerDrying('desiccant', x, 20, 60)],
  [
    'dehumidifier: rated temperature',
    [5, 60],
    '°C',
    (x) => waterPerDrying('desiccant', 1e-4, x, 60),
  ],
  [
    'dehumidifier: rated relative humidity',
    [1, 100],
    '%',
    (x) => waterPerDrying('desiccant', 1e-4, 20, x),
  ],
  [
    'dehumidifierPower: rated power',
    [0, 1e5],
    'W',
    (x) => dehumidifierPower('compressor', x, 20, 60, 20, 60),
  ],
  [
    'dehumidifierPower: temperature',
    [-40, 60],
    '°C',
    (x) => dehumidifierPower('compressor', 200, 20, 60, x, 60),
  ],
  [
    'dehumidifierPower: relative humidity',
    [0, 200],
    '%',
    (x) => dehumidifierPower('compressor', 200, 20, 60, 20, x),
  ],
  ['stove: batch', [0, 100], 'kg', (x) => stoveHeatOver(x, 15e6, 0.75, 3600, 0, 600)],
  ['stove: energy', [0, 5e7], 'J/kg', (x) => stoveHeatOver(1.5, x, 0.75, 3600, 0, 600)],
  ['stove: efficiency', [0, 1], '', (x) => stoveHeatOver(1.5, 15e6, x, 3600, 0, 600)],
  ['stove: interval', [60, 1e6], 's', (x) => stoveHeatOver(1.5, 15e6, 0.75, x, 0, 600)],
  [
    'stove: time since refuelling',
    [-1e12, 1e12],
    's',
    (x) => stoveHeatOver(1.5, 15e6, 0.75, 3600, x, 1e12 + 1e-9),
  ],
  ['stove: batch', [0, 100], 'kg', (x) => woodRate(x, 3600, 0, 600)],
  ['woodEnergy: moisture', [0, 0.6], '', (x) => woodEnergy(x)],
]);
