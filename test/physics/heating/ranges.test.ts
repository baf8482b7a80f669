import { heatPumpCop } from '../../reference/physics/heating/heat-pump-cop.ts';
import { idealHeatingCop } from '../../reference/physics/heating/ideal-heating-cop.ts';
import {
  coolingTime,
  offPeriodReduction,
  unheatedTemperature,
} from '../../reference/physics/heating/off-period.ts';
import { setbackSaving } from '../../reference/physics/heating/setback-saving.ts';
import { setpointSaving } from '../../reference/physics/heating/setpoint-saving.ts';
import { utilisationFactor } from '../../reference/physics/heating/utilisation-factor.ts';
import { timeConstant, warmUpTime } from '../../reference/physics/heating/warm-up-time.ts';
import { testRanges } from '../test-ranges.ts';

const NIGHT = { indoor: 20, outdoor: 5, depth: 4, hours: 8, timeConstant: 40 };

testRanges([
  ['heatPumpCop: source temperature', [-60, 60], '°C', (x) => heatPumpCop(x, 90)],
  ['heatPumpCop: water temperature', [0, 90], '°C', (x) => heatPumpCop(-5, x)],
  ['heatPumpCop: quality', [0.1, 0.8], '', (x) => heatPumpCop(5, 45, x)],
  ['idealHeatingCop: source temperature', [-60, 60], '°C', (x) => idealHeatingCop(x, 100)],
  ['idealHeatingCop: sink temperature', [-60, 120], '°C', (x) => idealHeatingCop(-60, x)],
  ['offPeriodReduction: hours off', [0, 24], 'h', (x) => offPeriodReduction(x, 40, 20, 5)],
  [
    'offPeriodReduction: temperature when heated',
    [-60, 200],
    '°C',
    (x) => offPeriodReduction(8, 40, x, -60),
  ],
  [
    'offPeriodReduction: temperature unheated',
    [-60, 200],
    '°C',
    (x) => offPeriodReduction(8, 40, 200, x),
  ],
  ['coolingTime: time constant', [0, 1e4], 'h', (x) => coolingTime(x)],
  [
    'unheatedTemperature: temperature when heated',
    [-60, 200],
    '°C',
    (x) => unheatedTemperature(x, 5, 100, 200),
  ],
  [
    'unheatedTemperature: outdoor temperature',
    [-60, 60],
    '°C',
    (x) => unheatedTemperature(20, x, 100, 200),
  ],
  ['unheatedTemperature: useful gains', [0, 1e6], 'W', (x) => unheatedTemperature(20, 5, x, 200)],
  [
    'unheatedTemperature: loss coefficient',
    [0.001, 1e6],
    'W/K',
    (x) => unheatedTemperature(20, 5, 100, x),
  ],
  [
    'unheatedTemperature: responsiveness',
    [0, 1],
    '',
    (x) => unheatedTemperature(20, 5, 100, 200, x),
  ],
  [
    'setbackSaving: indoor',
    [-50, 60],
    '°C',
    (x) => setbackSaving({ ...NIGHT, indoor: x, outdoor: -60 }),
  ],
  [
    'setbackSaving: outdoor',
    [-60, 60],
    '°C',
    (x) => setbackSaving({ ...NIGHT, indoor: 60, outdoor: x, depth: 0 }),
  ],
  ['setbackSaving: depth', [0, 15], 'K', (x) => setbackSaving({ ...NIGHT, depth: x })],
  ['setbackSaving: hours', [0, 24], 'h', (x) => setbackSaving({ ...NIGHT, hours: x })],
  [
    'setbackSaving: time constant',
    [0, 1e5],
    'h',
    (x) => setbackSaving({ ...NIGHT, timeConstant: x }),
  ],
  ['setpointSaving: mean difference', [1, 100], 'K', (x) => setpointSaving(x)],
  ['utilisationFactor: gain/loss ratio', [0, 1e6], '', (x) => utilisationFactor(x, 3)],
  ['utilisationFactor: exponent', [0.5, 1000], '', (x) => utilisationFactor(0.5, x)],
  ['warmUpTime: time constant', [0, 1e5], 'h', (x) => warmUpTime(x, 16, 20, 40)],
  ['warmUpTime: start', [-100, 1000], '°C', (x) => warmUpTime(20, x, 20, 40)],
  ['warmUpTime: target', [-100, 1000], '°C', (x) => warmUpTime(20, 16, x, 40)],
  ['warmUpTime: reachable temperature', [-100, 1000], '°C', (x) => warmUpTime(20, 16, 20, x)],
  ['timeConstant: capacity', [0, 1e12], 'J/K', (x) => timeConstant(x, 200)],
  ['timeConstant: loss coefficient', [0.001, 1e6], 'W/K', (x) => timeConstant(1e7, x)],
]);
