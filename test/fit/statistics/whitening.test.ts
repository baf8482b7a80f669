import { inverse, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import { autocorrelationOf, weigh } from '../../../src/fit/statistics/whitening.ts';
import { seededRandom, standardNormal } from '../../../src/units/seeded-random.ts';

const squares = (values: Float64Array): number => values.reduce((sum, x) => sum + x * x, 0);

function weighed(form: 'free run' | 'whitened', e: readonly number[], rho: number, sd: number) {
  const into = new Float64Array(e.length);
  weigh(form, Float64Array.from(e), { rho, sd }, into);
  return into;
}

test('the sum of squares of innovations is the exact likelihood of the autoregression', () => {
  // e' V^-1 e with V[i][j] = sd^2 rho^|i-j|: the closed form of a first-order autoregression
  const e = [1, 0.5, -2, 3, 0.25];
  const [rho, sd] = [0.6, 1.5];
  const covariance = new Matrix(e.map((_, i) => e.map((_, j) => sd * sd * rho ** Math.abs(i - j))));
  const column = Matrix.columnVector(e);
  const exact = column.transpose().mmul(inverse(covariance)).mmul(column).get(0, 0);
  expect(squares(weighed('whitened', e, rho, sd))).toBeCloseTo(exact, 10);
});

test('by hand: three residuals of correlation a half', () => {
  // 1, then (0.5 - 0.5) and (2 - 0.25) over sqrt(1 - 0.25)
  const found = weighed('whitened', [1, 0.5, 2], 0.5, 1);
  expect([...found]).toEqual([1, 0, expect.closeTo(1.75 / Math.sqrt(0.75), 12)]);
});

test('after a gap the autoregression begins anew, and the gap counts for nothing', () => {
  const found = weighed('whitened', [2, Number.NaN, 3], 0.9, 2);
  expect([...found]).toEqual([1, 0, 1.5]);
});

test('widened residuals give a mean the variance that the autocorrelation leaves it', () => {
  // variance of the mean of n of a long autoregression: sd^2 (1 + rho)/(1 - rho)/n
  const n = 1000;
  const one = weighed('free run', new Array<number>(n).fill(1), 0.8, 2);
  const precision = squares(one);
  expect(1 / precision).toBeCloseTo((4 * (1.8 / 0.2)) / n, 10);
});

test('correlation and deviation are found again in a made autoregression', () => {
  // standard error of rho is sqrt((1 - rho^2)/n) = 0.0044, of the deviation some 2 %: four of each
  const random = seededRandom(3);
  const [rho, sd, n] = [0.9, 1.3, 10_000];
  let e = sd * standardNormal(random);
  const made = Float64Array.from({ length: n }, () => {
    e = rho * e + sd * Math.sqrt(1 - rho * rho) * standardNormal(random);
    return e;
  });
  const found = autocorrelationOf(made, 0);
  expect(Math.abs(found.rho - rho)).toBeLessThan(4 * 0.0044);
  expect(Math.abs(found.sd / sd - 1)).toBeLessThan(0.1);
});

test('a lasting bias is an error too, and no deviation is below what the sensor is good for', () => {
  expect(autocorrelationOf(Float64Array.of(3, 3, 3, 3), 0.5).sd).toBe(3);
  expect(autocorrelationOf(Float64Array.of(0, 0, 0), 0.5)).toEqual({ rho: 0, sd: 0.5 });
  expect(autocorrelationOf(Float64Array.of(Number.NaN), 0.5)).toEqual({ rho: 0, sd: 0.5 });
});
