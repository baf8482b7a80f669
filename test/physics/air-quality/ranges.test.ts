import { decayingSource } from '../../../src/physics/air-quality/decaying-source.ts';
import {
  basalMetabolicRate,
  carbonDioxidePerPerson,
} from '../../reference/physics/air-quality/carbon-dioxide-per-person.ts';
import {
  airChangesFromDecay,
  concentrationAfter,
  steadyConcentration,
} from '../../reference/physics/air-quality/concentration.ts';
import { infiltrationFactor } from '../../reference/physics/air-quality/infiltration-factor.ts';
import {
  cleanAirDeliveryRate,
  cleanAirOfFilter,
  shareLeftByPurifier,
} from '../../reference/physics/air-quality/purifier.ts';
import { testRanges } from '../test-ranges.ts';

const ROOM = { outdoor: 400, source: 1, flow: 0.01, volume: 30 };

testRanges([
  ['carbonDioxidePerPerson: activity', [0.5, 12], 'met', (x) => carbonDioxidePerPerson(x, 7)],
  ['carbonDioxidePerPerson: basal rate', [0.5, 15], 'MJ/d', (x) => carbonDioxidePerPerson(1, x)],
  ['carbonDioxidePerPerson: temperature', [-50, 60], '°C', (x) => carbonDioxidePerPerson(1, 7, x)],
  [
    'carbonDioxidePerPerson: pressure',
    [20_000, 180_000],
    'Pa',
    (x) => carbonDioxidePerPerson(1, 7, 20, x),
  ],
  [
    'carbonDioxidePerPerson: respiratory quotient',
    [0.7, 1],
    '',
    (x) => carbonDioxidePerPerson(1, 7, 20, 101_325, x),
  ],
  ['basalMetabolicRate: age', [0, 120], 'years', (x) => basalMetabolicRate('female', x, 60)],
  ['basalMetabolicRate: mass', [2, 250], 'kg', (x) => basalMetabolicRate('male', 40, x)],
  ['concentrationAfter: start', [0, 1e12], '', (x) => concentrationAfter(ROOM, x, 60)],
  ['concentrationAfter: time', [0, 1e12], 's', (x) => concentrationAfter(ROOM, 400, x)],
  ['airChangesFromDecay: outdoor', [0, 1e12], '', (x) => airChangesFromDecay(x + 2, x + 1, x, 1)],
  ['airChangesFromDecay: time', [1e-6, 1e6], 'h', (x) => airChangesFromDecay(900, 600, 400, x)],
  [
    'mixed room: outdoor concentration',
    [0, 1e12],
    '',
    (x) => steadyConcentration({ ...ROOM, outdoor: x }),
  ],
  ['mixed room: source', [0, 1e12], '', (x) => steadyConcentration({ ...ROOM, source: x })],
  ['mixed room: flow', [0, 1e12], 'm3/s', (x) => steadyConcentration({ ...ROOM, flow: x })],
  ['mixed room: volume', [1e-3, 1e9], 'm3', (x) => steadyConcentration({ ...ROOM, volume: x })],
  ['mixed room: loss', [0, 1e12], '1/s', (x) => steadyConcentration({ ...ROOM, loss: x })],
  ['decayingSource: amount', [0, 1e12], 'µg', (x) => decayingSource(x, 60, 0, 60)],
  ['decayingSource: time constant', [1, 1e10], 's', (x) => decayingSource(1, x, 0, 60)],
  ['decayingSource: from', [-1e12, 1e12], 's', (x) => decayingSource(1, 60, x, 1e12)],
  ['decayingSource: to', [-1e12, 1e12], 's', (x) => decayingSource(1, 60, -1e12, x)],
  ['infiltrationFactor: penetration', [0, 1], '', (x) => infiltrationFactor(x, 0.5, 0.4)],
  ['infiltrationFactor: air changes', [0, 1000], '1/h', (x) => infiltrationFactor(1, x, 0.4)],
  ['infiltrationFactor: deposition', [0, 1000], '1/h', (x) => infiltrationFactor(1, 0.5, x)],
  [
    'shareLeftByPurifier: clean-air delivery rate',
    [0, 100],
    'm3/s',
    (x) => shareLeftByPurifier(x, 30, 1e-4),
  ],
  ['shareLeftByPurifier: volume', [0.01, 1e6], 'm3', (x) => shareLeftByPurifier(0.05, x, 1e-4)],
  ['shareLeftByPurifier: other loss', [0, 1], '1/s', (x) => shareLeftByPurifier(0.05, 30, x)],
  ['cleanAirDeliveryRate: volume', [0.01, 1e6], 'm3', (x) => cleanAirDeliveryRate(x, 2e-3, 1e-3)],
  [
    'cleanAirDeliveryRate: decay without purifier',
    [0, 1],
    '1/s',
    (x) => cleanAirDeliveryRate(30, 50, x),
  ],
  [
    'cleanAirDeliveryRate: decay with purifier',
    [1e-3, 100],
    '1/s',
    (x) => cleanAirDeliveryRate(30, x, 1e-3),
  ],
  ['cleanAirOfFilter: flow', [0, 100], 'm3/s', (x) => cleanAirOfFilter(x, 0.9)],
  ['cleanAirOfFilter: share caught', [0, 1], '', (x) => cleanAirOfFilter(0.05, x)],
]);
