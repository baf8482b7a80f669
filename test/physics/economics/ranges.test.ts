import { annualisedCost, annuityFactor } from '../../../src/physics/economics/annuity-factor.ts';
import {
  netPresentValue,
  simplePayback,
} from '../../../src/physics/economics/net-present-value.ts';
import { testRanges } from '../test-ranges.ts';

testRanges([
  ['annuityFactor: rate', [0, 1], '', (x) => annuityFactor(x, 10)],
  ['annuityFactor: years', [0, Number.POSITIVE_INFINITY], '', (x) => annuityFactor(0.03, x)],
  ['annualisedCost: price', [0, 1e12], '', (x) => annualisedCost(x, 0.03, 10)],
  ['netPresentValue: investment', [0, 1e12], '', (x) => netPresentValue(x, 10, 0.03, 10)],
  ['netPresentValue: yearly saving', [-1e12, 1e12], '', (x) => netPresentValue(10, x, 0.03, 10)],
  ['simplePayback: investment', [0, 1e12], '', (x) => simplePayback(x, 10)],
  ['simplePayback: yearly saving', [-1e12, 1e12], '', (x) => simplePayback(10, x)],
]);
