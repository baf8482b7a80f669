import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, test } from 'vitest';
import { minimise, type Problem } from '../../../src/fit/search/gauss-newton.ts';
import { posteriorOf } from '../../../src/fit/search/posterior.ts';
import { profileSd } from '../../../src/fit/search/profile.ts';

/** Residuals of a curve in a problem whose prior weighs so little beside the data. */
function problemOf(
  curve: (z: readonly number[], x: number) => number,
  x: readonly number[],
  y: readonly number[],
  sd: number,
  start: readonly number[],
) {
  let asked = 0;
  const problem: Problem = {
    start,
    residuals: async (places) => {
      asked += places.length;
      return places.map((z) => Float64Array.from(x, (each, k) => (y[k]! - curve(z, each)) / sd));
    },
    derivativeStep: 1e-4,
    mostIterations: 25,
    budget: () => 500 - asked,
  };
  return { problem, asked: () => asked };
}

describe('a linear model', () => {
  // y = z0 + z1 x: the normal equations with a prior of unit weight, solved by hand below
  const x = [0, 1, 2, 3];
  const y = [1, 3, 4, 8];
  const { problem } = problemOf((z, at) => z[0]! + z[1]! * at, x, y, 1, [0, 0]);

  test('is solved as by hand', async () => {
    // (n + 1, sum x; sum x, sum x^2 + 1) = (5, 6; 6, 15), right (16, 35): z = (30, 79)/39
    const found = await minimise({ ...problem, derivativeStep: 1 });
    expect(found!.at[0]).toBeCloseTo(30 / 39, 3);
    expect(found!.at[1]).toBeCloseTo(79 / 39, 3);
  });

  test('has the covariance of its normal equations, and a profile as wide', async () => {
    const found = await minimise({ ...problem, derivativeStep: 1 });
    const posterior = posteriorOf(found!.columns);
    // inverse of (5, 6; 6, 15): (15, -6; -6, 5)/39
    expect(posterior.sd[0]).toBeCloseTo(Math.sqrt(15 / 39), 8);
    expect(posterior.sd[1]).toBeCloseTo(Math.sqrt(5 / 39), 8);
    expect(posterior.correlation[0]![1]).toBeCloseTo(-6 / Math.sqrt(75), 8);
    const exact = [30 / 39, 79 / 39];
    const costs = async (places: readonly (readonly number[])[]) =>
      places.map((z) => {
        const e = x.map((at, k) => y[k]! - z[0]! - z[1]! * at);
        return 0.5 * (e.reduce((s, d) => s + d * d, 0) + z[0]! ** 2 + z[1]! ** 2);
      });
    expect(await profileSd(exact, posterior, 0, costs)).toBeCloseTo(posterior.sd[0]!, 8);
  });
});

test('a curved valley is followed to its end', async () => {
  // Rosenbrock's function from its usual start, minimum 0 at (1, 1): Moré, Garbow and Hillstrom 1981,
  // problem 1 (from memory). The prior weighs a millionth, so that it moves the end by as little.
  const sd = 1e-3;
  let asked = 0;
  const found = await minimise({
    start: [-1.2, 1],
    residuals: async (places) => {
      asked += places.length;
      return places.map(([x, y]) =>
        Float64Array.from([10 * (y! - x! * x!), 1 - x!], (each) => each / sd),
      );
    },
    ...{ derivativeStep: 1e-6, mostIterations: 200, budget: () => 2000 - asked },
  });
  expect(found!.ended).toBe('converged');
  expect(found!.at[0]).toBeCloseTo(1, 3);
  expect(found!.at[1]).toBeCloseTo(1, 3);
});

test('the profile of a cost that flattens on one side is wider there', async () => {
  // one parameter with cost z^2/2 below 0 and z^2/8 above: a rise of 1.92 at 1.96 and at 3.92
  const posterior = { sd: [1], correlation: [[1]] };
  const costs = async (places: readonly (readonly number[])[]) =>
    places.map(([z]) => (z! < 0 ? z! * z! * 0.5 : z! * z! * 0.125));
  expect(await profileSd([0], posterior, 0, costs)).toBeCloseTo(2, 10);
});

test('comes to the minimum of a Levenberg-Marquardt package in fewer runs', async () => {
  // An exponential decay with a hash for noise; prior of a standard deviation 1e3 wide: next to none.
  const x = Array.from({ length: 40 }, (_, k) => k / 8);
  const y = x.map((at, k) => 5 * Math.exp(-0.7 * at) + 1 + 0.1 * Math.sin(17 * k * k));
  const curve = (p: readonly number[], at: number) => p[0]! * Math.exp(-p[1]! * at) + p[2]!;
  const { problem, asked } = problemOf(
    (z, at) =>
      curve(
        z.map((each, k) => [3, 0.3, 0.5][k]! + each),
        at,
      ),
    x,
    y,
    1e-3,
    [0, 0, 0],
  );
  const own = await minimise(problem);
  let calls = 0;
  const other = levenbergMarquardt(
    { x, y },
    (p: number[]) => {
      calls++;
      return (at: number) => curve(p, at);
    },
    {
      ...{ initialValues: [3, 0.3, 0.5], maxIterations: 100, damping: 0.01 },
      ...{ gradientDifference: 1e-6, errorTolerance: 1e-12 },
    },
  );
  const found = own!.at.map((z, k) => [3, 0.3, 0.5][k]! + z);
  // the search promises a relative change of cost below 1e-4
  const misfit = (p: readonly number[]) =>
    x.reduce((s, at, k) => s + (y[k]! - curve(p, at)) ** 2, 0);
  expect(misfit(found) / misfit(other.parameterValues)).toBeLessThan(1 + 1e-3);
  found.forEach((value, k) => {
    expect(Math.abs(value / other.parameterValues[k]! - 1)).toBeLessThan(0.01);
  });
  expect(asked()).toBeLessThan(calls);
});

test('a place that cannot be run is walked round', async () => {
  // sqrt(2 + z) = 3 has z = 7, beyond the farthest place; runs above 1.2 fail
  const residuals = async (places: readonly (readonly number[])[]) =>
    places.map(([z]) => (z! > 1.2 ? null : Float64Array.of(10 * (3 - Math.sqrt(2 + z!)))));
  const found = await minimise({
    ...{ start: [0], residuals, derivativeStep: 0.1, mostIterations: 25 },
    budget: () => 100,
  });
  expect(found!.at[0]).toBeLessThanOrEqual(1.2);
  expect(found!.at[0]).toBeGreaterThan(0.5);
});

test('ends where its runs are used up', async () => {
  let asked = 0;
  const found = await minimise({
    ...{ start: [3, 3], derivativeStep: 0.1, mostIterations: 25 },
    residuals: async (places) => {
      asked += places.length;
      return places.map(([a, b]) => Float64Array.of(10 * (b! - a! * a!), 1 - a!));
    },
    budget: () => 10 - asked,
  });
  expect(found!.ended).toBe('budget');
  expect(asked).toBeLessThanOrEqual(10);
});
