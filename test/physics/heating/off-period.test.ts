import { describe, expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  coolingTime,
  offPeriodReduction,
  unheatedTemperature,
} from '../../reference/physics/heating/off-period.ts';
import { timeConstant } from '../../reference/physics/heating/warm-up-time.ts';

describe('the off periods of the UK assessment', () => {
  const tau = timeConstant(250e3 * 88, 322);
  const unheated = unheatedTemperature(21, 5, 0.9 * 600, 322);
  const first = offPeriodReduction(7, tau, 21, unheated);
  const second = offPeriodReduction(8, tau, 21, unheated);

  test.each([
    ['time constant', 'h', 18.98, tau, 0.005],
    ['cooling time', 'h', 8.745, coolingTime(tau), 0.0005],
    ['unheated temperature', '°C', 6.677, unheated, 0.0005],
    ['reduction by 7 h off', 'K', 1.672, first, 0.0005],
    ['reduction by 8 h off', 'K', 2.184, second, 0.0005],
    ['mean temperature', '°C', 17.14, 21 - first - second, 0.005],
  ])('%s', (what, unit, expected, got, absolute) => {
    compare({
      topic: 'Heating',
      what: `UK assessment, house of 322 W/K off for 7 and 8 h: ${what}`,
      unit,
      source: 'SAP 10.2 table 9b, worked by hand',
      mark: 'closed form',
      expected,
      got,
      tolerance: { absolute },
      because: 'half the last digit printed',
    });
  });

  test('parabola and line meet where cooling ends', () => {
    const end = coolingTime(20);
    const before = offPeriodReduction(end - 1e-9, 20, 21, 7);
    expect(offPeriodReduction(end + 1e-9, 20, 21, 7)).toBeCloseTo(before, 8);
  });

  test('a heavier home falls less, a longer stretch more, and none not at all', () => {
    expect(offPeriodReduction(8, 40, 21, 7)).toBeLessThan(offPeriodReduction(8, 20, 21, 7));
    expect(offPeriodReduction(9, 20, 21, 7)).toBeGreaterThan(offPeriodReduction(8, 20, 21, 7));
    expect(offPeriodReduction(0, 20, 21, 7)).toBe(0);
    expect(offPeriodReduction(8, 20, 21, 25)).toBe(0);
  });

  test('a heavy emitter keeps the zone 2 K below at worst', () => {
    expect(unheatedTemperature(21, 5, 0, 322, 0)).toBe(19);
    expect(unheatedTemperature(21, 5, 0, 322, 1)).toBe(5);
  });

  test.each([
    ['25 h', () => offPeriodReduction(25, 20, 21, 7)],
    ['no hours', () => offPeriodReduction(Number.NaN, 20, 21, 7)],
    ['no time constant', () => offPeriodReduction(8, Number.NaN, 21, 7)],
    ['no temperature', () => offPeriodReduction(8, 20, Number.NaN, 7)],
    ['no loss', () => unheatedTemperature(21, 5, 0, 0)],
    ['no gains', () => unheatedTemperature(21, 5, Number.NaN, 322)],
    ['no capacity', () => timeConstant(Number.NaN, 322)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});
