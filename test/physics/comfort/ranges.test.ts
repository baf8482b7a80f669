import {
  adaptiveComfort,
  runningMeanOutdoor,
} from '../../reference/physics/comfort/adaptive-comfort.ts';
import { longTermComfort } from '../../reference/physics/comfort/long-term-comfort.ts';
import {
  predictedMeanVote,
  predictedPercentageDissatisfied,
} from '../../reference/physics/comfort/predicted-mean-vote.ts';
import { testRanges } from '../test-ranges.ts';

const CLIMATE = {
  airTemperature: 22,
  radiantTemperature: 22,
  airSpeed: 0.1,
  relativeHumidity: 50,
};

testRanges([
  ['adaptiveComfort: running mean', [10, 30], '°C', (x) => adaptiveComfort(x, 'II')],
  ['runningMeanOutdoor: memory', [0, 1], '', (x) => runningMeanOutdoor(10, 12, x)],
  ['longTermComfort: step', [1e-6, 1e6], 'h', (x) => longTermComfort([20], 18, 26, x)],
  ['longTermComfort: low', [-100, 200], '°C', (x) => longTermComfort([20], x, 200)],
  ['longTermComfort: high', [18, 200], '°C', (x) => longTermComfort([20], 18, x)],
  ['longTermComfort: temperature', [-100, 200], '°C', (x) => longTermComfort([20, x], 18, 26)],
  [
    'predictedPercentageDissatisfied: vote',
    [-10, 10],
    '',
    (x) => predictedPercentageDissatisfied(x),
  ],
  [
    'predictedMeanVote: air temperature',
    [10, 30],
    '°C',
    (x) => predictedMeanVote({ ...CLIMATE, airTemperature: x }, 1.2, 0.7),
  ],
  [
    'predictedMeanVote: radiant temperature',
    [10, 40],
    '°C',
    (x) => predictedMeanVote({ ...CLIMATE, radiantTemperature: x }, 1.2, 0.7),
  ],
  [
    'predictedMeanVote: air speed',
    [0, 1],
    'm/s',
    (x) => predictedMeanVote({ ...CLIMATE, airSpeed: x }, 1.2, 0.7),
  ],
  [
    'predictedMeanVote: relative humidity',
    [0, 100],
    '%',
    (x) => predictedMeanVote({ ...CLIMATE, relativeHumidity: x }, 1.2, 0.7),
  ],
  ['predictedMeanVote: metabolism', [0.8, 4], 'met', (x) => predictedMeanVote(CLIMATE, x, 0.7)],
  ['predictedMeanVote: clothing', [0, 2], 'clo', (x) => predictedMeanVote(CLIMATE, 1.2, x)],
]);
