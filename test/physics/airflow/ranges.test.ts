import { leakageAreaFromAch50 } from '../../../src/physics/airflow/blower-door.ts';
import { ach, renewalTime } from '../../reference/physics/airflow/air-changes.ts';
import { combineUnbalanced } from '../../reference/physics/airflow/combine-unbalanced.ts';
import { crossFlow } from '../../reference/physics/airflow/cross-flow.ts';
import { infiltrationByAch50Over20 } from '../../reference/physics/airflow/infiltration-by-rule.ts';
import { leakageCoefficients } from '../../reference/physics/airflow/leakage-coefficients.ts';
import { leakageFlow } from '../../reference/physics/airflow/leakage-flow.ts';
import {
  stackCoefficient,
  stackFactor,
  windFactor,
} from '../../reference/physics/airflow/sherman-grimsrud.ts';
import {
  singleSidedStackFlow,
  singleSidedWindFlow,
} from '../../reference/physics/airflow/single-sided-orifice.ts';
import { testRanges } from '../test-ranges.ts';

const LEAKS = { area: 0.05, stack: 1.5e-4, wind: 1e-4 };

testRanges([
  ['ach: flow', [0, 1e4], 'm3/s', (x) => ach(x, 30)],
  ['ach: volume', [0.01, 1e6], 'm3', (x) => ach(0.01, x)],
  ['renewalTime: volume', [0.01, 1e6], 'm3', (x) => renewalTime(x, 0.01)],
  ['renewalTime: flow', [0, 1e4], 'm3/s', (x) => renewalTime(30, x)],
  ['renewalTime: share', [0, 0.9999], '', (x) => renewalTime(30, 0.01, x)],
  ['leakageAreaFromAch50: ach50', [0, 100], '1/h', (x) => leakageAreaFromAch50(x, 250)],
  ['infiltrationByAch50Over20: ach50', [0, 100], '1/h', (x) => infiltrationByAch50Over20(x)],
  ['leakageAreaFromAch50: volume', [0.01, 1e6], 'm3', (x) => leakageAreaFromAch50(5, x)],
  ['combineUnbalanced: natural flow', [0, 1e4], 'm3/s', (x) => combineUnbalanced(x, 1, 1)],
  ['combineUnbalanced: balanced flow', [0, 1e4], 'm3/s', (x) => combineUnbalanced(1, x, 1)],
  ['combineUnbalanced: unbalanced flow', [0, 1e4], 'm3/s', (x) => combineUnbalanced(1, 1, x)],
  ['crossFlow: windward area', [0, 100], 'm2', (x) => crossFlow(x, 1, 1, 3, 1)],
  ['crossFlow: leeward area', [0, 100], 'm2', (x) => crossFlow(1, x, 1, 3, 1)],
  ['crossFlow: door area', [0, Number.POSITIVE_INFINITY], 'm2', (x) => crossFlow(1, 1, x, 3, 1)],
  ['crossFlow: wind speed', [0, 100], 'm/s', (x) => crossFlow(1, 1, 1, x, 1)],
  ['crossFlow: pressure difference coefficient', [0, 3], '', (x) => crossFlow(1, 1, 1, 3, x)],
  ['leakageCoefficients: storeys', [1, 3], '', (x) => leakageCoefficients(x, 3)],
  ['leakageFlow: area', [0, 100], 'm2', (x) => leakageFlow({ ...LEAKS, area: x }, 10, 3)],
  [
    'leakageFlow: stack coefficient',
    [0, 0.01],
    '(L/s)2/(cm4 K)',
    (x) => leakageFlow({ ...LEAKS, stack: x }, 10, 3),
  ],
  [
    'leakageFlow: wind coefficient',
    [0, 0.01],
    '(L/s)2/(cm4 (m/s)2)',
    (x) => leakageFlow({ ...LEAKS, wind: x }, 10, 3),
  ],
  ['leakageFlow: temperature difference', [-100, 100], 'K', (x) => leakageFlow(LEAKS, x, 3)],
  ['leakageFlow: wind speed', [0, 100], 'm/s', (x) => leakageFlow(LEAKS, 10, x)],
  ['stackFactor: share of floor and ceiling', [0, 1], '', (x) => stackFactor(x, 0)],
  ['stackFactor: imbalance', [-0.5, 0.5], '', (x) => stackFactor(0.5, x)],
  ['stackCoefficient: stack factor', [0, 0.5], '', (x) => stackCoefficient(x, 5, 20)],
  ['stackCoefficient: height', [1, 30], 'm', (x) => stackCoefficient(0.3, x, 20)],
  ['stackCoefficient: temperature', [-50, 50], '°C', (x) => stackCoefficient(0.3, 5, x)],
  [
    'windFactor: share of floor and ceiling',
    [0, 1],
    '',
    (x) => windFactor(3, x, { height: 5, terrain: 3 }),
  ],
  ['windFactor: height', [1, 30], 'm', (x) => windFactor(3, 0.5, { height: x, terrain: 3 })],
  ['singleSidedStackFlow: area', [0, 50], 'm2', (x) => singleSidedStackFlow(x, 1, 10, 15)],
  ['singleSidedStackFlow: height', [0, 10], 'm', (x) => singleSidedStackFlow(1, x, 10, 15)],
  ['singleSidedStackFlow: difference', [-100, 100], 'K', (x) => singleSidedStackFlow(1, 1, x, 15)],
  [
    'singleSidedStackFlow: mean temperature',
    [-50, 60],
    '°C',
    (x) => singleSidedStackFlow(1, 1, 10, x),
  ],
  ['singleSidedWindFlow: area', [0, 50], 'm2', (x) => singleSidedWindFlow(x, 3)],
  ['singleSidedWindFlow: wind speed', [0, 100], 'm/s', (x) => singleSidedWindFlow(1, x)],
]);
