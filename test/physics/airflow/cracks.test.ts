import { describe, expect, test } from 'vitest';
import { leakageAreaFromAch50 } from '../../../src/physics/airflow/blower-door.ts';
import { CRACK_EXPONENT, crackFlow } from '../../../src/physics/airflow/crack-flow.ts';
import { orificeFlow } from '../../../src/physics/airflow/orifice-flow.ts';
import {
  type FlowAt,
  quadraticFlow,
  quadraticLaw,
} from '../../../src/physics/airflow/quadratic-law.ts';
import { compare } from '../../reference/compare.ts';

const TOPIC = 'Cracks and holes';
/** Crack coefficient of a home of 250 m3 with 8 air changes an hour at 50 Pa. [m3/(s Pa^n)] */
const HOME = (8 * 250) / 3600 / 50 ** CRACK_EXPONENT;

describe('crackFlow', () => {
  test('carries a blower-door figure down by the power law', () => {
    const figures = [
      ['flow at 1 Pa', 1, 157.289],
      ['flow at 4 Pa', 4, 387.292],
      ['flow at 10 Pa', 10, 702.59],
    ] as const;
    for (const [what, pressure, expected] of figures) {
      compare({
        topic: TOPIC,
        what: `${what}, 250 m3 with 8 /h at 50 Pa`,
        unit: 'm3/h',
        source: 'power law, exponent 0.65',
        mark: 'closed form',
        expected,
        got: 3600 * crackFlow(HOME, CRACK_EXPONENT, pressure),
        tolerance: { absolute: 0.006 },
        because: 'rounding of the figure',
      });
    }
  });

  test('is a straight line below a tenth of a pascal', () => {
    // C 50: slope 50 x 0.1^-0.35 = 111.936, by hand; the power law would give 7.13346 at 0.05 Pa.
    expect(crackFlow(50, 0.65, 0.05)).toBeCloseTo(5.5968, 4);
    expect(crackFlow(50, 0.65, -0.05)).toBeCloseTo(-5.5968, 4);
    expect(crackFlow(50, 0.65, 0.1)).toBeCloseTo(50 * 0.1 ** 0.65, 9);
  });

  test('cracks in a row pass what their sum of resistances passes', () => {
    // (10^(-1/n) + 5^(-1/n))^(-n) = 4.12532, by hand from equal flows.
    const [n, both] = [0.65, 4.12532];
    const first = (both / 10) ** (1 / n);
    expect(first + (both / 5) ** (1 / n)).toBeCloseTo(1, 5);
    expect(crackFlow(10, n, first)).toBeCloseTo(crackFlow(5, n, 1 - first), 4);
  });
});

/** What that home's cracks let through at a pressure. */
const at = (pressure: number): FlowAt => ({ pressure, flow: crackFlow(HOME, 0.65, pressure) });

describe('quadraticLaw', () => {
  const law = quadraticLaw(at(4), at(50));
  const flowAt = (dp: number): number => quadraticFlow(law, dp);

  test('meets the power law at 4 and 50 Pa', () => {
    expect(flowAt(4)).toBeCloseTo(crackFlow(HOME, 0.65, 4), 12);
    expect(flowAt(50)).toBeCloseTo(crackFlow(HOME, 0.65, 50), 12);
    const terms = [
      ['friction', law.a, 24.4968, 5e-5, 'Pa s/m3'],
      ['inertia', law.b, 117.906, 5e-4, 'Pa s2/m6'],
      ['flow at 1 Pa', 3600 * flowAt(1), 125.8, 0.005, 'm3/h'],
      ['flow at 10 Pa', 3600 * flowAt(10), 739.14, 0.005, 'm3/h'],
    ] as const;
    for (const [what, got, expected, absolute, unit] of terms) {
      compare({
        ...{ topic: TOPIC, what: `quadratic law of the same home, ${what}`, unit, got, expected },
        ...{ source: 'matched by hand at 4 and 50 Pa', mark: 'closed form' },
        ...{ tolerance: { absolute }, because: 'rounding of the figure' },
      });
    }
  });

  test('knows holes, which have no friction, and pores, which have no inertia', () => {
    const hole = quadraticLaw(
      { pressure: 4, flow: orificeFlow(0.01, 4, 1.2) },
      { pressure: 50, flow: orificeFlow(0.01, 50, 1.2) },
    );
    expect(hole.a).toBeCloseTo(0, 6);
    expect(hole.b).toBeCloseTo(1.2 / (2 * (0.6 * 0.01) ** 2), 6);
    const pores = quadraticLaw({ pressure: 4, flow: 0.04 }, { pressure: 50, flow: 0.5 });
    expect(pores.a).toBeCloseTo(100, 9);
    expect(pores.b).toBeCloseTo(0, 9);
  });

  test('turns round: a flow from its pressure, one way and the other', () => {
    const quadraticPressure = ({ a, b }: typeof law, q: number): number =>
      (a + b * Math.abs(q)) * q;
    for (const flow of [1e-9, 1e-4, 0.03, 0.6]) {
      expect(flowAt(quadraticPressure(law, flow)) / flow).toBeCloseTo(1, 12);
      expect(quadraticPressure(law, -flow)).toBe(-quadraticPressure(law, flow));
      expect(flowAt(-quadraticPressure(law, flow))).toBe(-flowAt(quadraticPressure(law, flow)));
    }
    expect(flowAt(0)).toBe(0);
    expect(quadraticFlow({ a: 0, b: 4 }, 0)).toBe(0);
    expect(quadraticFlow({ a: 100, b: 0 }, 7)).toBeCloseTo(0.07, 15);
  });

  test('grows with the pressure, and is a straight line near zero', () => {
    for (const dp of [-20, -1, -0.01, 0, 0.01, 1, 20]) {
      expect(flowAt(dp + 0.001)).toBeGreaterThan(flowAt(dp));
    }
    expect((law.a * flowAt(1e-6)) / 1e-6).toBeCloseTo(1, 6);
  });

  test('passes less than the power law below 4 Pa and more above, by what its page says', () => {
    // Quotients of the two laws worked out apart, exponent 0.65; in per cent.
    const off = [0.5, 1, 2, 10].map((dp) => 100 * (flowAt(dp) / crackFlow(HOME, 0.65, dp) - 1));
    expect(off.map((x) => x.toFixed(1))).toEqual(['-32.8', '-20.0', '-8.5', '5.2']);
  });

  test('stays near the power law of a house in ordinary weather where it is matched there', () => {
    const low = quadraticLaw(at(1), at(10));
    const off = (dp: number): number =>
      100 * (quadraticFlow(low, dp) / crackFlow(HOME, 0.65, dp) - 1);
    expect([1, 10].map((dp) => off(dp).toFixed(9).replace('-', ''))).toEqual([
      '0.000000000',
      '0.000000000',
    ]);
    // Worked out apart, exponent 0.65; in per cent.
    expect([0.5, 2, 4, 20].map((dp) => off(dp).toFixed(1))).toEqual(['-7.9', '4.0', '4.2', '-5.3']);
  });

  test('refuses flows that no crack has', () => {
    for (const flow of [0.2, 1.3, Number.NaN]) {
      // From the root of 12.5 to 12.5 times, a billionth allowed for rounding.
      expect(() => quadraticLaw({ pressure: 4, flow: 0.1 }, { pressure: 50, flow })).toThrow(
        /^quadraticLaw: higher over lower flow must be between 3\.5355\d* and 12\.50000001\d*, got (2|13|NaN)$/,
      );
    }
  });
});

describe('orificeFlow', () => {
  test('follows Bernoulli', () => {
    for (const [pressure, expected] of [
      [1, 0.0774597],
      [4, 0.154919],
    ] as const) {
      compare({
        ...{ topic: TOPIC, what: `hole of 0.1 m2 at ${pressure} Pa`, unit: 'm3/s', expected },
        ...{ source: 'Bernoulli, coefficient 0.6, 1.2 kg/m3', mark: 'closed form' },
        ...{ got: orificeFlow(0.1, pressure, 1.2) },
        ...{ tolerance: { absolute: 5e-7 }, because: 'rounding of the figure' },
      });
    }
    expect(orificeFlow(0.1, -4, 1.2)).toBe(-orificeFlow(0.1, 4, 1.2));
    expect(orificeFlow(0.1, 0, 1.2)).toBe(0);
  });

  test('two in a row pass as one of 0.00894 m2', () => {
    // 1/sqrt(1/0.02^2 + 1/0.01^2) = 0.00894427, by hand, to six digits.
    const one = orificeFlow(0.00894427, 10, 1.2);
    const first = 10 * (0.00894427 / 0.02) ** 2;
    expect(orificeFlow(0.02, first, 1.2)).toBeCloseTo(one, 7);
    expect(orificeFlow(0.01, 10 - first, 1.2)).toBeCloseTo(one, 7);
  });
});

test('a hole without contraction of its jet leaks at 4 Pa as the cracks of a home do', () => {
  compare({
    ...{ topic: TOPIC, what: 'effective leakage area of that home', unit: 'cm2' },
    ...{ source: 'power law and Bernoulli at 4 Pa, 20 °C', mark: 'closed form' },
    ...{ expected: 417.35, got: 1e4 * leakageAreaFromAch50(8, 250) },
    ...{ tolerance: { relative: 6e-5 }, because: 'five digits, and a density of 1.204 kg/m3' },
  });
});
